package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.message.ReachDiagnostics;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.inspection.verdict.Condition;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import io.github.leafproof.inspection.verdict.Severity;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Which lines of a release can ever decide: those that the named checks can bring about, and no line above forestalls. */
final class ReleaseReach {

    private final Problems problems;
    private final Map<String, Node.Check> checks;
    private final CheckReach reach;

    ReleaseReach(Problems problems, List<Node.Check> checks, CheckReach reach) {
        this.problems = problems;
        this.checks = checks.stream().collect(Collectors.toMap(Node.Check::name, Function.identity()));
        this.reach = reach;
    }

    void look(Declaration.Release written, ReleaseRule rule) {
        List<ReleaseRule.Clause> clauses = rule.clauses();
        if (clauses.size() != written.rules().size()) {
            return;
        }
        for (int i = 0; i < clauses.size(); i++) {
            Condition when = clauses.get(i).when();
            Optional<Integer> earlier = IntStream.range(0, i)
                    .boxed()
                    .filter(before -> forestalls(clauses.get(before).when(), when))
                    .findFirst();
            if (!canHold(when)) {
                problems.add(
                        ReachDiagnostics.ruleNeverHolds(written.rules().get(i).span()));
            } else if (earlier.isPresent()) {
                problems.add(ReachDiagnostics.ruleComesTooLate(
                        written.rules().get(i).span(),
                        written.rules().get(earlier.get()).span()));
            }
        }
    }

    /** A line about any check is prudence, also where no check is critical yet; one about a named check means that one. */
    private boolean canHold(Condition condition) {
        if (condition instanceof Condition.OneCheck one) {
            return canBe(one.name(), one.outcomes());
        }
        if (condition instanceof Condition.Both both) {
            return both.parts().stream().allMatch(this::canHold);
        }
        return !(condition instanceof Condition.Either either)
                || either.parts().stream().anyMatch(this::canHold);
    }

    private boolean canBe(String check, Set<Outcome> outcomes) {
        return !Collections.disjoint(reach.outcomes(check), outcomes);
    }

    private static boolean counts(Set<Severity> severities, Severity severity) {
        return severities.isEmpty() || severities.contains(severity);
    }

    /** Whether one condition holds wherever another does. */
    private boolean forestalls(Condition one, Condition other) {
        if (one instanceof Condition.Either either) {
            return either.parts().stream().anyMatch(part -> forestalls(part, other));
        }
        if (other instanceof Condition.Either either) {
            return either.parts().stream().allMatch(part -> forestalls(one, part));
        }
        if (other instanceof Condition.Both both) {
            return both.parts().stream().anyMatch(part -> forestalls(one, part));
        }
        if (one instanceof Condition.AnyCheck any && other instanceof Condition.AnyCheck more) {
            boolean wider = any.severities().isEmpty()
                    || (!more.severities().isEmpty() && any.severities().containsAll(more.severities()));
            return wider && any.outcomes().containsAll(more.outcomes());
        }
        if (one instanceof Condition.AnyCheck any && other instanceof Condition.OneCheck check) {
            Node.Check named = checks.get(check.name());
            return named != null
                    && counts(any.severities(), named.severity())
                    && any.outcomes().containsAll(check.outcomes());
        }
        return one instanceof Condition.OneCheck a
                && other instanceof Condition.OneCheck b
                && a.name().equals(b.name())
                && a.outcomes().containsAll(b.outcomes());
    }
}

package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.message.NameDiagnostics;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Name;
import io.github.leafproof.inspection.verdict.Condition;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import io.github.leafproof.inspection.verdict.Severity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** How the outcomes of the checks decide about the whole engine. */
final class Releases {

    private final Problems problems;
    private final Outline outline;

    Releases(Problems problems, Outline outline) {
        this.problems = problems;
        this.outline = outline;
    }

    ReleaseRule rule() {
        Declaration.Release release = outline.release;
        if (release == null) {
            return ReleaseRule.usual();
        }
        List<ReleaseRule.Clause> clauses = new ArrayList<>();
        for (Declaration.Rule rule : release.rules()) {
            Optional<Release> result = release(problems, rule.result());
            Condition condition = rule.condition() == null ? new Condition.Always() : condition(rule.condition());
            result.ifPresent(known -> clauses.add(new ReleaseRule.Clause(known, condition)));
        }
        return endsOnce(release, clauses) ? new ReleaseRule(clauses) : ReleaseRule.usual();
    }

    /** The last line, and only that, stands for everything else. */
    private boolean endsOnce(Declaration.Release release, List<ReleaseRule.Clause> clauses) {
        List<Declaration.Rule> rules = release.rules();
        for (int i = 0; i < rules.size() - 1; i++) {
            if (rules.get(i).condition() == null) {
                problems.add(StructureDiagnostics.otherwiseNotLast(rules.get(i).span()));
                return false;
            }
        }
        if (rules.isEmpty() || rules.get(rules.size() - 1).condition() != null) {
            problems.add(StructureDiagnostics.noOtherwise(release.span()));
            return false;
        }
        return clauses.size() == rules.size();
    }

    private Condition condition(Declaration.Condition condition) {
        if (condition instanceof Declaration.Condition.Joined joined) {
            List<Condition> both = List.of(condition(joined.left()), condition(joined.right()));
            return joined.and() ? new Condition.Both(both) : new Condition.Either(both);
        }
        if (condition instanceof Declaration.Condition.AnyCheck any) {
            Set<Severity> severities = new LinkedHashSet<>();
            if (any.severity() != null) {
                Name word = any.severity();
                Optional<Severity> severity = Severity.named(word.text());
                severity.ifPresentOrElse(severities::add, () -> unknownSeverity(word));
            }
            return new Condition.AnyCheck(severities, outcomes(any.outcomes()));
        }
        Declaration.Condition.OneCheck one = (Declaration.Condition.OneCheck) condition;
        String key = Env.TOP.key(one.check());
        if (!outline.checks.containsKey(key)) {
            Checks.unknownCheck(problems, outline, one.check(), key);
        }
        return new Condition.OneCheck(key, outcomes(one.outcomes()));
    }

    private void unknownSeverity(Name word) {
        List<String> known =
                Arrays.stream(Severity.values()).map(Severity::word).toList();
        problems.add(NameDiagnostics.unknownWord(word, "severity", known));
    }

    private Set<Outcome> outcomes(List<Name> words) {
        Set<Outcome> outcomes = new LinkedHashSet<>();
        words.forEach(word -> outcome(problems, word).ifPresent(outcomes::add));
        return outcomes;
    }

    static Optional<Outcome> outcome(Problems problems, Name word) {
        Optional<Outcome> outcome = Outcome.named(word.text());
        if (outcome.isEmpty()) {
            List<String> known =
                    Arrays.stream(Outcome.values()).map(Outcome::word).toList();
            problems.add(NameDiagnostics.unknownWord(word, "outcome", known));
        }
        return outcome;
    }

    static Optional<Release> release(Problems problems, Name word) {
        Optional<Release> release = Release.named(word.text());
        if (release.isEmpty()) {
            List<String> known =
                    Arrays.stream(Release.values()).map(Release::word).toList();
            problems.add(NameDiagnostics.unknownWord(word, "release", known));
        }
        return release;
    }
}

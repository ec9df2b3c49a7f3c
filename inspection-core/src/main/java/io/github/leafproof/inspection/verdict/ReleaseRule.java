package io.github.leafproof.inspection.verdict;

import io.github.leafproof.inspection.verdict.Condition.Always;
import io.github.leafproof.inspection.verdict.Condition.AnyCheck;
import java.util.List;
import java.util.Set;

/**
 * How the outcomes of all checks add up to what is decided about the engine: the first clause that applies decides.
 *
 * @param clauses in order; the last, and only the last, applies always
 */
public record ReleaseRule(List<Clause> clauses) {
    /**
     * One line of the rule.
     *
     * @param result what is decided
     * @param when when this clause applies
     */
    public record Clause(Release result, Condition when) {}

    /**
     * What was decided and why.
     *
     * @param release what was decided
     * @param because the names of the checks that decided it, in the order of the checks; empty when none did
     */
    public record Decision(Release release, List<String> because) {
        public Decision {
            because = List.copyOf(because);
        }
    }

    public ReleaseRule {
        clauses = List.copyOf(clauses);
        long always = clauses.stream()
                .filter(clause -> clause.when() instanceof Always)
                .count();
        if (always != 1 || !(clauses.get(clauses.size() - 1).when() instanceof Always)) {
            throw new IllegalArgumentException("a release rule ends with the one clause that applies otherwise");
        }
    }

    /**
     * The rule used when a procedure states none: reject when a critical check fails; hold when any check fails, is
     * contradicted or stays open; unfinished while any is untested or blocked; ready otherwise.
     */
    public static ReleaseRule usual() {
        return new ReleaseRule(List.of(
                new Clause(Release.REJECT, new AnyCheck(Set.of(Severity.CRITICAL), Set.of(Outcome.FAILS))),
                new Clause(
                        Release.HOLD,
                        new AnyCheck(Set.of(), Set.of(Outcome.FAILS, Outcome.CONTRADICTED, Outcome.OPEN))),
                new Clause(Release.UNFINISHED, new AnyCheck(Set.of(), Set.of(Outcome.UNTESTED, Outcome.BLOCKED))),
                new Clause(Release.READY, new Always())));
    }

    /** Decides about the engine. An engine that nobody has checked is unfinished, whatever the rule says. */
    public Decision decide(Tally checks) {
        if (checks.isEmpty()) {
            return new Decision(Release.UNFINISHED, List.of());
        }
        Clause decisive = decisive(checks);
        Set<String> names = decisive.when().because(checks);
        return new Decision(
                decisive.result(),
                checks.checks().map(CheckOutcome::name).filter(names::contains).toList());
    }

    /** What {@link #decide} decides, for whoever does not ask which checks decided it. */
    public Release release(Tally checks) {
        return checks.isEmpty() ? Release.UNFINISHED : decisive(checks).result();
    }

    private Clause decisive(Tally checks) {
        for (Clause clause : clauses) {
            if (clause.when().holds(checks)) {
                return clause;
            }
        }
        throw new IllegalStateException("the last clause applies always");
    }
}

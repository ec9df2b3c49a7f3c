package io.github.leafproof.inspection.verdict;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** When a clause of a release rule applies. */
public sealed interface Condition {
    /** True when it holds for these checks. */
    boolean holds(Tally checks);

    /** The names of the checks that make it hold; empty when it does not hold, or holds whatever the checks say. */
    Set<String> because(Tally checks);

    /**
     * Some check of these severities has one of these outcomes.
     *
     * @param severities the severities that count; empty for all
     * @param outcomes the outcomes that count
     */
    record AnyCheck(Set<Severity> severities, Set<Outcome> outcomes) implements Condition {

        private static final Set<Severity> ALL = Set.of(Severity.values());

        public AnyCheck {
            severities = Set.copyOf(severities);
            outcomes = Set.copyOf(outcomes);
        }

        @Override
        public boolean holds(Tally checks) {
            for (Severity severity : severities.isEmpty() ? ALL : severities) {
                for (Outcome outcome : outcomes) {
                    if (checks.count(severity, outcome) > 0) {
                        return true;
                    }
                }
            }
            return false;
        }

        @Override
        public Set<String> because(Tally checks) {
            Set<String> names = new TreeSet<>();
            checks.checks().filter(this::counts).map(CheckOutcome::name).forEach(names::add);
            return names;
        }

        private boolean counts(CheckOutcome check) {
            return outcomes.contains(check.outcome())
                    && (severities.isEmpty() || severities.contains(check.severity()));
        }
    }

    /**
     * The check of this name has one of these outcomes.
     *
     * @param name the check's name
     * @param outcomes the outcomes that count
     */
    record OneCheck(String name, Set<Outcome> outcomes) implements Condition {
        public OneCheck {
            outcomes = Set.copyOf(outcomes);
        }

        @Override
        public boolean holds(Tally checks) {
            return checks.outcome(name).filter(outcomes::contains).isPresent();
        }

        @Override
        public Set<String> because(Tally checks) {
            return holds(checks) ? Set.of(name) : Set.of();
        }
    }

    /** Holds whatever the checks say: the last clause of every rule. */
    record Always() implements Condition {
        @Override
        public boolean holds(Tally checks) {
            return true;
        }

        @Override
        public Set<String> because(Tally checks) {
            return Set.of();
        }
    }

    /** Holds when one of its parts does. */
    record Either(List<Condition> parts) implements Condition {
        public Either {
            parts = List.copyOf(parts);
        }

        @Override
        public boolean holds(Tally checks) {
            return parts.stream().anyMatch(part -> part.holds(checks));
        }

        @Override
        public Set<String> because(Tally checks) {
            return together(parts, checks);
        }
    }

    /** Holds when all of its parts do. */
    record Both(List<Condition> parts) implements Condition {
        public Both {
            parts = List.copyOf(parts);
        }

        @Override
        public boolean holds(Tally checks) {
            return parts.stream().allMatch(part -> part.holds(checks));
        }

        @Override
        public Set<String> because(Tally checks) {
            return holds(checks) ? together(parts, checks) : Set.of();
        }
    }

    /** Holds when its part does not; no check can be named for what did not happen. */
    record Not(Condition part) implements Condition {
        @Override
        public boolean holds(Tally checks) {
            return !part.holds(checks);
        }

        @Override
        public Set<String> because(Tally checks) {
            return Set.of();
        }
    }

    private static Set<String> together(List<Condition> parts, Tally checks) {
        Set<String> names = new TreeSet<>();
        parts.forEach(part -> names.addAll(part.because(checks)));
        return names;
    }
}

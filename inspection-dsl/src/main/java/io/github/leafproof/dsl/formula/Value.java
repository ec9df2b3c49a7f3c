package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.clearance.FeelTrial;
import io.github.leafproof.inspection.clearance.GapEvidence;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Feeler;
import io.github.leafproof.inspection.gauge.PinSet;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Series;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a formula yields for one engine. */
public sealed interface Value {

    /**
     * A quantity with its uncertainty.
     *
     * @param shownIn the unit asked for with {@code x in thou}, or null where the reader's system of units decides
     */
    record Amount(Estimate estimate, @Nullable Unit shownIn) implements Value {
        /** A computed or measured value. */
        public static Amount of(Estimate estimate) {
            return new Amount(estimate, null);
        }

        /** A value that is simply stated, and counts as exact. */
        public static Amount stated(Quantity quantity) {
            return of(Estimate.exact(quantity));
        }
    }

    /**
     * What was learned of a gap, and with which set of leaves or pins it can be asked further.
     *
     * @param gap which gap it is; where it lies between its leaves is no other's business, whatever a function calls it
     * @param middle the gap as one number, empty while nothing has refused. It is worked out once, and not for each of the
     *     many trials of a Monte Carlo run
     */
    record Felt(String gap, GapEvidence evidence, FeelSet set, Optional<Estimate> middle) implements Value {
        /** What was learned of a gap by these trials. */
        public Felt(String gap, GapEvidence evidence, FeelSet set) {
            this(gap, evidence, set, evidence.estimate(gap));
        }

        /** What the set is made of: leaf or pin. */
        public String noun() {
            return set instanceof PinSet ? "pin" : "leaf";
        }

        /** What was offered of it: leaf, pin or stack. */
        public String noun(Feeler offered) {
            return offered.leaves().size() > 1 ? "stack" : noun();
        }

        /** Whether some leaf that was offered is known by its marking only. */
        public boolean neverMeasured() {
            for (FeelTrial trial : evidence.trials()) {
                if (trial.feeler().neverMeasured()) {
                    return true;
                }
            }
            return false;
        }

        /** The same trials if every leaf were what is stamped on it. */
        public Felt asIfMeasured() {
            return new Felt(gap, evidence.asIfMeasured(), set);
        }

        /** The trials of several entries as those of one; empty where no entry has any. */
        public static Optional<Value> together(List<Value> entries) {
            List<Felt> felt = all(Felt.class, entries);
            List<FeelTrial> trials = felt.stream()
                    .flatMap(each -> each.evidence.trials().stream())
                    .toList();
            return felt.stream().findFirst().map(first -> new Felt(first.gap, new GapEvidence(trials), first.set));
        }
    }

    /** A day of the calendar. */
    record Day(LocalDate day) implements Value {}

    /**
     * Repeated readings.
     *
     * @param statistics what can be computed of so many; worked out once, as the middle of a gap is
     */
    record Readings(Series series, Map<Statistic, Estimate> statistics) implements Value {
        /** Readings, and what can be computed of them. */
        public Readings(Series series) {
            this(series, Statistic.allOf(series));
        }

        /** The readings of several entries as those of one, in their order; empty where no entry has any. */
        public static Optional<Value> together(List<Value> entries) {
            return Series.together(all(Readings.class, entries).stream()
                            .map(Readings::series)
                            .toList())
                    .map(Readings::new);
        }
    }

    /** The chosen option, by its place in the type's list. */
    record Pick(int option, String word) implements Value {}

    /** Words. */
    record Words(String text) implements Value {}

    /** Things found. */
    record Things(List<String> items) implements Value {
        public Things {
            items = List.copyOf(items);
        }
    }

    /**
     * A condition judged: passes, tolerated, fails, open or contradicted, with the bounds of its probability.
     *
     * @param side on which side a failing value lies, where it has sides
     */
    record Judged(Outcome outcome, Conformity conformity, Side side) implements Value {
        public static final Judged YES = new Judged(Outcome.PASSES, Conformity.certain(true), Side.NONE);
        public static final Judged NO = new Judged(Outcome.FAILS, Conformity.certain(false), Side.NONE);

        /** A condition that is known without doubt. */
        public static Judged certain(boolean holds) {
            return holds ? YES : NO;
        }

        /** Whether it holds, within its limits or a tolerated margin beyond them. */
        public boolean holds() {
            return outcome == Outcome.PASSES || outcome == Outcome.TOLERATED;
        }
    }

    /** No value, and why: everything that is lacking. */
    record Missing(List<Lack> lacks) implements Value {
        public Missing {
            lacks = List.copyOf(lacks);
        }

        public static Missing of(Lack.Kind kind, String subject, String words) {
            return new Missing(List.of(new Lack(kind, subject, words)));
        }

        /** Whether nothing is lacking but what need not be there. */
        public boolean isNotAsked() {
            return lacks.stream().allMatch(lack -> lack.kind() == Lack.Kind.NOT_ASKED);
        }

        /** Everything that is lacking, as a sentence without its end. */
        public String words() {
            return String.join("; ", lacks.stream().map(Lack::toString).toList());
        }

        /** Everything that the values lack between them. */
        static Missing of(List<Value> values) {
            List<Lack> all = new ArrayList<>();
            for (Value value : values) {
                if (value instanceof Missing missing) {
                    missing.lacks.stream().filter(lack -> !all.contains(lack)).forEach(all::add);
                }
            }
            return new Missing(all);
        }
    }

    /**
     * One thing that a value lacks.
     *
     * @param subject the name of what is lacking, as the procedure writes it
     * @param words the reason as a sentence's end: {@code was not entered}
     */
    record Lack(Kind kind, String subject, String words) {

        /** Why it is lacking. */
        public enum Kind {
            /** Nobody entered it yet. */
            NOT_ENTERED,
            /** It need not be entered, and was not: it is optional, or does not apply to this engine. */
            NOT_ASKED,
            /** It was tried, and could not be observed. */
            CANNOT,
            /** The engine card does not say. */
            NOT_ON_CARD,
            /** The evidence leaves it open. */
            UNDECIDED,
            /** It cannot be computed from what was entered. */
            NOT_COMPUTABLE
        }

        @Override
        public String toString() {
            return subject + " " + words;
        }
    }

    private static <T extends Value> List<T> all(Class<T> kind, List<Value> values) {
        return values.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}

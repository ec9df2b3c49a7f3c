package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.verdict.Finding;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.List;

/**
 * What a condition comes to, in one small number: how it was judged, from what decides an {@code and} alone to what decides an
 * {@code or} alone, or {@link #LACKS} together with the kinds of what is lacking. A number or a thing that is there has 0 in
 * the place of this, so that whatever several of them lack is all of theirs joined by a bitwise or.
 *
 * <p>No outcome depends on what exactly is lacking, only on whether all of it need not be there, or all of it is undecided.
 */
final class Truth {

    static final int FAILS = 1;
    static final int CONTRADICTED = 2;
    static final int OPEN = 3;
    static final int TOLERATED = 4;
    static final int PASSES = 5;

    /** Set where there is no value. */
    static final int LACKS = 8;
    /** With {@link #LACKS}: something lacks that need not be there. */
    static final int NOT_ASKED = 1;
    /** With {@link #LACKS}: something lacks because the evidence leaves it open. */
    static final int UNDECIDED = 2;
    /** With {@link #LACKS}: something lacks for any other reason. */
    static final int OTHERWISE = 4;

    /** What cannot be computed. */
    static final int NOT_COMPUTABLE = LACKS | OTHERWISE;

    /** For {@link #joined}: nothing was judged yet. Above all that an {@code and} takes the least of. */
    static final int NOTHING_YET_AND = 7;
    /** For {@link #joined}: nothing was judged yet. Below all that an {@code or} takes the greatest of. */
    static final int NOTHING_YET_OR = 0;

    private static final int JUDGED = 7;
    private static final List<Outcome> BY_TRUTH =
            List.of(Outcome.FAILS, Outcome.CONTRADICTED, Outcome.OPEN, Outcome.TOLERATED, Outcome.PASSES);

    /** The outcome that belongs to each truth, four bits for each: to look into a number takes no branch. */
    private static final long OUTCOMES = table();

    private Truth() {}

    static int of(Outcome outcome) {
        return 1 + BY_TRUTH.indexOf(outcome);
    }

    /** The truth of a judged value, 0 for any other value, or what is lacking. */
    static int of(Value value) {
        if (value instanceof Value.Judged judged) {
            return of(judged.outcome());
        }
        if (!(value instanceof Value.Missing missing)) {
            return 0;
        }
        int lacks = LACKS;
        for (Value.Lack lack : missing.lacks()) {
            lacks |= switch (lack.kind()) {
                case NOT_ASKED -> NOT_ASKED;
                case UNDECIDED -> UNDECIDED;
                case NOT_ENTERED, CANNOT, NOT_ON_CARD, NOT_COMPUTABLE -> OTHERWISE;
            };
        }
        return lacks;
    }

    /** The place of one of a few in their order: it goes into code and rows that live no longer than the program. */
    @SuppressWarnings("EnumOrdinal")
    static int number(Enum<?> one) {
        return one.ordinal();
    }

    static int certain(boolean holds) {
        return holds ? PASSES : FAILS;
    }

    /** As a check with a second tolerance decides: what is found of the limits aimed for, and of those beyond. */
    static int of(Finding aimed, Finding beyond) {
        if (aimed == Finding.PASSES) {
            return PASSES;
        }
        return switch (beyond) {
            case PASSES -> TOLERATED;
            case FAILS -> FAILS;
            case OPEN -> OPEN;
        };
    }

    static boolean holds(int truth) {
        return truth == PASSES || truth == TOLERATED;
    }

    /** Whether there is a value and nothing but what need not be there is lacking. */
    static boolean isNotAsked(int truth) {
        return truth >= LACKS && (truth & (UNDECIDED | OTHERWISE)) == 0;
    }

    /** What becomes of a value that hangs on a condition of which nobody can tell whether it holds. */
    static int undecided(int truth) {
        return truth < LACKS ? LACKS | UNDECIDED : truth;
    }

    static int not(int truth) {
        if (truth == FAILS) {
            return PASSES;
        }
        return holds(truth) ? FAILS : truth;
    }

    /** One part more of an {@code and}: the worst of what was judged so far, and above it what is lacking so far. */
    static int and(int soFar, int truth) {
        return truth < LACKS ? (soFar & ~JUDGED) | Math.min(soFar & JUDGED, truth) : soFar | (truth << 3);
    }

    /** One part more of an {@code or}. */
    static int or(int soFar, int truth) {
        return truth < LACKS ? (soFar & ~JUDGED) | Math.max(soFar & JUDGED, truth) : soFar | (truth << 3);
    }

    /** What parts come to together: one that decides alone decides, otherwise what is lacking must be supplied first. */
    static int joined(int parts, int nothingYet, int decisive) {
        int judged = parts & JUDGED;
        int lacks = parts >> 3;
        boolean lacksWhatIsAsked = (lacks & (UNDECIDED | OTHERWISE)) != 0;
        return judged == nothingYet || (lacksWhatIsAsked && judged != decisive) ? LACKS | lacks : judged;
    }

    // Options by their place among the others, days and words by their number, compared as the standings of these names
    // say.

    static int same(double option, double other) {
        return certain(option == other);
    }

    static int other(double option, double other) {
        return certain(option != other);
    }

    static int atLeast(double option, double other) {
        return certain(option >= other);
    }

    static int atMost(double option, double other) {
        return certain(option <= other);
    }

    static int less(double option, double other) {
        return certain(option < other);
    }

    static int more(double option, double other) {
        return certain(option > other);
    }

    /** What becomes of a number that was computed: whether it is one at all, where nothing was lacking. */
    static int computed(int lacks, double number) {
        return lacks == 0 && !Double.isFinite(number) ? NOT_COMPUTABLE : lacks;
    }

    /** The outcome of a check that requires this, by its place among the outcomes. */
    static int outcome(int truth) {
        return (int) (OUTCOMES >>> (4 * truth)) & 15;
    }

    private static long table() {
        long table = 0;
        for (int truth = 0; truth < 16; truth++) {
            Outcome outcome = Outcome.UNTESTED;
            if (truth >= FAILS && truth <= PASSES) {
                outcome = BY_TRUTH.get(truth - FAILS);
            } else if (isNotAsked(truth)) {
                outcome = Outcome.NOT_APPLICABLE;
            } else if (truth == (LACKS | UNDECIDED)) {
                outcome = Outcome.OPEN;
            }
            table |= (long) number(outcome) << (4 * truth);
        }
        return table;
    }

    /** The outcome of a check that applies only where this holds, and does not hold for certain. */
    static int outcomeUnlessItApplies(int truth) {
        if (truth == FAILS) {
            return number(Outcome.NOT_APPLICABLE);
        }
        return truth < LACKS ? number(Outcome.OPEN) : outcome(truth);
    }
}

package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Shown;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.history.Followed.Adjusting;
import io.github.leafproof.dsl.history.Followed.Change;
import io.github.leafproof.dsl.history.Followed.NextCheck;
import io.github.leafproof.dsl.history.Followed.Pace;
import io.github.leafproof.dsl.history.History;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** How fast something changes, and when it has to be looked at again, in words. */
final class RateWords {

    private static final Estimate AN_HOUR = Estimate.exact(Quantity.parse("1 h"));

    private RateWords() {}

    /** What a rate comes to in an hour of running. */
    static Estimate inAnHour(Estimate rate) {
        return rate.times(AN_HOUR);
    }

    /** {@code rises by 0.0150 mm (u 0.0042 mm) in 0.7 h of running, 0.0214 mm (u 0.0061 mm) in an hour}. */
    static String change(Change change, UnitSystem units) {
        String over;
        if (change.hours() == null) {
            over = "; nobody wrote down how long it ran";
        } else if (change.rate() == null) {
            over = " without running";
        } else {
            over = " in " + hours(change.hours()) + " of running, "
                    + shown(change.told() ? inAnHour(change.rate()).absolute() : inAnHour(change.rate()), units)
                    + " in an hour";
        }
        return moved(change.amount(), change.told(), units) + over;
    }

    /** {@code look 1: falls by 0.066 mm (u 0.006 mm) for 50 deg, 0.475 mm per turn (u 0.047 mm per turn)}. */
    static String adjusting(Adjusting adjusting, UnitSystem units) {
        String moved =
                "look " + adjusting.look() + ": " + moved(adjusting.moved(), History.isTold(adjusting.moved()), units);
        if (adjusting.perTurn() == null) {
            return moved;
        }
        return moved + " for " + adjusting.turn() + ", " + shown(adjusting.perTurn(), units)
                + "; where that is not its pitch by its lever, the screw has play or went with its nut (common practice)";
    }

    static String slope(Estimate slope, UnitSystem units) {
        return moved(inAnHour(slope), History.isTold(slope), units)
                + " in an hour of running, by the straight line through all looks since it was last adjusted";
    }

    static String perReading(Estimate slope, UnitSystem units) {
        return moved(slope, History.isTold(slope), units)
                + " from each reading to the next, by the straight line through all of them";
    }

    private static String moved(Estimate amount, boolean told, UnitSystem units) {
        if (!told) {
            return "no change that can be told: " + shown(amount, units);
        }
        return (amount.value() < 0 ? "falls by " : "rises by ") + shown(amount.absolute(), units);
    }

    /** Whether it changes faster than before; empty where nothing is known of that. */
    static String pace(Pace pace, boolean isWorsening) {
        return switch (pace) {
            case UNKNOWN -> "";
            case NOT_TOLD -> "whether it changes faster or slower than before cannot be told";
            case SLOWER -> "slower than before, as it should be while an engine beds in (common practice)";
            case FASTER ->
                isWorsening
                        ? "faster than before, which is a finding (common practice): a part wears out or works loose;"
                                + " look for it before the engine runs on"
                        : "faster than before";
        };
    }

    static String nextCheck(NextCheck next, UnitSystem units) {
        BigDecimal sure = Hours.of(next.sure());
        String until = Hours.words(sure) + " more of running"
                + (next.runningTime() == null ? "" : ", at " + Hours.after(next.runningTime(), sure) + " in all");
        return switch (next.state()) {
            case DUE_NOW ->
                "before it runs again: it is not sure, at 95 %, to be short of " + next.limit() + " as it is";
            case MOVES_AWAY -> "not due by this: it surely moves away from its limits";
            case OPEN ->
                "open: the latest rate is not told from none. At 95 % it is sure to be short of " + next.limit()
                        + " for " + until + "; look at it by then";
            case DUE ->
                "after at most " + until + ": until then, going on as it did last, it is sure, at 95 %, to be short of "
                        + next.limit()
                        + practice(next.left());
        };
    }

    /** The shop's rule: what is left to the limit, less the uncertainty, divided by the rate. */
    private static String practice(@Nullable Estimate left) {
        return left == null || left.value() <= 0
                ? ""
                : ". By the shop's rule, what is left to the limit less the uncertainty, divided by the latest rate, it"
                        + " is " + hours(left) + " (common practice)";
    }

    private static String hours(Estimate time) {
        String value = Display.of(time.value(), Dimension.TIME, time.standardUncertainty(), Hours.UNIT);
        double u = time.standardUncertainty();
        return u == 0 ? value : value + " (u " + Display.of(u, Dimension.TIME, u, Hours.UNIT) + ")";
    }

    private static String shown(Estimate amount, UnitSystem units) {
        return Shown.measured(Value.Amount.of(amount), units);
    }
}

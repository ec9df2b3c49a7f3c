package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.List;

/** How a value reads in a sentence. */
public final class Shown {

    private Shown() {}

    /** A value in a text: the value alone, to as many digits as its uncertainty allows, or as many as are asked for. */
    static String value(Value value, int digits, UnitSystem units) {
        if (value instanceof Value.Amount number) {
            return digits < 0 ? rounded(number, units) : fixed(number, digits, units);
        }
        return plain(value, units);
    }

    /** A value that was measured or computed, with its uncertainty where it has one. */
    public static String measured(Value value, UnitSystem units) {
        if (!(value instanceof Value.Amount number)) {
            return plain(value, units);
        }
        Estimate estimate = number.estimate();
        if (estimate.isExact()) {
            return rounded(number, units);
        }
        Unit unit = unit(number, units);
        double u = estimate.standardUncertainty();
        return Display.of(estimate.value(), estimate.dimension(), u, unit) + " (u "
                + Display.of(u, differenceOf(estimate.dimension()), u, differenceUnit(unit, units)) + ")";
    }

    /** The standard uncertainty of an amount, to two digits. */
    static String uncertainty(Estimate estimate, UnitSystem units) {
        double u = estimate.standardUncertainty();
        Dimension of = differenceOf(estimate.dimension());
        return Display.of(u, of, u, units.unitFor(of, u));
    }

    /** What each source adds to the uncertainty of a value, the largest first: {@code leaves 0.05 mm 0.0010 mm}. */
    public static List<String> sources(Value value, UnitSystem units) {
        if (!(value instanceof Value.Amount number)) {
            return List.of();
        }
        Estimate estimate = number.estimate();
        Dimension of = differenceOf(estimate.dimension());
        Unit unit = differenceUnit(unit(number, units), units);
        return estimate.contributions().stream()
                .map(share -> share.source() + " " + Display.of(share.amount(), of, share.amount(), unit))
                .toList();
    }

    /**
     * A limit: its number, and behind it the name it comes from, where it has one, or what the procedure writes, where that
     * is of another system of units.
     */
    public static String limit(Formula limit, Frame frame) {
        Value value = Computed.number(limit, frame);
        if (limit instanceof Constant written && isReadable(written, frame.units())) {
            return limit.words();
        }
        if (value instanceof Value.Missing) {
            return limit.words();
        }
        return value(value, -1, frame.units()) + " (" + limit.words() + ")";
    }

    private static boolean isReadable(Constant written, UnitSystem units) {
        Unit unit = written.unit();
        return unit == null
                || units.isAtHome(unit)
                || !(written.value() instanceof Value.Amount number)
                || !units.isAtHome(unit(number, units));
    }

    private static String plain(Value value, UnitSystem units) {
        if (value instanceof Value.Felt felt) {
            return felt.evidence().rangeWords(units);
        }
        if (value instanceof Value.Day date) {
            return date.day().toString();
        }
        if (value instanceof Value.Readings readings) {
            return readings.series().toString();
        }
        if (value instanceof Value.Pick pick) {
            return pick.word();
        }
        if (value instanceof Value.Words words) {
            return words.text();
        }
        if (value instanceof Value.Things things) {
            return things.items().isEmpty() ? "nothing" : String.join(", ", things.items());
        }
        if (value instanceof Value.Judged judged) {
            return switch (judged.outcome()) {
                case PASSES -> "yes";
                case TOLERATED -> "yes, within what is tolerated";
                case FAILS -> "no";
                case CONTRADICTED -> "contradicted";
                default -> "open";
            };
        }
        return "(not known: " + ((Value.Missing) value).words() + ")";
    }

    private static String rounded(Value.Amount number, UnitSystem units) {
        Estimate estimate = number.estimate();
        Unit unit = unit(number, units);
        String shown = Display.of(estimate.value(), estimate.dimension(), estimate.standardUncertainty(), unit);
        if (estimate.isExact() && unit.symbol().equals("mm")) {
            return twoDecimals(shown);
        }
        boolean turn = estimate.dimension().equals(Dimension.ANGLE)
                && number.shownIn() == null
                && !unit.symbol().equals("deg");
        return turn ? shown + degrees(estimate) : shown;
    }

    /** Small lengths are written with two decimals at least, as leaves are marked (common practice): 0.10 mm. */
    private static String twoDecimals(String shown) {
        return shown.matches("-?0\\.\\d mm") ? shown.replace(" mm", "0 mm") : shown;
    }

    /** A part of a turn is judged by degrees at the bench, so both are given; whole turns are counted. */
    private static String degrees(Estimate turn) {
        double turns = turn.value() / (2 * Math.PI);
        if (Math.abs(turns - Math.rint(turns)) < 1e-9) {
            return "";
        }
        return " (" + Display.number(Math.toDegrees(turn.value()), 0) + "°)";
    }

    private static String fixed(Value.Amount number, int digits, UnitSystem units) {
        Unit unit = unit(number, units);
        String figures = Display.number(unit.fromBase(number.estimate().value()), digits);
        return Display.amount(figures, unit);
    }

    private static Unit unit(Value.Amount number, UnitSystem units) {
        Estimate estimate = number.estimate();
        return number.shownIn() != null ? number.shownIn() : units.unitFor(estimate.dimension(), estimate.value());
    }

    private static Dimension differenceOf(Dimension dimension) {
        return dimension.isAbsolute() ? Dimension.TEMPERATURE_DIFFERENCE : dimension;
    }

    private static Unit differenceUnit(Unit unit, UnitSystem units) {
        return unit.dimension().isAbsolute() ? units.unitFor(Dimension.TEMPERATURE_DIFFERENCE, 1) : unit;
    }
}

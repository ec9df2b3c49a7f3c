package io.github.leafproof.dsl.fuzz;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Expressions of a kind that is asked for, over the names declared so far: whatever comes out makes sense. */
final class MadeExpression {

    private final Chance chance;
    private final Map<Kind, List<String>> names = new EnumMap<>(Kind.class);
    private final List<String> functions = new ArrayList<>();

    MadeExpression(Chance chance) {
        this.chance = chance;
        // Not every kind can be written down, so one observation of each stands in every procedure.
        Kind.ALL.forEach(kind -> names.put(kind, new ArrayList<>()));
    }

    void declare(Kind kind, String name) {
        names.get(kind).add(name);
    }

    void declareFunction(String name) {
        functions.add(name);
    }

    /** A value, out of at most so many operations one within the other. */
    String of(Kind kind, int depth) {
        if (depth == 0 || chance.below(4) == 0) {
            return simple(kind);
        }
        int inner = depth - 1;
        if (!kind.uncertainties().isEmpty() && chance.oneIn(6)) {
            return "((" + of(kind, inner) + ") " + chance.of(kind.uncertainties()) + ")";
        }
        return switch (kind) {
            case LENGTH -> length(inner);
            case NUMBER -> number(inner);
            case TEMPERATURE -> temperature(inner);
            case DIFFERENCE -> difference(inner);
            case ANGLE -> angle(inner);
            case CONDITION -> condition(inner);
            case TEXT -> chance.oneIn(2) ? text(inner) : either(kind, inner);
            case COUNT -> "count(" + simple(chance.of(Kind.SERIES)) + ")";
            case TIME -> time(inner);
            case DATE -> date(inner);
            case GAP, CHOICE, GRADE, ITEMS, LENGTHS, TEMPERATURES, COUNTS -> simple(kind);
        };
    }

    private String temperature(int inner) {
        return switch (chance.below(4)) {
            case 0 -> "(" + of(Kind.TEMPERATURE, inner) + " + " + of(Kind.DIFFERENCE, inner) + ")";
            case 1 -> "mean(" + simple(Kind.TEMPERATURES) + ")";
            case 2 -> MadeCall.of(Kind.TEMPERATURE, chance, this, inner);
            default -> either(Kind.TEMPERATURE, inner);
        };
    }

    private String difference(int inner) {
        return switch (chance.below(3)) {
            case 0 -> "(" + of(Kind.TEMPERATURE, inner) + " - " + of(Kind.TEMPERATURE, inner) + ")";
            case 1 -> chance.of(List.of("spread", "slope")) + "(" + simple(Kind.TEMPERATURES) + ")";
            default -> either(Kind.DIFFERENCE, inner);
        };
    }

    private String angle(int inner) {
        return switch (chance.below(3)) {
            case 0 -> of(Kind.ANGLE, inner) + " * " + factor(inner);
            case 1 -> MadeCall.of(Kind.ANGLE, chance, this, inner);
            default -> "(" + of(Kind.ANGLE, inner) + " - " + of(Kind.ANGLE, inner) + ")";
        };
    }

    private String time(int inner) {
        return switch (chance.below(4)) {
            case 0 -> "(" + of(Kind.DATE, inner) + " - " + of(Kind.DATE, inner) + ")";
            case 1 -> of(Kind.TIME, inner) + " * " + factor(inner);
            case 2 -> MadeCall.of(Kind.TIME, chance, this, inner);
            default -> either(Kind.TIME, inner);
        };
    }

    private String date(int inner) {
        String sign = chance.of(List.of(" + ", " - "));
        return chance.oneIn(2)
                ? "(" + of(Kind.DATE, inner) + sign + of(Kind.TIME, inner) + ")"
                : either(Kind.DATE, inner);
    }

    private String simple(Kind kind) {
        List<String> known = names.get(kind);
        boolean named = kind.written().isEmpty() || (!known.isEmpty() && chance.below(3) > 0);
        return chance.of(named ? known : kind.written());
    }

    private String length(int inner) {
        String a = of(Kind.LENGTH, inner);
        return switch (chance.below(13)) {
            case 0 -> "(" + a + " + " + of(Kind.LENGTH, inner) + ")";
            case 1 -> "(" + a + " - " + of(Kind.LENGTH, inner) + ")";
            case 2 -> a + " * " + factor(inner);
            case 3 -> a + " / " + factor(inner);
            case 4 -> "abs(" + a + ")";
            case 5 -> chance.of(List.of("min", "max")) + "(" + a + ", " + of(Kind.LENGTH, inner) + ")";
            case 6 -> "sqrt(" + a + " * " + of(Kind.LENGTH, inner) + ")";
            case 7 -> "(-" + a + ")";
            case 8 -> functions.isEmpty() ? a : chance.of(functions) + "(" + a + ", " + of(Kind.NUMBER, inner) + ")";
            case 9 -> "(" + a + " + " + simple(Kind.GAP) + ")";
            case 10 -> chance.of(List.of("mean", "spread", "slope")) + "(" + simple(Kind.LENGTHS) + ")";
            case 11 -> MadeCall.of(Kind.LENGTH, chance, this, inner);
            default -> either(Kind.LENGTH, inner);
        };
    }

    private String number(int inner) {
        String a = of(Kind.NUMBER, inner);
        return switch (chance.below(11)) {
            case 0 -> "(" + a + " + " + of(Kind.NUMBER, inner) + ")";
            case 1 -> "(" + a + " - " + of(Kind.COUNT, inner) + ")";
            case 2 -> factor(inner) + " * " + factor(inner);
            case 3 -> of(Kind.LENGTH, inner) + " / " + factorLength();
            case 4 -> chance.of(List.of("sin", "cos", "tan")) + "(" + of(Kind.ANGLE, inner) + ")";
            case 5 -> factor(inner) + " ^ " + (chance.below(5) - 2);
            case 6 -> "sqrt(" + a + ")";
            case 7 -> of(Kind.DIFFERENCE, inner) + " / 0.1 K";
            case 8 -> chance.of(List.of("mean", "spread", "slope")) + "(" + simple(Kind.COUNTS) + ")";
            case 9 -> MadeCall.of(Kind.NUMBER, chance, this, inner);
            default -> either(Kind.NUMBER, inner);
        };
    }

    /** A number that may stand beside a sign. */
    private String factor(int inner) {
        return "(" + of(Kind.NUMBER, inner) + ")";
    }

    private String factorLength() {
        return "(" + simple(Kind.LENGTH) + ")";
    }

    /** One value or another of the kind. */
    private String either(Kind kind, int inner) {
        String a = of(kind, inner);
        String b = of(kind, inner);
        return switch (chance.below(3)) {
            case 0 -> "(if " + of(Kind.CONDITION, inner) + " then " + a + " else " + b + ")";
            case 1 -> "choose " + simple(Kind.CHOICE) + " { red: " + a + " otherwise: " + b + " }";
            default -> "choose " + simple(Kind.GRADE) + " { none, soft: " + a + " firm: " + b + " }";
        };
    }

    private String condition(int inner) {
        return switch (chance.below(10)) {
            case 0 -> "(" + of(Kind.CONDITION, inner) + " and " + of(Kind.CONDITION, inner) + ")";
            case 1 -> "(" + of(Kind.CONDITION, inner) + " or " + of(Kind.CONDITION, inner) + ")";
            case 2 -> "(not " + of(Kind.CONDITION, inner) + ")";
            case 3 -> either(Kind.CONDITION, inner);
            case 4 -> "(" + ordered(inner) + ")";
            case 5 -> "(" + counted() + ")";
            case 6 -> "(" + dated(inner) + ")";
            case 7 -> "(" + MadeCall.any(chance, this).compared(inner) + ")";
            default -> "(" + measured(inner) + ")";
        };
    }

    private String measured(int inner) {
        Kind kind = chance.of(List.of(Kind.LENGTH, Kind.GAP, Kind.TEMPERATURE, Kind.ANGLE, Kind.NUMBER, Kind.TIME));
        Kind limit = kind == Kind.GAP ? Kind.LENGTH : kind;
        String value = of(kind, inner);
        return switch (chance.below(5)) {
            case 0 -> value + chance.of(List.of(" at most ", " at least ", " <= ", " >= ")) + of(limit, inner);
            case 1 -> simple(kind == Kind.GAP ? Kind.GAP : Kind.LENGTH) + " between 0.02 mm and 0.1 mm";
            case 2 -> simple(Kind.LENGTH) + " at most 0.1 mm tolerate to 0.2 mm";
            case 3 -> of(Kind.DIFFERENCE, inner) + " within 3 K of " + of(Kind.DIFFERENCE, inner);
            default -> simple(Kind.GAP) + " between 0.05 mm and 0.1 mm tolerate to 0.03 mm, 0.14 mm";
        };
    }

    private String ordered(int inner) {
        return switch (chance.below(4)) {
            case 0 -> simple(Kind.GRADE) + chance.of(List.of(" at least ", " at most ", " is ")) + "soft";
            case 1 ->
                simple(Kind.CHOICE)
                        + chance.of(List.of(" is ", " is not "))
                        + chance.of(List.of("red", "green", "\"dark blue\""));
            case 2 -> simple(Kind.CHOICE) + " is one of red, \"dark blue\"";
            default -> of(Kind.CONDITION, inner) + " is yes";
        };
    }

    private String dated(int inner) {
        String day = of(Kind.DATE, inner);
        String other = of(Kind.DATE, inner);
        return switch (chance.below(3)) {
            case 0 -> day + chance.of(List.of(" is ", " is not ")) + chance.of(List.of("before ", "after ")) + other;
            case 1 -> day + chance.of(List.of(" is ", " < ", " >= ")) + other;
            default -> day + " between " + other + " and " + simple(Kind.DATE);
        };
    }

    private String counted() {
        return switch (chance.below(4)) {
            case 0 -> of(Kind.COUNT, 1) + chance.of(List.of(" < ", " at most ", " is ", " > ")) + "3";
            case 1 -> simple(Kind.ITEMS) + " has all of engine.box";
            case 2 -> simple(Kind.TEXT) + " is " + simple(Kind.TEXT);
            default -> simple(Kind.COUNT) + " is " + simple(Kind.COUNT);
        };
    }

    /** A text with holes, some of which say how to show what is in them. */
    String text(int inner) {
        List<String> holes = new ArrayList<>();
        for (int hole = chance.below(4); hole > 0; hole--) {
            Kind kind = chance.of(Kind.ALL);
            String unit = kind == Kind.LENGTH ? chance.of(List.of("", " in thou", " in mm, 2 digits")) : "";
            String value =
                    chance.oneIn(8) ? MadeCall.any(chance, this).text(inner) : of(kind, Math.min(1, inner)) + unit;
            holes.add("{" + value + "}");
        }
        return holes.stream().collect(Collectors.joining(" and ", "\"It is ", ".\""));
    }
}

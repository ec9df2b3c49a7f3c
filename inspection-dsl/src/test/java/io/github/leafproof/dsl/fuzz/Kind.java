package io.github.leafproof.dsl.fuzz;

import io.github.leafproof.inspection.quantity.Dimension;
import java.util.List;
import java.util.Optional;

/** What an expression can stand for, with the ways to declare an observation of it and to write it down at once. */
enum Kind {
    LENGTH,
    GAP,
    TEMPERATURE,
    DIFFERENCE,
    ANGLE,
    NUMBER,
    COUNT,
    CONDITION,
    CHOICE,
    GRADE,
    TEXT,
    ITEMS,
    TIME,
    DATE,
    LENGTHS,
    TEMPERATURES,
    COUNTS;

    static final List<Kind> ALL = List.of(values());

    /** Readings that are repeated. */
    static final List<Kind> SERIES = List.of(LENGTHS, TEMPERATURES, COUNTS);

    /** The kind of quantities of a dimension, for some of them. */
    static Optional<Kind> of(Dimension dimension) {
        return List.of(LENGTH, TEMPERATURE, DIFFERENCE, ANGLE, NUMBER, TIME).stream()
                .filter(kind -> kind.dimension().equals(dimension))
                .findFirst();
    }

    private Dimension dimension() {
        return switch (this) {
            case LENGTH -> Dimension.LENGTH;
            case TEMPERATURE -> Dimension.TEMPERATURE;
            case DIFFERENCE -> Dimension.TEMPERATURE_DIFFERENCE;
            case ANGLE -> Dimension.ANGLE;
            case TIME -> Dimension.TIME;
            default -> Dimension.RATIO;
        };
    }

    /** Types of an observation of this kind, with the gauge that goes with it. */
    List<String> types() {
        return switch (this) {
            case LENGTH -> List.of("length", "length with depth");
            case GAP -> List.of("gap with leaves", "gap with pins");
            case TEMPERATURE -> List.of("temperature", "temperature with infrared");
            case DIFFERENCE -> List.of("temperature difference");
            case ANGLE -> List.of("angle");
            case NUMBER -> List.of("number");
            case COUNT -> List.of("count", "count with clicks");
            case CONDITION -> List.of("yes/no");
            case CHOICE -> List.of("one of red, green, \"dark blue\"");
            case GRADE -> List.of("grade none < soft < firm");
            case TEXT -> List.of("text");
            case ITEMS -> List.of("items");
            case TIME -> List.of("time");
            case DATE -> List.of("date");
            case LENGTHS -> List.of("series of length with depth", "series of length");
            case TEMPERATURES -> List.of("series of temperature", "series of temperature with infrared");
            case COUNTS -> List.of("series of count", "series of count with clicks");
        };
    }

    /** What stands for such a value without any name being declared; nothing for some kinds. */
    List<String> written() {
        return switch (this) {
            case LENGTH -> List.of("0.05 mm", "0 mm", "1.5e-3 m", "2 thou", "engine.lash_max", "0.10 ± 0.02 mm");
            case TEMPERATURE -> List.of("21 °C", "70 degF", "21.3 °C (u 0.2 K)");
            case DIFFERENCE -> List.of("3 K", "0.5 K");
            case ANGLE -> List.of("0.25 turns", "90 deg", "0 rad", "1e6 turns");
            case NUMBER -> List.of("0", "1", "2.5", "1e-100", "1e99", "50 %", "engine.rocker_ratio", "60 % ± 5 %");
            case COUNT -> List.of("0", "7");
            case CONDITION -> List.of("yes", "no", "engine.choke");
            case TEXT -> List.of("\"nothing\"", "\"\"", "\"a \\\"quoted\\\" word\"", "engine.model");
            case ITEMS -> List.of("engine.box");
            case TIME -> List.of("30 s", "0 s", "7 d", "1e9 h");
            case DATE -> List.of("2026-03-04", "2024-02-29", "0001-01-01", "9999-12-31");
            case GAP, CHOICE, GRADE, LENGTHS, TEMPERATURES, COUNTS -> List.of();
        };
    }

    /** How well a value of this kind can be said to be known; nothing for what is not measured. */
    List<String> uncertainties() {
        return switch (this) {
            case LENGTH -> List.of("± 0.01 mm", "± 2 %", "(u 1e-3 mm)", "(U 0.004 mm, k 2)", "(U = 1 thou, k = 1.96)");
            case TEMPERATURE -> List.of("± 2 K", "(u 0.5 K)", "(U 1 K, k 2)");
            case DIFFERENCE -> List.of("± 0.1 K", "± 5 %");
            case ANGLE -> List.of("(u 1 deg)", "± 1 %");
            case NUMBER -> List.of("± 0.1", "± 5 %", "(U 1e-3, k 3)");
            case TIME -> List.of("(u 1 s)", "± 1 d");
            default -> List.of();
        };
    }

    /** What an engine card can say where such a fact is declared, as JSON; nothing for what no card can state. */
    List<String> onCard() {
        return switch (this) {
            case LENGTH -> List.of("\"0.05 mm\"", "\"-1 m\"");
            case TEMPERATURE -> List.of("\"21 °C\"");
            case DIFFERENCE -> List.of("\"3 K\"");
            case ANGLE -> List.of("\"0.25 turns\"");
            case NUMBER -> List.of("0.5", "-3");
            case COUNT -> List.of("0", "7");
            case CONDITION -> List.of("true", "false");
            case CHOICE -> List.of("\"red\"", "\"dark blue\"");
            case GRADE -> List.of("\"none\"", "\"soft\"");
            case TEXT -> List.of("\"nothing\"", "\"B 3\"");
            case ITEMS -> List.of("[\"engine\", \"manual\"]");
            case TIME -> List.of("\"7 d\"");
            case DATE -> List.of("\"2026-03-04\"");
            case GAP, LENGTHS, TEMPERATURES, COUNTS -> List.of();
        };
    }
}

package io.github.leafproof.dsl.fuzz;

import java.util.List;

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
    ITEMS;

    static final List<Kind> ALL = List.of(values());

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
        };
    }

    /** What stands for such a value without any name being declared; nothing for some kinds. */
    List<String> written() {
        return switch (this) {
            case LENGTH -> List.of("0.05 mm", "0 mm", "1.5e-3 m", "2 thou", "engine.lash_max");
            case TEMPERATURE -> List.of("21 °C", "70 degF");
            case DIFFERENCE -> List.of("3 K", "0.5 K");
            case ANGLE -> List.of("0.25 turns", "90 deg", "0 rad", "1e6 turns");
            case NUMBER -> List.of("0", "1", "2.5", "1e-100", "1e99", "50 %", "engine.rocker_ratio");
            case COUNT -> List.of("0", "7");
            case CONDITION -> List.of("yes", "no", "engine.choke");
            case TEXT -> List.of("\"nothing\"", "\"\"", "\"a \\\"quoted\\\" word\"", "engine.model");
            case ITEMS -> List.of("engine.box");
            case GAP, CHOICE, GRADE -> List.of();
        };
    }
}

package io.github.leafproof.dsl.fuzz;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Entries for a procedure's observations, some left out and some corrected, all of which make sense. */
public final class MadeSheet {

    private static final List<String> LEAVES =
            List.of("0.04 mm", "0.05 mm", "0.10 mm", "0.20 mm", "0.04 mm\", \"0.05 mm");
    private static final List<String> PINS = List.of("0.70 mm", "0.80 mm");

    private final Chance chance;
    private final List<String> entries = new ArrayList<>();

    private MadeSheet(Chance chance) {
        this.chance = chance;
    }

    /** The entries, as they stand in a sheet. */
    public static List<String> entries(CheckGraph graph, Chance chance) {
        MadeSheet sheet = new MadeSheet(chance);
        graph.observations().forEach(sheet::enter);
        return List.copyOf(sheet.entries);
    }

    private void enter(Node.Observation observation) {
        if (chance.oneIn(6)) {
            return;
        }
        add(observation, "");
        switch (chance.below(12)) {
            case 9 -> {
                // More readings stand behind those before; anything else is given once, or corrected.
                if (observation.type() instanceof Type.Series) {
                    add(observation, "");
                }
            }
            case 10 -> add(observation, ", \"corrects\": true");
            case 11 -> {
                entries.add("{ \"adjust\": \"" + observation.name() + "\", \"turn\": \"-0.25 turns\" }");
                add(observation, "");
            }
            default -> {}
        }
    }

    private void add(Node.Observation observation, String more) {
        String given = chance.oneIn(12) ? "\"cannot\": \"too dark\"" : given(observation);
        entries.add("{ \"observe\": \"" + observation.name() + "\", " + given + more + " }");
    }

    private String given(Node.Observation observation) {
        Type type = observation.type();
        if (type instanceof Type.Gap) {
            return trials(observation);
        } else if (type instanceof Type.Series series) {
            return series(series.of());
        } else if (type instanceof Type.Items) {
            return "\"items\": " + chance.of(List.of("[]", "[\"engine\"]", "[\"engine\", \"glow plug\", \"manual\"]"));
        }
        return "\"value\": " + value(type);
    }

    private String series(Type of) {
        List<String> readings = new ArrayList<>();
        for (int more = 1 + chance.below(6); more > 0; more--) {
            readings.add(value(of));
        }
        return "\"series\": [" + String.join(", ", readings) + "]";
    }

    private String value(Type type) {
        if (type instanceof Type.YesNo) {
            return chance.of(List.of("true", "false"));
        } else if (type instanceof Type.Choice choice) {
            return "\"" + chance.of(choice.options()) + "\"";
        } else if (type instanceof Type.Count) {
            return chance.of(List.of("0", "3", "1000000000", "7.0"));
        } else if (type instanceof Type.Date) {
            return chance.of(List.of("\"2026-03-04\"", "\"2024-02-29\"", "\"0001-01-01\"", "\"9999-12-31\""));
        } else if (type instanceof Type.Measure measure) {
            return "\"" + amount(measure.dimension()) + "\"";
        }
        return chance.of(List.of("\"nothing\"", "\"a \\\"crack\\\"\""));
    }

    private String amount(Dimension dimension) {
        String number = chance.of(List.of("0", "0.05", "0.1", "-3", "21.5", "1e-9", "12345"));
        if (dimension.isRatio()) {
            return number;
        }
        if (dimension.isAbsolute()) {
            return number + " °C";
        }
        return number + unit(dimension);
    }

    private static String unit(Dimension dimension) {
        if (dimension.equals(Dimension.LENGTH)) {
            return " mm";
        }
        boolean angle = dimension.equals(Dimension.ANGLE);
        // What is none of these is a difference of temperatures.
        return angle ? " turns" : dimension.equals(Dimension.TIME) ? " d" : " K";
    }

    private String trials(Node.Observation observation) {
        List<String> trials = new ArrayList<>();
        boolean pins = observation.gauge() != null && observation.gauge().name().equals("pins");
        for (int more = 1 + chance.below(3); more > 0; more--) {
            trials.add("{ \"leaf\": [\"" + chance.of(pins ? PINS : LEAVES) + "\"], \"result\": \""
                    + chance.of(List.of("passes", "refuses", "drags")) + "\" }");
        }
        return "\"trials\": [" + String.join(", ", trials) + "]";
    }
}

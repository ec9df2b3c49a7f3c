package io.github.leafproof.inspection.mechanism;

import io.github.leafproof.inspection.quantity.Csv;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The page of all calculations, made from what each says of itself, its worked example and its check values. */
final class MechanicsPage {
    private static final int SHOWN = 4;

    private static final String INTRODUCTION = """
            # What the trade calculates

            Every calculation that Leafproof brings, with its formula, what it takes, what it assumes, where it comes from, a worked example and figures
            from outside that it is held to. A procedure calls each by its name, such as `piston_travel(40 deg, engine.stroke, engine.rod_length)`; a Java
            program by its constant, such as `CrankSlider.PISTON_TRAVEL.of(angle, stroke, rod)`. In a procedure `50 per s` is written `50 / 1 s`, and
            `0.00002 per K` is written `0.00002 / 1 K`. At the command line [the bench calculator](reckon.md) reckons each.

            - **Nothing is assumed in silence.** What was not measured has no default: exponents, friction, emissivity and the like are inputs, and the figure
              of common practice stands beside them. What a formula leaves out is among its assumptions.
            - **Uncertainty flows through.** Every input may be uncertain; how far the answer is moved by each is found by trying (JCGM 100 clause 5.1.3, note 2,
              from memory), and what two inputs share is counted once.
            - **Nonsense is refused.** An input outside its range, or against another, gives no number but the reason: which input, what it is, what it must
              be, and why. In a procedure the value is then not known, and no verdict rests on it.
            - **The engine's own instructions come first.** These are sums, not instructions: where the engine's papers, local rules or a qualified person say
              otherwise, they are right.

            What is said of a figure: *seen*, it was read in a copy of the source named; *recomputed*, it was worked out apart from this project; *from memory*,
            quoted without a copy at hand; *common practice*, of the trade, and written down by no maker; *definition*, true by what the words mean. A *trade
            sheet* is our own collection of what the trade practises.

            This page is made by `MechanicsPageTest`, and so are the answers on it.
            """;

    private static final String SEVERAL = """

            ## From several readings

            For programs, in the same room:

            - `Trend.slope`: whether a peak speed or a lash has settled, by least squares over runs or hours. Its uncertainty is that of the scatter, with n − 2
              degrees of freedom, so that a limit on it is judged by Student's t. Held to the regression of Apache Commons Math.
            - `NeedleSweep`: peak and flight needle from three tacho points or more, by the parabola that fits them best. Fewer, no fall on both sides, or a peak
              outside what was measured is refused.
            - `ColumnTest`: siphon or leak, from three looks at the fuel column (common practice): one that falls with the needle shut leaks; one that falls with
              the tank level leaks behind the needle; one that falls only with the needle open and the tank low is a siphon, as it must be.
            - `WarmReading`: a lash read warm. Without materials and lengths it is refused, with the time to wait.
            - `RunPlan`: plans for running in, each for one build of piston. The engine's own instructions come first.

            """;

    private final Map<String, List<Csv.Row>> checks;

    MechanicsPage(List<Csv.Row> rows) {
        checks = rows.stream()
                .collect(Collectors.groupingBy(row -> row.get("mechanism"), LinkedHashMap::new, Collectors.toList()));
    }

    String text() {
        StringBuilder page = new StringBuilder(INTRODUCTION);
        for (Mechanisms.Subject subject : Mechanisms.subjects()) {
            page.append("\n## ").append(subject.title()).append('\n');
            subject.mechanisms().forEach(mechanism -> page.append(section(mechanism)));
        }
        return page.append(SEVERAL).append(plans()).toString();
    }

    private static String plans() {
        StringBuilder table =
                new StringBuilder("| plan | piston | runs | each | speed | how |\n|---|---|---|---|---|---|\n");
        for (RunPlan plan : RunPlan.all()) {
            for (RunPlan.Block block : plan.blocks()) {
                table.append("| ")
                        .append(String.join(
                                " | ",
                                plan.name(),
                                plan.build().name().toLowerCase(Locale.ROOT),
                                Integer.toString(block.runs()),
                                block.time().toString(),
                                block.lowest().number() + " to " + block.highest(),
                                block.how() + ", cooled fully after each"))
                        .append(" |\n");
            }
        }
        return table.append("\nAll of them common practice, of clubs and shops that disagree.\n")
                .toString();
    }

    private String section(Mechanism mechanism) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("### " + mechanism.name());
        lines.add("");
        lines.add("`"
                + call(mechanism, mechanism.inputs().stream().map(Input::name).toList()) + "`: " + mechanism.meaning()
                + ".");
        lines.add("");
        lines.add("- gives " + mechanism.result().phrase() + ": `" + mechanism.formula() + "`");
        for (Input input : mechanism.inputs()) {
            lines.add("- `" + input.name() + "`: " + input.meaning() + ". From " + input.low() + " to " + input.high()
                    + ": " + input.because() + ".");
        }
        mechanism.limits().forEach(limit -> lines.add("- limit: the " + limit + "."));
        mechanism.assumptions().forEach(assumption -> lines.add("- assumes: " + assumption + "."));
        lines.add("- source: " + mechanism.source() + ".");
        lines.add("");
        lines.add("Worked example: `"
                + call(
                        mechanism,
                        mechanism.example().stream().map(Quantity::toString).toList()) + "` is **"
                + answer(mechanism, mechanism.example()) + "**.");
        lines.add("");
        lines.addAll(checks(mechanism));
        return lines.stream().collect(Collectors.joining("\n", "", "\n"));
    }

    private static String call(Mechanism mechanism, List<String> inputs) {
        return mechanism.name() + "(" + String.join(", ", inputs) + ")";
    }

    /** To five digits, in the unit people speak of. */
    private static String answer(Mechanism mechanism, List<Quantity> inputs) {
        Estimate found =
                mechanism.of(inputs.stream().map(Estimate::exact).toList()).known();
        double inUnit = mechanism.unit().fromBase(found.value());
        double place = mechanism.unit().toBase(1) - mechanism.unit().toBase(0);
        return Display.of(found.value(), found.dimension(), Math.abs(inUnit) * place * 1e-3, mechanism.unit());
    }

    private List<String> checks(Mechanism mechanism) {
        List<Csv.Row> rows = checks.getOrDefault(mechanism.name(), List.of());
        Map<String, Csv.Row> bySource = new LinkedHashMap<>();
        // The last of a source: the first of a series is mostly where nothing has happened yet.
        rows.forEach(row -> bySource.put(row.get("source"), row));
        List<String> lines = new ArrayList<>();
        lines.add("| must come to | for | by | how far to trust it |");
        lines.add("|---|---|---|---|");
        bySource.values().stream()
                .limit(SHOWN)
                .forEach(row -> lines.add(
                        "| " + row.get("expected") + " | " + row.get("inputs").replace(" ;", ",") + " | "
                                + row.get("source") + " | " + row.get("status") + " |"));
        if (rows.size() > SHOWN) {
            lines.add("");
            lines.add(rows.size() + " figures in all: `check-values.csv`.");
        }
        return lines;
    }
}

package io.github.leafproof.dsl.draw;

import static io.github.leafproof.dsl.html.Html.element;

import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Ink;
import io.github.leafproof.inspection.verdict.Outcome;

/** The style sheet of a drawing, and the heads of its arrows; light, and dark where the reader's screen is. */
final class SvgStyle {

    static final String TEXT = text();

    private SvgStyle() {}

    private static String text() {
        StringBuilder light = new StringBuilder();
        StringBuilder dark = new StringBuilder();
        for (Outcome outcome : Outcome.values()) {
            Ink ink = Ink.of(outcome);
            rules(light, outcome.word(), ink.light());
            rules(dark, outcome.word(), ink.dark());
        }
        return """
                .graph text { font-family: system-ui, "Segoe UI", "Helvetica Neue", Arial, "DejaVu Sans", sans-serif; }
                .graph .head { font-size: 20px; font-weight: 600; fill: #1b1f24; }
                .graph .stage { font-size: 15px; font-weight: 600; fill: #1b1f24; }
                .graph .name { font-size: 14px; font-weight: 600; fill: #1b1f24; }
                .graph .note { font-size: 12px; fill: #4b535d; }
                .graph .word { font-size: 11px; font-weight: 700; letter-spacing: 0.5px; }
                .graph .letter { font-size: 15px; font-weight: 700; fill: #ffffff; }
                .graph .paper { fill: #ffffff; }
                .graph .lane { fill: #f6f8fa; stroke: #d0d7de; }
                .graph .box { fill: #ffffff; stroke: #57606a; stroke-width: 1.3; }
                .graph .observation .box { fill: #edf4fd; stroke: #4a76a8; }
                .graph .value .box { fill: #fdf6e3; stroke: #a1822a; }
                .graph .bar { stroke: #57606a; stroke-width: 1.3; }
                .graph .gate .box { stroke-width: 2; }
                .graph .feeds, .graph .decides, .graph .gates { fill: none; stroke: #7d8894; stroke-width: 1.4; }
                .graph .decides { stroke-dasharray: 5 4; }
                .graph .gates { stroke: #a8501c; stroke-width: 1.8; }
                .graph .joint { fill: #a8501c; }
                .graph .fed { fill: #7d8894; }
                .graph .gated { fill: #a8501c; }
                .graph .decided { fill: none; stroke: #7d8894; stroke-width: 1.4; }
                """ + light + """
                @media screen and (prefers-color-scheme: dark) {
                  .graph .head, .graph .stage, .graph .name { fill: #e6edf3; }
                  .graph .note { fill: #aab4bf; }
                  .graph .letter { fill: #0d1117; }
                  .graph .paper { fill: #0d1117; }
                  .graph .lane { fill: #151b23; stroke: #30363d; }
                  .graph .box { fill: #0d1117; stroke: #8b949e; }
                  .graph .observation .box { fill: #12233a; stroke: #6d94c4; }
                  .graph .value .box { fill: #2a2310; stroke: #b8973a; }
                  .graph .bar { stroke: #8b949e; }
                  .graph .gates { stroke: #e08a4f; }
                  .graph .joint, .graph .gated { fill: #e08a4f; }
                """ + dark.toString().indent(2) + """
                }
                """;
    }

    /** The heads of the arrows, which links refer to. */
    static Element arrows() {
        return element(
                "defs",
                arrow("fed", 1, 7, "M0 0 L8 4 L0 8 z"),
                arrow("decided", 1, 8, "M1 1 L7 4 L1 7 z"),
                arrow("gated", 1, 8, "M0 0 L8 4 L0 8 z"));
    }

    private static Element arrow(String name, int tip, int size, String shape) {
        return element("marker", element("path").style(name).with("d", shape))
                .id(name)
                .with("viewBox", "0 0 8 8")
                .with("refX", tip)
                .with("refY", 4)
                .with("markerWidth", size)
                .with("markerHeight", size)
                .with("markerUnits", "userSpaceOnUse")
                .with("orient", "auto");
    }

    private static void rules(StringBuilder rules, String outcome, String colour) {
        rules.append(".graph .")
                .append(outcome)
                .append(" .box { stroke: ")
                .append(colour)
                .append("; }\n");
        rules.append(".graph .")
                .append(outcome)
                .append(" .mark, .graph .")
                .append(outcome)
                .append(" .word { fill: ")
                .append(colour);
        rules.append("; }\n");
    }
}

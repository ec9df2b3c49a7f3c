package io.github.leafproof.dsl.draw;

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
                <style>
                text { font-family: system-ui, "Segoe UI", "Helvetica Neue", Arial, "DejaVu Sans", sans-serif; }
                .head { font-size: 20px; font-weight: 600; fill: #1b1f24; }
                .stage { font-size: 15px; font-weight: 600; fill: #1b1f24; }
                .name { font-size: 14px; font-weight: 600; fill: #1b1f24; }
                .note { font-size: 12px; fill: #4b535d; }
                .word { font-size: 11px; font-weight: 700; letter-spacing: 0.5px; }
                .letter { font-size: 15px; font-weight: 700; fill: #ffffff; }
                .paper { fill: #ffffff; }
                .lane { fill: #f6f8fa; stroke: #d0d7de; }
                .box { fill: #ffffff; stroke: #57606a; stroke-width: 1.3; }
                .observation .box { fill: #edf4fd; stroke: #4a76a8; }
                .value .box { fill: #fdf6e3; stroke: #a1822a; }
                .bar { stroke: #57606a; stroke-width: 1.3; }
                .gate .box { stroke-width: 2; }
                .feeds, .decides, .gates { fill: none; stroke: #7d8894; stroke-width: 1.4; }
                .decides { stroke-dasharray: 5 4; }
                .gates { stroke: #a8501c; stroke-width: 1.8; }
                .joint { fill: #a8501c; }
                .fed { fill: #7d8894; }
                .gated { fill: #a8501c; }
                .decided { fill: none; stroke: #7d8894; stroke-width: 1.4; }
                """ + light + """
                @media (prefers-color-scheme: dark) {
                  .head, .stage, .name { fill: #e6edf3; }
                  .note { fill: #aab4bf; }
                  .letter { fill: #0d1117; }
                  .paper { fill: #0d1117; }
                  .lane { fill: #151b23; stroke: #30363d; }
                  .box { fill: #0d1117; stroke: #8b949e; }
                  .observation .box { fill: #12233a; stroke: #6d94c4; }
                  .value .box { fill: #2a2310; stroke: #b8973a; }
                  .bar { stroke: #8b949e; }
                  .gates { stroke: #e08a4f; }
                  .joint, .gated { fill: #e08a4f; }
                """ + dark.toString().indent(2) + """
                }
                </style>
                <defs>
                  <marker id="fed" viewBox="0 0 8 8" refX="1" refY="4" markerWidth="7" markerHeight="7" markerUnits="userSpaceOnUse" orient="auto"><path class="fed" d="M0 0 L8 4 L0 8 z"/></marker>
                  <marker id="decided" viewBox="0 0 8 8" refX="1" refY="4" markerWidth="8" markerHeight="8" markerUnits="userSpaceOnUse" orient="auto"><path class="decided" d="M1 1 L7 4 L1 7 z"/></marker>
                  <marker id="gated" viewBox="0 0 8 8" refX="1" refY="4" markerWidth="8" markerHeight="8" markerUnits="userSpaceOnUse" orient="auto"><path class="gated" d="M0 0 L8 4 L0 8 z"/></marker>
                </defs>""";
    }

    private static void rules(StringBuilder rules, String outcome, String colour) {
        rules.append(".")
                .append(outcome)
                .append(" .box { stroke: ")
                .append(colour)
                .append("; }\n");
        rules.append(".")
                .append(outcome)
                .append(" .mark, .")
                .append(outcome)
                .append(" .word { fill: ")
                .append(colour);
        rules.append("; }\n");
    }
}

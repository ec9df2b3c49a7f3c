package io.github.leafproof.dsl.figure;

import io.github.leafproof.inspection.verdict.Outcome;
import java.util.Locale;

/** How figures look, light and dark. They stand on the page's own ground. */
public final class FigureStyle {

    /** The rules, to be put into the style sheet of a page with figures. */
    public static final String CSS = """
            :root { --band: #dcefe0; --band-edge: #2f7d46; --hatch: #a33a2a; --fill: #3f9a5b; --curve: #1b1f24; --tolerated: #fbefc8 }
            @media screen and (prefers-color-scheme: dark) { :root {
              --band: #18301f; --band-edge: #5fbf7d; --hatch: #ff9d8f; --fill: #4fae6d; --curve: #e4e8ec; --tolerated: #3a3113 } }
            svg.figure { display: block; width: 100%; height: auto }
            .figure text { font: 11.5px system-ui, "Segoe UI", Roboto, "DejaVu Sans", sans-serif; fill: var(--ink) }
            .figure .limit { font-weight: 600 }
            .figure .total { font-weight: 600 }
            .figure .note { fill: var(--quiet) }
            .figure .ground { fill: var(--paper); opacity: 0.9 }
            .figure .grid { stroke: var(--rule); fill: none; stroke-width: 0.75 }
            .figure .axis { stroke: var(--quiet); fill: none }
            .figure .band { fill: var(--band) }
            .figure .tolerated { fill: var(--tolerated); stroke: var(--quiet); stroke-dasharray: 3 2; stroke-width: 0.75 }
            .figure .edge { stroke: var(--band-edge); stroke-width: 1.5; fill: none }
            .figure .inside { fill: var(--fill) }
            .figure .outside { stroke: var(--hatch); stroke-width: 1.5; fill: none }
            .figure .outline { fill: none; stroke: var(--ink); stroke-width: 1 }
            .figure .curve { fill: none; stroke: var(--curve); stroke-width: 1.5 }
            .figure .value { stroke: var(--curve); stroke-width: 1.5; stroke-dasharray: 4 2 }
            .figure .shows { stroke: var(--quiet); stroke-width: 1.5; fill: none }
            .figure .spread { stroke: var(--ink); stroke-width: 3 }
            .figure .leaf { fill: var(--ink); stroke: var(--paper); stroke-width: 1 }
            .figure .dot { fill: var(--ink) }
            .figure .course { fill: none; stroke: var(--quiet); stroke-width: 1.25 }
            svg.mark { width: 1.1em; height: 1.1em; vertical-align: -0.17em; margin-right: 0.35em; flex: none }
            .mark .full { fill: currentColor; stroke: none }
            .mark .hollow { fill: none; stroke: currentColor; stroke-width: 1.6 }
            .mark .sign { fill: none; stroke: var(--paper); stroke-width: 1.8; stroke-linecap: round; stroke-linejoin: round }
            """ + colours();

    private FigureStyle() {}

    private static String colours() {
        StringBuilder rules = new StringBuilder();
        for (Outcome outcome : Outcome.values()) {
            String variable = outcome.word().replace('_', '-').toLowerCase(Locale.ROOT);
            rules.append('.')
                    .append(outcome.word())
                    .append(" { --outcome: var(--")
                    .append(variable)
                    .append(") }\n");
        }
        return rules.append(".mark, .said { color: var(--outcome) }\n.said { font-weight: 700 }\n")
                .toString();
    }
}

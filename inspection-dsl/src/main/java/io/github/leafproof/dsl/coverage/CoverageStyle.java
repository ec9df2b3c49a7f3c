package io.github.leafproof.dsl.coverage;

/**
 * What the page of coverage needs beyond the look that all pages share. What is shown, partly shown and not shown differs in
 * its sign and its line before it differs in its colour.
 */
final class CoverageStyle {

    private CoverageStyle() {}

    static final String CSS = """
            :root {
              --full: #d9f0dd; --full-ink: #0f5a24; --part: #fff0c2; --part-ink: #6d4a00; --none: #ffdcd7; --none-ink: #97170b }
            @media screen and (prefers-color-scheme: dark) { :root {
              --full: #173a22; --full-ink: #8fdca4; --part: #453711; --part-ink: #f2cf74; --none: #4f1f1b; --none-ink: #ffafa5 } }
            tr.all > * { font-weight: 600 }
            .text { border: 1px solid var(--rule); border-radius: 6px; padding: 0.4rem 0; background: var(--wash);
              font: 0.875rem/1.55 ui-monospace, "DejaVu Sans Mono", Menlo, Consolas, monospace }
            .line, .line > summary { display: flex; align-items: flex-start; gap: 0.5rem; padding: 0 0.5rem }
            .line > summary { min-height: 24px }
            details.line { display: block; padding: 0 }
            .line > summary { list-style: none }
            .line > summary::-webkit-details-marker { display: none }
            summary:hover { background: color-mix(in srgb, var(--link) 12%, transparent) }
            .line:target { box-shadow: inset 4px 0 var(--link) }
            .legend > span { margin-right: 0.75rem; white-space: nowrap }
            .line .sign, .told .sign { flex: none; width: 1.1rem; text-align: center }
            .sign { font-weight: 700 }
            .line .number { flex: none; width: 2.6rem; text-align: right; user-select: none }
            .code { flex: 1; min-width: 0; white-space: pre-wrap; overflow-wrap: anywhere }
            .full > .sign, .shown .sign { color: var(--full-ink) }
            .part > .sign { color: var(--part-ink) }
            .none > .sign, .missing .sign { color: var(--none-ink) }
            mark { color: inherit; background: none; border-radius: 2px; padding: 0 1px }
            mark.full { background: var(--full) }
            mark.part { background: var(--part); text-decoration: underline dashed 1px var(--part-ink); text-underline-offset: 3px }
            mark.none { background: var(--none); text-decoration: underline wavy 1px var(--none-ink); text-underline-offset: 3px }
            .told { margin: 0.3rem 0.5rem 0.6rem 2rem; padding: 0.4rem 0.75rem; border-left: 3px solid var(--rule); background: var(--paper);
              font: 0.9375rem/1.5 system-ui, "Segoe UI", Roboto, "DejaVu Sans", sans-serif }
            .told p { margin: 0.2rem 0; font-weight: 600 }
            .told ul { list-style: none; margin: 0 0 0.4rem; padding: 0 }
            .told li { display: flex; gap: 0.4rem }
            .told li > span:last-child { min-width: 0 }
            ol.rehearsals { padding-left: 2.5rem }
            ul.missing { padding-left: 1.25rem }
            @media screen and (max-width: 40rem) {
              .line, .line > summary { gap: 0.3rem; padding: 0 0.3rem }
              .line .number { width: 1.9rem; font-size: 0.75rem; line-height: 1.8 }
              .text { font-size: 0.8125rem }
              .told { margin-left: 0.5rem } }
            @media print { .text { background: none; font-size: 8.5pt } .line { break-inside: avoid } }
            """;
}

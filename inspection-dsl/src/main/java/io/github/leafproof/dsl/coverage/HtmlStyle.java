package io.github.leafproof.dsl.coverage;

/**
 * How the page looks: light or dark as the reader's machine is set, on a screen, a phone and on paper. What is shown, partly
 * shown and not shown differs in its sign and its line before it differs in its colour.
 */
final class HtmlStyle {

    private HtmlStyle() {}

    static final String CSS = """
            :root { color-scheme: light dark;
              --paper: #fff; --ink: #1b1f24; --quiet: #5b6570; --rule: #d7dce1; --wash: #f5f7f9; --link: #0b57a4;
              --full: #d9f0dd; --full-ink: #0f5a24; --part: #fff0c2; --part-ink: #6d4a00; --none: #ffdcd7; --none-ink: #97170b; }
            @media (prefers-color-scheme: dark) { :root {
              --paper: #14171a; --ink: #e4e8ec; --quiet: #9aa5b0; --rule: #353c44; --wash: #1c2126; --link: #8fc3ff;
              --full: #173a22; --full-ink: #8fdca4; --part: #453711; --part-ink: #f2cf74; --none: #4f1f1b; --none-ink: #ffafa5; } }
            * { box-sizing: border-box }
            body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.5 system-ui, sans-serif }
            main { max-width: 72rem; margin: 0 auto; padding: 1rem }
            h1 { font-size: 1.5rem; line-height: 1.25; margin: 0.5rem 0 }
            h2 { font-size: 1.25rem; line-height: 1.25; margin: 2.5rem 0 0.5rem; padding-top: 0.75rem; border-top: 2px solid var(--rule) }
            h3 { font-size: 1rem; margin: 1.75rem 0 0.4rem; overflow-wrap: anywhere }
            a { color: var(--link) }
            a:focus-visible, summary:focus-visible { outline: 3px solid var(--link); outline-offset: 1px }
            .quiet { color: var(--quiet) }
            .scroll { overflow-x: auto }
            table { border-collapse: collapse; margin: 0.75rem 0 }
            th, td { padding: 0.2rem 1rem 0.2rem 0; text-align: left; border-bottom: 1px solid var(--rule); font-weight: normal }
            td.number { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums }
            tr.all > * { font-weight: 600 }
            .text { border: 1px solid var(--rule); border-radius: 6px; padding: 0.4rem 0; background: var(--wash);
              font: 0.875rem/1.55 ui-monospace, "DejaVu Sans Mono", Menlo, Consolas, monospace }
            .line, .line > summary { display: flex; align-items: flex-start; gap: 0.5rem; padding: 0 0.5rem }
            details.line { display: block; padding: 0 }
            summary { cursor: pointer }
            .line > summary { list-style: none }
            .line > summary::-webkit-details-marker { display: none }
            summary:hover { background: color-mix(in srgb, var(--link) 12%, transparent) }
            .line:target { box-shadow: inset 4px 0 var(--link) }
            .legend span { margin-right: 0.75rem }
            .sign { flex: none; width: 1.1rem; text-align: center; font-weight: 700 }
            .number { color: var(--quiet) }
            .line .number { flex: none; width: 2.6rem; text-align: right; user-select: none }
            .code { flex: 1; min-width: 0; white-space: pre-wrap; overflow-wrap: anywhere }
            .legend .sign { margin-right: 0 }
            .full > .sign, .shown .sign { color: var(--full-ink) }
            .part > .sign { color: var(--part-ink) }
            .none > .sign, .missing .sign { color: var(--none-ink) }
            mark { color: inherit; background: none; border-radius: 2px; padding: 0 1px }
            mark.full { background: var(--full) }
            mark.part { background: var(--part); text-decoration: underline dashed 1px var(--part-ink); text-underline-offset: 3px }
            mark.none { background: var(--none); text-decoration: underline wavy 1px var(--none-ink); text-underline-offset: 3px }
            .told { margin: 0.3rem 0.5rem 0.6rem 2rem; padding: 0.4rem 0.75rem; border-left: 3px solid var(--rule); background: var(--paper);
              font: 0.9375rem/1.5 system-ui, sans-serif }
            .told p { margin: 0.2rem 0; font-weight: 600; overflow-wrap: anywhere }
            .told ul { list-style: none; margin: 0 0 0.4rem; padding: 0 }
            .told li { display: flex; gap: 0.4rem; overflow-wrap: anywhere }
            .told li > span:last-child { min-width: 0 }
            ol.rehearsals { padding-left: 2.5rem }
            ol.rehearsals li { overflow-wrap: anywhere }
            ul.missing { padding-left: 1.25rem; overflow-wrap: anywhere }
            .hidden { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap }
            @media (max-width: 40rem) {
              main { padding: 0.6rem }
              .line, .line > summary { gap: 0.3rem; padding: 0 0.3rem }
              .line .number { width: 1.9rem; font-size: 0.75rem; line-height: 1.8 }
              .text { font-size: 0.8125rem }
              .told { margin-left: 0.5rem } }
            @media print { .text { background: none } a { color: inherit } }
            """;
}

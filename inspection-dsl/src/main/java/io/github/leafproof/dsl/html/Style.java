package io.github.leafproof.dsl.html;

import io.github.leafproof.inspection.verdict.Outcome;
import java.util.Locale;
import java.util.function.Function;

/**
 * How every page looks: light or dark as the reader's screen is set, readable on a phone, always light on paper. What a
 * colour says is said by a word or a shape first.
 */
final class Style {

    private Style() {}

    static final String SHARED = """
            :root { color-scheme: light dark;
              --paper: #fff; --ink: #1b1f24; --quiet: #56606b; --rule: #d7dce1; --wash: #f5f7f9; --link: #0b57a4;
            %s}
            @media screen and (prefers-color-scheme: dark) { :root {
              --paper: #14171a; --ink: #e4e8ec; --quiet: #a3adb8; --rule: #3a424b; --wash: #1c2126; --link: #8fc3ff;
            %s} }
            * { box-sizing: border-box }
            html { -webkit-text-size-adjust: 100%%; text-size-adjust: 100%% }
            body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.5 system-ui, "Segoe UI", Roboto, "DejaVu Sans", sans-serif }
            body > header, main, body > footer { max-width: 72rem; margin: 0 auto; padding: 1rem }
            h1 { font-size: 1.5rem; line-height: 1.25; margin: 0.5rem 0; text-wrap: balance }
            h2 { font-size: 1.25rem; line-height: 1.25; margin: 2.5rem 0 0.5rem; padding-top: 0.75rem; border-top: 2px solid var(--rule) }
            h3 { font-size: 1rem; margin: 1.75rem 0 0.4rem }
            h1, h2, h3, p, li, dd { overflow-wrap: anywhere }
            td, th { overflow-wrap: break-word }
            p { margin: 0.5rem 0 }
            a { color: var(--link) }
            :focus-visible { outline: 3px solid var(--link); outline-offset: 1px }
            summary { cursor: pointer }
            figure { margin: 1rem 0 }
            svg { max-width: 100%% }
            .quiet { color: var(--quiet) }
            .scroll { overflow-x: auto }
            table { border-collapse: collapse; margin: 0.75rem 0 }
            caption { text-align: left }
            th, td { padding: 0.25rem 1rem 0.25rem 0; text-align: left; vertical-align: top; border-bottom: 1px solid var(--rule); font-weight: normal }
            thead th { color: var(--quiet); font-size: 0.875rem; vertical-align: bottom }
            th.number, td.number { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums }
            .number { color: var(--quiet) }
            .tick { display: inline-block; width: 1em; height: 1em; border: 1.5px solid var(--ink); border-radius: 2px; vertical-align: -0.15em }
            .hidden { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%%); white-space: nowrap }
            .print-only { display: none }
            @media screen and (max-width: 40rem) {
              body > header, main, body > footer { padding: 0.6rem 0.75rem }
              table.cards, .cards > tbody, .cards > tbody > tr, .cards > tbody > tr > * { display: block }
              .cards > thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%%) }
              .cards > tbody > tr { border-bottom: 1px solid var(--rule); padding: 0.5rem 0 }
              .cards > tbody > tr > * { border: 0; padding: 0.1rem 0 }
              .cards > tbody > tr > th { font-weight: 600 }
              .cards > tbody > tr > td { display: grid; grid-template-columns: 5.5rem minmax(0, 1fr); gap: 0.5rem }
              .cards td::before { content: attr(data-column); color: var(--quiet); font-size: 0.875rem; padding-top: 0.1rem } }
            @page { margin: 14mm 13mm 15mm }
            @media print {
              :root { color-scheme: light }
              body { font-size: 9.5pt; line-height: 1.4 }
              body > header, main, body > footer { max-width: none; padding: 0 }
              h1 { font-size: 16pt } h2 { font-size: 12.5pt; margin-top: 1.25rem } h3 { font-size: 10.5pt; margin-top: 0.9rem }
              h1, h2, h3, caption { break-after: avoid }
              figure, tr, li, .keep { break-inside: avoid }
              p, li { orphans: 3; widows: 3 }
              thead { display: table-header-group }
              a { color: inherit; text-decoration: none }
              .scroll { overflow: visible }
              .screen-only { display: none } .print-only { display: block } }
            """.formatted(colours(Ink::light), colours(Ink::dark));

    /** A colour of the style sheet for each outcome: {@code var(--not-applicable)}. */
    static String colour(Outcome outcome) {
        return "--" + outcome.word().replace('_', '-').toLowerCase(Locale.ROOT);
    }

    private static String colours(Function<Ink, String> ink) {
        StringBuilder colours = new StringBuilder("  ");
        for (Outcome outcome : Outcome.values()) {
            colours.append(colour(outcome))
                    .append(": ")
                    .append(ink.apply(Ink.of(outcome)))
                    .append("; ");
        }
        return colours.toString();
    }
}

package io.github.leafproof.dsl.page;

/** What the report's page needs beyond the look that all pages share. */
final class PageStyle {

    private PageStyle() {}

    static final String CSS = """
            .verdict { border: 2px solid var(--rule); border-radius: 10px; padding: 0.75rem 1rem; margin: 0.75rem 0 1rem; background: var(--wash); break-inside: avoid }
            .decision { font-size: 1.25rem; line-height: 1.35; margin: 0 }
            .decision strong { color: var(--outcome); letter-spacing: 0.03em }
            .why { margin: 0.35rem 0 0 }
            .facts { display: grid; grid-template-columns: repeat(auto-fill, minmax(9rem, 1fr)); gap: 0.6rem 1.25rem; margin: 0 0 1rem }
            .facts dt { color: var(--quiet); font-size: 0.8125rem }
            .facts dd { margin: 0 }
            .outcomes { list-style: none; margin: 0; padding: 0 }
            .outcomes li { margin: 0.15rem 0 }
            .cautions ul { padding-left: 1.25rem }
            .cautions li { margin: 0.2rem 0 }
            .caution { border-left: 4px solid var(--open); padding-left: 0.6rem }
            .steps > li { margin: 0.6rem 0 }
            .figures { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(19rem, 100%), 1fr)); gap: 1rem }
            .figures > figure { margin: 0; padding: 0.75rem; border: 1px solid var(--rule); border-radius: 8px; display: flex; flex-direction: column; gap: 0.4rem }
            .figures figcaption { display: flex; justify-content: space-between; gap: 0.75rem; align-items: baseline; font-size: 0.9375rem; line-height: 1.3 }
            .figures figcaption .said { white-space: nowrap; flex: none }
            .figures figcaption > a { min-width: 0 }
            body > header { padding-bottom: 0 } main { padding-top: 0 } main > section:first-child h2 { margin-top: 1.25rem }
            .figures p { margin: 0; font-size: 0.875rem }
            .figures svg.figure { margin-bottom: auto }
            .plain { color: inherit; font-weight: 600; text-decoration-color: var(--rule); text-underline-offset: 2px }
            .evidence { width: 100%; font-size: 0.9375rem; line-height: 1.4 }
            .evidence th p { font-weight: normal }
            .evidence p, .evidence ul { margin: 0 0 0.25rem }
            .evidence ul { padding-left: 1.1rem }
            .evidence .said { white-space: nowrap }
            .drawn svg { display: block; width: 100%; min-width: 60rem; height: auto }
            @media print { .drawn svg { min-width: 0; break-inside: avoid } }
            @media (min-width: 40.01rem), print {
              .evidence { table-layout: fixed }
              .evidence thead th:nth-child(1) { width: 19% } .evidence thead th:nth-child(2) { width: 10.5rem }
              .evidence thead th:nth-child(3) { width: 23% } .evidence thead th:nth-child(4) { width: 15% } }
            .evidence tr.group th { font-weight: 600; font-size: 1rem; padding-top: 1.25rem; border-bottom: 2px solid var(--rule) }
            .evidence tr:target > * { background: var(--wash) }
            .files { width: 100% }
            .files td { overflow-wrap: anywhere } .files code { font-size: 0.8125rem }
            @media print {
              .evidence { font-size: 8.5pt } .evidence thead th:nth-child(2) { width: 27mm } .figures { display: block }
              .figures > figure { display: inline-block; width: 48.5%; margin: 0 0.5% 3mm; vertical-align: top; padding: 2mm; break-inside: avoid }
              .figures > figure figcaption, .figures p { font-size: 8.5pt } .figures svg.figure { margin-top: 1mm }
              .evidence th, .evidence td { padding-top: 0.6mm; padding-bottom: 0.6mm }
              .figures figure { font-size: 8.5pt } h3 + p, tr.group { break-after: avoid; break-inside: avoid }
              #drawing:has(details:not([open])) { display: none }
              .files code { font-size: 6.5pt } }
            """;
}

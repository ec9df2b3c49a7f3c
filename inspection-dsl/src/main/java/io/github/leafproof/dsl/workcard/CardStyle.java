package io.github.leafproof.dsl.workcard;

/** How a work card looks: dense, black on white on paper, two columns where there is room for them. */
final class CardStyle {

    private static final String CSS = """
            .fields { display: flex; flex-wrap: wrap; gap: 0.7em 1em; margin: 0.6em 0 }
            .field { display: flex; flex: 1 1 11em; align-items: end; gap: 0.4em }
            .blank { display: inline-block; min-width: 4.2em; height: 1.35em; border-bottom: 1px solid var(--ink) }
            .field .blank, .blank.long { flex: 1; width: 100% }
            .steps { columns: 24rem; column-gap: 2rem; column-rule: 1px solid var(--rule) }
            .steps h2 { margin: 0.9em 0 0.3em; padding-top: 0.3em; break-after: avoid }
            .steps h2:first-child { margin-top: 0 }
            .step { break-inside: avoid; padding: 0.3em 0; border-bottom: 1px solid var(--rule) }
            .step p, .change p, .caution { margin: 0.12em 0 }
            .step > p:first-child { break-after: avoid }
            .small { color: var(--quiet); font-size: 0.85em; line-height: 1.3 }
            .small:empty { display: none }
            .lasting { color: var(--quiet); font-size: 0.85em; white-space: nowrap }
            .answer { display: inline-block; margin: 0 1.2em 0 0 }
            .caution { border: 1.5px solid var(--ink); padding: 0.25em 0.5em; margin: 0.35em 0; break-inside: avoid; break-after: avoid }
            .change { background: var(--wash); border-left: 4px solid var(--ink); padding: 0.2em 0.5em; margin: 0.35em 0; break-inside: avoid; break-after: avoid }
            .trials { margin: 0.2em 0; width: 100% }
            .trials th, .trials td { padding: 0.08em 0.4em 0.08em 0; line-height: 1.35; white-space: nowrap }
            .trials thead th { font-size: 0.85em }
            .trials .blank { min-width: 7em }
            .signature { border-top: 2px solid var(--ink); padding-top: 0.6em; margin-top: 1em }
            .signature .field:nth-child(-n+2) { flex-basis: 100% }
            @media print {
              body { font-size: 8.5pt; line-height: 1.3 }
              .steps { columns: 2; column-gap: 7mm }
              .steps h2 { font-size: 10.5pt }
              .change { border: 1px solid var(--ink); border-left-width: 4px }
              .trials thead { display: table-row-group } }
            """;

    private CardStyle() {}

    /**
     * The rules of a card.
     *
     * @param foot what stands at the foot of every page
     */
    static String of(String foot) {
        return CSS + "@page { margin: 11mm 11mm 13mm; @bottom-left { content: \"" + quoted(foot)
                + "\"; font: 7.5pt sans-serif }"
                + " @bottom-right { content: \"page \" counter(page) \" of \" counter(pages); font: 7.5pt sans-serif } }\n";
    }

    /** Names of procedures are plain, and whatever else somebody may bring in cannot end the text. */
    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder();
        text.codePoints().forEach(letter -> {
            boolean plain = Character.isLetterOrDigit(letter) || " _-.".indexOf(letter) >= 0;
            quoted.append(plain ? Character.toString(letter) : "\\" + Integer.toHexString(letter) + " ");
        });
        return quoted.toString();
    }
}

package io.github.leafproof.dsl.mutants;

import io.github.leafproof.dsl.json.JsonPage;
import io.github.leafproof.dsl.mutants.MutantReport.Judged;
import io.github.leafproof.dsl.source.SourceText;
import java.util.Locale;

/** What the rehearsals notice, for programs; docs/formats.md describes it, and its schema lies beside that page. */
public final class MutantsJson {

    private MutantsJson() {}

    /** The same report gives the same text on every machine; it ends in a line end. */
    public static String write(MutantReport report, Accepted accepted) {
        return JsonPage.write(page -> {
            page.text("format", "leafproof-mutants/1");
            page.texts("procedures", report.files());
            page.number("rehearsals", report.rehearsals());
            page.number("noticed", report.noticed());
            page.number("decide_alike", report.same());
            page.number("do_not_compile", report.refused());
            page.list("surviving", report.surviving(), judged -> survivor(judged, accepted, page));
        });
    }

    private static void survivor(Judged judged, Accepted accepted, JsonPage page) {
        Mutant mutant = judged.mutant();
        SourceText.Position position = mutant.position();
        page.text("name", mutant.name());
        page.text("kind", mutant.kind().name().toLowerCase(Locale.ROOT));
        page.text("file", mutant.span().source().name());
        page.number("line", position.line());
        page.number("column", position.column());
        page.texts("before", mutant.before());
        page.texts("after", mutant.after());
        page.text("accepted", accepted.reason(mutant).orElse(null));
        Nearest nearest = ((Fate.Survives) judged.fate()).nearest().orElse(null);
        page.object("nearest", nearest, near -> {
            page.text("rehearsal", near.title());
            page.text("place", near.place());
            page.text("of", near.of());
            page.text("is", near.was());
            page.text("would_be", near.becomes());
            page.yesNo("other_outcome", near.isOtherwise());
        });
    }
}

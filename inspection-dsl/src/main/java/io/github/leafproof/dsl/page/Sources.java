package io.github.leafproof.dsl.page;

import static io.github.leafproof.dsl.html.Html.element;
import static io.github.leafproof.dsl.html.Html.heading;
import static io.github.leafproof.dsl.html.Html.p;
import static io.github.leafproof.dsl.html.Html.section;
import static io.github.leafproof.dsl.html.Html.words;

import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Table;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.ReportFile;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The files that the judgement rests on, each known by the digest of its bytes, and what wrote this page. */
final class Sources {

    private Sources() {}

    static List<Element> of(Report report) {
        Table table = Table.of("The files and their digests", "File", "Name", "SHA-256")
                .cards();
        Report.Procedure procedure = report.procedure();
        row(
                table,
                "procedure",
                new Report.Input(procedure.name() + ", revision " + procedure.revision(), procedure.sha256()));
        procedure.parts().forEach(part -> row(table, "part", part));
        row(table, "engine card", report.card());
        row(table, "gauge tray", report.tray());
        row(table, "job sheet", report.sheet());
        row(table, "this report as JSON", new Report.Input(Report.FORMAT, ReportFile.sha256(report)));
        return List.of(section(
                "files",
                heading(2, "What this rests on"),
                List.of(
                        p("A file with one byte changed has another digest. The same report as a file for programs is"
                                        + " written by inspect --json.")
                                .style("quiet"),
                        table.element().style("cards files"))));
    }

    private static void row(Table table, String what, Report.@Nullable Input file) {
        if (file != null) {
            table.row(words(what), words(file.name()), element("code", file.sha256()));
        }
    }

    static Element footer(Report report) {
        String version = Sources.class.getPackage().getImplementationVersion();
        return element(
                "footer",
                p("Written by Leafproof" + (version == null ? "" : " " + version) + " from the sheet of "
                                + report.date() + ". Every number is the judgement's own.")
                        .style("quiet"));
    }
}

package io.github.leafproof.dsl.rehearsal;

import io.github.leafproof.dsl.json.JsonPage;
import io.github.leafproof.dsl.report.Parting;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Report;
import java.util.List;

/**
 * What came of rehearsals, for programs; docs/formats.md says what each key holds. Every key is there every time; null says
 * that there is nothing to say.
 */
public final class RehearsalJson {

    private final JsonPage json;

    private RehearsalJson(JsonPage json) {
        this.json = json;
    }

    /** The same run gives the same text on every machine; it ends in a line end. */
    public static String write(List<PlayedFile> files) {
        return JsonPage.write(json -> new RehearsalJson(json).run(files));
    }

    private void run(List<PlayedFile> files) {
        RunTotals totals = RunTotals.of(files);
        json.text("format", "leafproof-rehearsal/1");
        json.yesNo("good", totals.asExpected() == totals.played() && totals.notCompiled() == 0);
        json.object("totals", () -> {
            json.number("rehearsals", totals.played());
            json.number("as_expected", totals.asExpected());
            json.number("surprises", totals.surprises());
            json.number("not_played", totals.notPlayed());
            json.number("files_with_mistakes", totals.notCompiled());
        });
        json.list("files", files, this::file);
    }

    private void file(PlayedFile file) {
        json.text("file", file.name());
        json.object(
                "procedure",
                file.compiled()
                        .procedure()
                        .map(procedure -> Reporting.procedure(procedure.graph().identity()))
                        .orElse(null),
                this::procedure);
        json.number("cases", file.cases());
        json.list("rehearsals", file.played(), this::played);
    }

    private void procedure(Report.Procedure procedure) {
        json.text("name", procedure.name());
        json.text("title", procedure.title());
        json.number("revision", procedure.revision());
        json.text("sha256", procedure.sha256());
        json.list("parts", procedure.parts(), part -> json.file(part.name(), part.sha256()));
    }

    private void played(Played played) {
        Rehearsed rehearsed = played.rehearsed();
        json.text("title", played.title());
        json.text("place", played.place());
        json.text(
                "result", played.judged() == null ? "not_played" : played.isAsExpected() ? "as_expected" : "surprise");
        json.list("surprises", rehearsed.surprises(), this::surprise);
        json.list("problems", rehearsed.problems(), this::problem);
    }

    private void surprise(Rehearsed.Surprise surprise) {
        json.text("place", surprise.place());
        json.text("of", surprise.of());
        json.text("expected", surprise.expected());
        json.text("got", surprise.got());
        json.list("way", surprise.way().links(), this::link);
        json.text("decision", surprise.way().decision());
    }

    private void link(Parting.Link link) {
        json.text("kind", link.kind().word());
        json.text("check", link.check());
        json.text("what", link.what());
        json.text("came", link.came());
        json.texts("details", link.details());
        json.yesNo("parts", link.parts());
    }

    private void problem(Problem problem) {
        json.text("code", problem.code());
        json.text("file", problem.file());
        json.text("place", problem.place().isEmpty() ? null : problem.place());
        json.text("message", problem.message());
        json.text("help", problem.help());
    }
}

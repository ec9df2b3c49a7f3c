package io.github.leafproof.dsl.rehearsal;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judge;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Declaration.Step;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.TrayFile;
import io.github.leafproof.inspection.verdict.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Runs the rehearsals of a procedure, each on its own: nothing that one enters is seen by another. */
public final class Rehearsing {

    private final Procedure procedure;
    private final Path folder;
    private final Path root;

    private Rehearsing(Procedure procedure, Path folder, Path root) {
        this.procedure = procedure;
        this.folder = folder;
        this.root = root;
    }

    /**
     * Runs them all, in the order of the file. Each names its card and its tray as seen from the folder of the file that
     * it stands in.
     *
     * @param folder the procedure's own folder, which is also the one that it names the files it uses from
     */
    public static List<Rehearsed> run(Procedure procedure, Path folder) {
        return run(procedure, folder, folder);
    }

    /**
     * The same for a procedure that names the files it uses from another folder than its own.
     *
     * @param folder the procedure's own folder
     * @param root the folder that it was read with, see {@link Procedure#read(Path, Path)}
     */
    public static List<Rehearsed> run(Procedure procedure, Path folder, Path root) {
        Rehearsing rehearsing = new Rehearsing(procedure, folder, root);
        return procedure.rehearsals().stream().map(rehearsing::run).toList();
    }

    private Rehearsed run(Declaration.Rehearse rehearse) {
        String title = rehearse.title().plain();
        String place = place(rehearse.title().span());
        Read<Document<EngineCard>> card = new Read.Refused<>(List.of(nothing()));
        Read<Document<GaugeTray>> tray = new Read.Refused<>(List.of(nothing()));
        Path here = folderOf(rehearse.span().source());
        for (Step step : rehearse.steps()) {
            if (step instanceof Step.Engine engine) {
                card = CardFile.read(here.resolve(engine.card().plain()).normalize());
            } else if (step instanceof Step.Gauges gauges) {
                tray = TrayFile.read(here.resolve(gauges.tray().plain()).normalize());
            }
        }
        if (card.value().isEmpty() || tray.value().isEmpty()) {
            List<Problem> problems = new ArrayList<>(card.problems());
            problems.addAll(tray.problems());
            return new Rehearsed(title, place, List.of(), problems);
        }
        Document<JobSheet> sheet = new RehearsedSheet(procedure).of(rehearse);
        Read<Evidence> evidence =
                Evidence.of(procedure.graph(), card.value().get(), tray.value().get(), sheet);
        if (evidence.value().isEmpty()) {
            return new Rehearsed(title, place, List.of(), evidence.problems());
        }
        Judgement judgement = Judge.judge(evidence.value().get(), UnitSystem.METRIC);
        return new Rehearsed(title, place, surprises(rehearse, judgement), List.of());
    }

    private Path folderOf(SourceText file) {
        return procedure.parts().stream()
                .filter(part -> part.source() == file)
                .findFirst()
                .map(part -> root.resolve(part.name()).resolveSibling(""))
                .orElse(folder);
    }

    /** Stands for a card or tray that a rehearsal does not name; the compiler lets no such rehearsal through. */
    private Problem nothing() {
        return new Problem("LP502", procedure.source().name(), "", "the rehearsal names no engine or no gauges", null);
    }

    private List<Rehearsed.Surprise> surprises(Declaration.Rehearse rehearse, Judgement judgement) {
        List<Step> unexpected = rehearse.steps().stream()
                .filter(step -> !isAsExpected(step, judgement))
                .toList();
        if (unexpected.isEmpty()) {
            // The reasons take most of the time, and nobody asks for them.
            return List.of();
        }
        Report report = Reporting.of(judgement);
        return unexpected.stream().map(step -> surprise(step, report)).toList();
    }

    private static boolean isAsExpected(Step step, Judgement judgement) {
        if (step instanceof Step.ExpectCheck expect) {
            Outcome outcome =
                    judgement.verdict(expect.check().toString()).orElseThrow().outcome();
            return outcome.word().equals(expect.outcome().text());
        }
        return !(step instanceof Step.ExpectRelease expect)
                || judgement.release().release().word().equals(expect.release().text());
    }

    private static Rehearsed.Surprise surprise(Step step, Report report) {
        if (step instanceof Step.ExpectCheck expect) {
            String name = expect.check().toString();
            return surprise(
                    expect,
                    report.checks().stream()
                            .filter(check -> check.name().equals(name))
                            .findFirst()
                            .orElseThrow());
        }
        Step.ExpectRelease expect = (Step.ExpectRelease) step;
        return new Rehearsed.Surprise(
                place(expect.span()),
                "release",
                expect.release().text(),
                report.release().word(),
                List.of(report.releaseReason()));
    }

    private static Rehearsed.Surprise surprise(Step.ExpectCheck expect, Report.Check check) {
        List<String> why = new ArrayList<>();
        if (check.requirement() != null) {
            why.add("requires " + check.requirement());
        }
        check.missing().forEach(missing -> why.add("missing: " + missing));
        why.addAll(check.evidence());
        return new Rehearsed.Surprise(
                place(expect.span()),
                check.name(),
                expect.outcome().text(),
                check.outcome().word(),
                why);
    }

    private static String place(Span span) {
        return span.source().name() + ":" + span.source().at(span.start());
    }
}

package io.github.leafproof.dsl.rehearsal;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judge;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Declaration.Step;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Plays the cases of a procedure, each on its own: nothing that one enters is seen by another. They are played by as many
 * threads as the machine has cores, and come out in the order of the file whichever was done first.
 */
public final class Rehearsing {

    private final Procedure procedure;
    private final Path folder;
    private final Path root;
    private final CardsAndTrays files;
    private final UnitSystem units;

    private Rehearsing(Procedure procedure, Path folder, Path root, CardsAndTrays files, UnitSystem units) {
        this.procedure = procedure;
        this.folder = folder;
        this.root = root;
        this.files = files;
        this.units = units;
    }

    /**
     * The cases of a procedure. Each names its card and its tray as seen from the folder of the file that it stands in.
     *
     * @param folder the procedure's own folder
     * @param root the folder that it was read with, see {@link Procedure#read(Path, Path)}
     * @param files the cards and trays, shared with whoever else plays cases on them
     */
    public static Rehearsing of(Procedure procedure, Path folder, Path root, CardsAndTrays files) {
        return new Rehearsing(procedure, folder, root, files, UnitSystem.METRIC);
    }

    /** The cases of a procedure that names the files it uses from its own folder. */
    public static Rehearsing of(Procedure procedure, Path folder) {
        return of(procedure, folder, folder, new CardsAndTrays());
    }

    /** The same places, cards and trays for another procedure, such as this one with a limit changed. */
    public Rehearsing with(Procedure other) {
        return new Rehearsing(other, folder, root, files, units);
    }

    /** The same, what is said of them with its numbers in these units. */
    public Rehearsing in(UnitSystem other) {
        return new Rehearsing(procedure, folder, root, files, other);
    }

    /** Runs them all, in the order of the file, and says in words what surprised. */
    public static List<Rehearsed> run(Procedure procedure, Path folder) {
        return of(procedure, folder).play().stream().map(Played::rehearsed).toList();
    }

    /** Plays all cases; they come in the order of the file. */
    public List<Played> play() {
        return play(each -> true);
    }

    /** Plays the cases that are asked for; they come in the order of the file. */
    public List<Played> play(Predicate<Declaration.Rehearse> asked) {
        return procedure.rehearsals().stream().filter(asked).toList().parallelStream()
                .map(this::play)
                .toList();
    }

    /** Plays one case. */
    public Played play(Declaration.Rehearse rehearse) {
        Read<Document<EngineCard>> card = new Read.Refused<>(List.of(nothing()));
        Read<Document<GaugeTray>> tray = new Read.Refused<>(List.of(nothing()));
        Path here = folderOf(rehearse.span().source());
        for (Step step : rehearse.steps()) {
            if (step instanceof Step.Engine engine) {
                card = files.card(here.resolve(engine.card().plain()));
            } else if (step instanceof Step.Gauges gauges) {
                tray = files.tray(here.resolve(gauges.tray().plain()));
            }
        }
        if (card.value().isEmpty() || tray.value().isEmpty()) {
            List<Problem> problems = new ArrayList<>(card.problems());
            problems.addAll(tray.problems());
            return new Played(rehearse, null, problems);
        }
        Read<Judgement> judged = Evidence.of(
                        procedure.graph(),
                        card.value().get(),
                        tray.value().get(),
                        new RehearsedSheet(procedure).of(rehearse))
                .map(evidence -> Judge.judge(evidence, units));
        return judged.value()
                .map(judgement -> new Played(rehearse, judgement, List.of()))
                .orElseGet(() -> new Played(rehearse, null, judged.problems()));
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
}

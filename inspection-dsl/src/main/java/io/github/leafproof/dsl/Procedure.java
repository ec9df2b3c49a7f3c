package io.github.leafproof.dsl;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judge;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.layout.Layout;
import io.github.leafproof.dsl.meaning.Sayings;
import io.github.leafproof.dsl.meaning.Understanding;
import io.github.leafproof.dsl.meaning.Understood;
import io.github.leafproof.dsl.meaning.Vetting;
import io.github.leafproof.dsl.message.PartDiagnostics;
import io.github.leafproof.dsl.parse.ProcedureParser;
import io.github.leafproof.dsl.parse.SourceReading;
import io.github.leafproof.dsl.parts.Gathered;
import io.github.leafproof.dsl.parts.Gathering;
import io.github.leafproof.dsl.parts.ProcedureFolder;
import io.github.leafproof.dsl.parts.Shelf;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.LanguageVersion;
import io.github.leafproof.dsl.syntax.Part;
import io.github.leafproof.dsl.syntax.ProcedureText;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Report;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A shop's procedure, compiled: it judges any number of engines, from any number of threads. */
public final class Procedure {

    private final ProcedureText text;
    private final CheckGraph graph;
    private final List<Declaration.Rehearse> rehearsals;
    private final Vetting vetting;
    private final Supplier<Sayings> findingSayings;
    private volatile @Nullable Sayings sayings;

    private Procedure(ProcedureText text, Understood understood) {
        this.text = text;
        this.graph = understood.graph().orElseThrow();
        this.rehearsals = List.copyOf(understood.rehearsals());
        this.vetting = understood.vetting().orElseThrow();
        this.findingSayings = understood.sayings().orElseThrow();
    }

    /**
     * Reads and compiles a procedure's file, and the files that it uses, which lie in its folder. A file that cannot be
     * read is a diagnostic like any other.
     */
    public static Compiled read(Path file) {
        return read(file, folderOf(file));
    }

    /**
     * Reads and compiles a procedure's file, and the files that it uses.
     *
     * @param root the folder that the used files are named from; nothing outside of it is used
     */
    public static Compiled read(Path file, Path root) {
        SourceReading reading = SourceReading.read(file);
        if (reading.source().isEmpty()) {
            return new Compiled(Optional.empty(), reading.problems());
        }
        if (!Files.isDirectory(root)) {
            SourceText nothing = SourceText.of(root.toString(), "");
            return new Compiled(Optional.empty(), List.of(PartDiagnostics.noFolder(nothing)));
        }
        ProcedureFolder folder = ProcedureFolder.of(root);
        return compile(reading.source().get(), folder.nameOf(file), folder);
    }

    /**
     * Whether a file is a part, which makes sense in the procedures that use it and not by itself: it says something, all of
     * it can be read, and it has no line that begins with {@code procedure}. A file with mistakes of grammar and no such line
     * may have been meant to have one, and counts as a procedure.
     */
    public static boolean isPart(Path file) {
        return SourceReading.read(file)
                .source()
                .map(source -> ProcedureParser.parse(source).tree())
                .filter(text -> text.damage().isNone() && !text.declarations().isEmpty())
                .filter(text -> text.declarations().stream().noneMatch(Declaration.Header.class::isInstance))
                .isPresent();
    }

    /** The folder that a file lies in. */
    static Path folderOf(Path file) {
        Path parent = file.getParent();
        return parent == null ? Path.of("") : parent;
    }

    /** Compiles the text of a procedure that uses no other file. */
    public static Compiled compile(SourceText text) {
        return compile(text, Shelf.empty());
    }

    /** Compiles a procedure's text with what it uses of a shelf, where its own name is the text's. */
    public static Compiled compile(SourceText text, Shelf shelf) {
        return compile(text, text.name(), shelf);
    }

    private static Compiled compile(SourceText text, String name, Shelf shelf) {
        Gathered gathered = Gathering.gather(text, name, shelf);
        Understood understood = Understanding.of(gathered.text(), gathered.problems());
        return new Compiled(
                understood.graph().map(graph -> new Procedure(gathered.text(), understood)), understood.diagnostics());
    }

    /** The text of its own file. */
    public SourceText source() {
        return text.source();
    }

    /** The files that it uses, in the order of their first use. */
    public List<Part> parts() {
        return text.parts();
    }

    /**
     * The procedure as written: its declarations in order, sealed records down to the last name, each with its place in the
     * text. Nothing in it changes, so that other programs may walk it, list it, compare it.
     */
    public ProcedureText written() {
        return text;
    }

    /** The version of the language that it is written in. */
    public LanguageVersion languageVersion() {
        return text.languageVersion();
    }

    /**
     * The text in the one layout of procedures, as docs/language.md describes it: the same words, with the comments in
     * their places. It compiles to the same checks.
     */
    public String tidied() {
        return Layout.of(source());
    }

    /** Whether the file that this was read from is in that layout, to the last byte. */
    public boolean isTidy() {
        return SourceText.of(source().name(), tidied()).sha256().equals(source().sha256());
    }

    /** The checks as data. */
    public CheckGraph graph() {
        return graph;
    }

    /** Everything that it can say, place by place as it is written. Worked out when it is first asked for. */
    public Sayings sayings() {
        Sayings known = sayings;
        if (known == null) {
            known = findingSayings.get();
            sayings = known;
        }
        return known;
    }

    /** The procedure's own cases. */
    public List<Declaration.Rehearse> rehearsals() {
        return rehearsals;
    }

    /**
     * Whether the procedure goes together with a card and a tray, before an engine is on the bench: whether the gauges are
     * there and fine enough to prove the limits that the card gives, and whether the card states what is asked of it.
     *
     * @param variant which of the card's variants is meant; null where that is not known
     * @return everything that does not go together, in the order of the procedure
     */
    public List<Diagnostic> vet(EngineCard card, @Nullable String variant, GaugeTray tray) {
        return vetting.on(card, variant, tray);
    }

    /**
     * Judges one engine.
     *
     * @param units the units that texts show their numbers in
     * @return the report, or everything in the three files that does not go together with this procedure
     */
    public Read<Report> judge(
            Document<EngineCard> card, Document<GaugeTray> tray, Document<JobSheet> sheet, UnitSystem units) {
        return judgement(card, tray, sheet, units).map(Reporting::of);
    }

    /**
     * Judges one engine and keeps what every verdict rests on: for programs that ask on, or go on as the sheet grows.
     *
     * @param units the units that texts show their numbers in
     * @return the judgement, or everything in the three files that does not go together with this procedure
     */
    public Read<Judgement> judgement(
            Document<EngineCard> card, Document<GaugeTray> tray, Document<JobSheet> sheet, UnitSystem units) {
        return Evidence.of(graph, card, tray, sheet).map(evidence -> Judge.judge(evidence, units));
    }

    /**
     * Judges the sheet of any revision of this procedure as if it had been filled in by this one: what a change of the
     * procedure would have said of work that is done. What this revision does not observe is laid aside, see
     * {@link Evidence#unknown()}.
     *
     * @param units the units that texts show their numbers in
     * @return the judgement, or everything in the three files that does not go together with this procedure
     */
    public Read<Judgement> rejudgement(
            Document<EngineCard> card, Document<GaugeTray> tray, Document<JobSheet> sheet, UnitSystem units) {
        return Evidence.ofAnyRevision(graph, card, tray, sheet).map(evidence -> Judge.judge(evidence, units));
    }
}

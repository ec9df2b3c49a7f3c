package io.github.leafproof.dsl;

import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judge;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.layout.Layout;
import io.github.leafproof.dsl.meaning.Understanding;
import io.github.leafproof.dsl.meaning.Understood;
import io.github.leafproof.dsl.parse.Parsed;
import io.github.leafproof.dsl.parse.ProcedureParser;
import io.github.leafproof.dsl.parse.SourceReading;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.LanguageVersion;
import io.github.leafproof.dsl.syntax.ProcedureText;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Report;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A shop's procedure, compiled: it judges any number of engines, from any number of threads. */
public final class Procedure {

    private final SourceText source;
    private final ProcedureText written;
    private final CheckGraph graph;
    private final List<Declaration.Rehearse> rehearsals;

    private Procedure(
            SourceText source, ProcedureText written, CheckGraph graph, List<Declaration.Rehearse> rehearsals) {
        this.source = source;
        this.written = written;
        this.graph = graph;
        this.rehearsals = List.copyOf(rehearsals);
    }

    /** Reads and compiles a procedure's file. A file that cannot be read is a diagnostic like any other. */
    public static Compiled read(Path file) {
        SourceReading reading = SourceReading.read(file);
        Optional<SourceText> text = reading.source();
        return text.isPresent() ? compile(text.get()) : new Compiled(Optional.empty(), reading.problems());
    }

    /** Compiles a procedure's text. */
    public static Compiled compile(SourceText text) {
        Parsed parsed = ProcedureParser.parse(text);
        Understood understood = Understanding.of(parsed.tree(), parsed.problems());
        return new Compiled(
                understood.graph().map(graph -> new Procedure(text, parsed.tree(), graph, understood.rehearsals())),
                understood.diagnostics());
    }

    /** The text it was compiled from. */
    public SourceText source() {
        return source;
    }

    /**
     * The procedure as written: its declarations in order, sealed records down to the last name, each with its place in the
     * text. Nothing in it changes, so that other programs may walk it, list it, compare it.
     */
    public ProcedureText written() {
        return written;
    }

    /** The version of the language that it is written in. */
    public LanguageVersion languageVersion() {
        return written.languageVersion();
    }

    /**
     * The text in the one layout of procedures, as docs/language.md describes it: the same words, with the comments in
     * their places. It compiles to the same checks.
     */
    public String tidied() {
        return Layout.of(source);
    }

    /** Whether the file that this was read from is in that layout, to the last byte. */
    public boolean isTidy() {
        return SourceText.of(source.name(), tidied()).sha256().equals(source.sha256());
    }

    /** The checks as data. */
    public CheckGraph graph() {
        return graph;
    }

    /** The procedure's own cases. */
    public List<Declaration.Rehearse> rehearsals() {
        return rehearsals;
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
}

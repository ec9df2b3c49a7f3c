package io.github.leafproof.dsl.build;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.parts.ProcedureFolder;
import io.github.leafproof.dsl.parts.Shelf;
import io.github.leafproof.dsl.source.SourceText;
import java.util.function.Consumer;

/**
 * A procedure made by a program:
 *
 * <pre>{@code
 * ProcedureDraft.named("look", "First look", 1)
 *     .gauge("leaves", "leaf set")
 *     .observe("lash", "gap", lash -> lash.with("leaves").ask("Offer the leaves, thinnest first"))
 *     .check("lash_inside", "Intake lash", Severity.CRITICAL, check -> check
 *         .require("lash between engine.lash_min and engine.lash_max")
 *         .advise(Occasion.HIGH, "Too wide: screw the adjuster in."))
 *     .compile();
 * }</pre>
 *
 * <p>The draft writes the procedure in the language, and that is what is compiled: {@link #text} shows it, messages point
 * into it, and saved as a file it is a procedure like any other. A draft belongs to one thread.
 */
public final class ProcedureDraft extends Body<ProcedureDraft> {

    private final String name;

    private ProcedureDraft(String name) {
        super(Sheet.empty());
        this.name = name;
    }

    /** A procedure of this name, title and revision, from 1, with nothing in it yet. */
    public static ProcedureDraft named(String name, String title, int revision) {
        ProcedureDraft draft = new ProcedureDraft(Piece.name(name));
        draft.sheet().line("procedure " + name + " " + Piece.text(title) + " revision " + revision);
        return draft;
    }

    /** Words as they stand, for a text that must hold no hole: braces, quotes and backslashes mean nothing in it. */
    public static String literally(String words) {
        return words.replace("\\", "\\\\")
                .replace("{", "\\{")
                .replace("}", "\\}")
                .replace("\"", "\\\"");
    }

    @Override
    ProcedureDraft self() {
        return this;
    }

    private ProcedureDraft line(String words) {
        sheet().line(words);
        return this;
    }

    /** A part that it uses, by the name that the part has in the shelf or the folder given to {@code compile}. */
    public ProcedureDraft use(String part) {
        return line("use " + Piece.text(part));
    }

    /** A fact that the shop adds to its engine cards: {@code card("tank_offset", "length")}. */
    public ProcedureDraft card(String fact, String type) {
        return line("card " + Piece.name(fact) + " : " + Piece.words(type));
    }

    /** For which engines it is meant. */
    public ProcedureDraft appliesWhen(String condition) {
        return line("applies when " + Piece.words(condition));
    }

    /** How sure one has to be: {@code 95 %}. */
    public ProcedureDraft decideAt(String confidence) {
        return line("decide at " + Piece.words(confidence));
    }

    /** The reading itself decides, wherever it lies. */
    public ProcedureDraft decideBySimpleAcceptance() {
        return line("decide by simple acceptance");
    }

    /** A danger of the shop's own, and the caution that is shown before it. */
    public ProcedureDraft hazard(String hazard, String caution) {
        return line("hazard " + Piece.name(hazard) + " " + Piece.text(caution));
    }

    /** A gauge that the tray must hold: {@code leaf set}, {@code pin set}, {@code reading of length}, {@code counter}. */
    public ProcedureDraft gauge(String gauge, String kind) {
        return line("gauge " + Piece.name(gauge) + " : " + Piece.words(kind));
    }

    /** Something about the bench that has states, and the one it is in before the first step. */
    public ProcedureDraft setup(String state, String starts, Consumer<SetupDraft> setup) {
        line("setup " + Piece.name(state) + " starts " + Piece.name(starts) + " {");
        setup.accept(new SetupDraft(sheet().indented()));
        return line("}");
    }

    /** A function: {@code define("half", "size : length", "size / 2")}. */
    public ProcedureDraft define(String function, String parameters, String expression) {
        return line("define " + Piece.name(function) + "(" + (parameters.isBlank() ? "" : Piece.words(parameters))
                + ") = " + Piece.words(expression));
    }

    /** A stage of the work. */
    public ProcedureDraft stage(String title, Consumer<StageDraft> stage) {
        line("stage " + Piece.text(title) + " {");
        stage.accept(new StageDraft(sheet().indented()));
        return line("}");
    }

    /** What the checks decide about the whole engine. */
    public ProcedureDraft release(Consumer<ReleaseDraft> rules) {
        line("release {");
        rules.accept(new ReleaseDraft(sheet().indented()));
        return line("}");
    }

    /** A case of its own, with what must come of it. */
    public ProcedureDraft rehearse(String title, Consumer<RehearsalDraft> rehearsal) {
        line("rehearse " + Piece.text(title) + " {");
        rehearsal.accept(new RehearsalDraft(sheet().indented()));
        return line("}");
    }

    /** The procedure as written. */
    public String text() {
        return sheet().toString();
    }

    /** The procedure, or everything that is wrong with it; places are those of {@link #text}. It can use no part. */
    public Compiled compile() {
        return compile(Shelf.empty());
    }

    /** The same with the parts of a shelf: texts in memory, or a {@link ProcedureFolder}. */
    public Compiled compile(Shelf parts) {
        return Procedure.compile(SourceText.of(name + ".inspection", text()), parts);
    }
}

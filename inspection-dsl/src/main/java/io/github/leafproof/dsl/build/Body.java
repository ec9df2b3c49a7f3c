package io.github.leafproof.dsl.build;

import io.github.leafproof.inspection.verdict.Severity;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * What a procedure, a stage and a loop can hold alike.
 *
 * <p>Names, types and expressions are written as in the language ({@code lash[valve]}, {@code reading of length},
 * {@code head - room within 3 K of 0 K}); docs/language.md has them all. What stands in a text is as between the quotes of
 * the language: {@code {engine.model}} is a hole. A piece that would reach beyond its place, by a line end, a comment or a
 * bracket without its partner, is an {@link IllegalArgumentException}; everything else that is wrong comes back from
 * {@link ProcedureDraft#compile} as diagnostics.
 *
 * @param <B> the draft itself, so that calls can be chained
 */
public abstract sealed class Body<B extends Body<B>> permits ProcedureDraft, StageDraft, LoopDraft {

    private final Sheet sheet;

    Body(Sheet sheet) {
        this.sheet = sheet;
    }

    final Sheet sheet() {
        return sheet;
    }

    abstract B self();

    /** One thing that a person enters. */
    public final B observe(String name, String type, Consumer<ObserveDraft> observation) {
        sheet.line("observe " + Piece.name(name) + " : " + Piece.words(type));
        observation.accept(new ObserveDraft(sheet.indented()));
        sheet.gap();
        return self();
    }

    /** A value computed from others. */
    public final B let(String name, String expression) {
        sheet.line("let " + Piece.name(name) + " = " + Piece.words(expression));
        sheet.gap();
        return self();
    }

    /** A judgement. */
    public final B check(String name, String title, Severity severity, Consumer<CheckDraft> check) {
        return check(name, title, severity.word(), check);
    }

    /** A judgement that others may wait for. */
    public final B gate(String name, String title, Severity severity, Consumer<CheckDraft> check) {
        return check(name, title, severity.word() + " gate", check);
    }

    private B check(String name, String title, String kind, Consumer<CheckDraft> check) {
        sheet.line("check " + Piece.name(name) + " " + Piece.text(title) + " " + kind + " {");
        check.accept(new CheckDraft(sheet.indented()));
        sheet.line("}");
        sheet.gap();
        return self();
    }

    /** The same for each of these: names in it bear the variable, {@code lash[valve]}. */
    public final B forEach(String variable, List<String> values, Consumer<LoopDraft> each) {
        sheet.line("for " + Piece.name(variable) + " in "
                + values.stream().map(Piece::name).collect(Collectors.joining(", ")) + " {");
        each.accept(new LoopDraft(sheet.indented()));
        sheet.line("}");
        sheet.gap();
        return self();
    }
}

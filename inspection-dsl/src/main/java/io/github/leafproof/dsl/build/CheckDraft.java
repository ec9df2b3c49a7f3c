package io.github.leafproof.dsl.build;

import io.github.leafproof.dsl.graph.Occasion;

/** A judgement. */
public final class CheckDraft {

    private final Sheet sheet;

    CheckDraft(Sheet sheet) {
        this.sheet = sheet;
    }

    private CheckDraft line(String words) {
        sheet.line(words);
        return this;
    }

    /** The gates that must let through first. */
    public CheckDraft after(String... gates) {
        return line("after " + StageDraft.names(gates));
    }

    /** In which case it applies. */
    public CheckDraft when(String condition) {
        return line("when " + Piece.words(condition));
    }

    /** What must hold. */
    public CheckDraft require(String condition) {
        return line("require " + Piece.words(condition));
    }

    /** How sure one has to be of this one: {@code 99 %}. */
    public CheckDraft at(String confidence) {
        return line("at " + Piece.words(confidence));
    }

    /** What to say when it comes out so. */
    public CheckDraft advise(Occasion occasion, String text) {
        return line("if " + occasion.word() + " advise " + Piece.text(text));
    }

    /** What to compute and say when it comes out so: {@code next_leaf(lash, engine.lash_min, engine.lash_max)}. */
    public CheckDraft adviseBy(Occasion occasion, String function) {
        return line("if " + occasion.word() + " advise " + Piece.words(function));
    }

    /** Where its limits come from, or why they are so. */
    public CheckDraft because(String reason) {
        return line("because " + Piece.text(reason));
    }
}

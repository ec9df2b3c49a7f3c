package io.github.leafproof.dsl.build;

/** A state of the bench, and how it is changed. */
public final class SetupDraft {

    private final Sheet sheet;

    SetupDraft(Sheet sheet) {
        this.sheet = sheet;
    }

    /** How one state is left for another, and the dangers of doing so. */
    public SetupDraft change(String from, String to, String how, String... hazards) {
        sheet.line(Piece.name(from) + " -> " + Piece.name(to) + " " + Piece.text(how) + behind(hazards));
        return this;
    }

    /** The dangers that last while it is in a state. */
    public SetupDraft whileIn(String state, String... hazards) {
        sheet.line("while " + Piece.name(state) + behind(hazards));
        return this;
    }

    private static String behind(String... hazards) {
        return hazards.length == 0 ? "" : " hazard " + StageDraft.names(hazards);
    }
}

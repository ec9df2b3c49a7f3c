package io.github.leafproof.dsl.build;

import java.util.ArrayList;
import java.util.List;

/** One thing that a person enters. */
public final class ObserveDraft {

    private final Sheet sheet;

    ObserveDraft(Sheet sheet) {
        this.sheet = sheet;
    }

    private ObserveDraft line(String words) {
        sheet.line(words);
        return this;
    }

    /** The gauge it is measured with. */
    public ObserveDraft with(String gauge) {
        return line("with " + Piece.name(gauge));
    }

    /** When it is asked for; what decides that may be another observation. */
    public ObserveDraft when(String condition) {
        return line("when " + Piece.words(condition));
    }

    /** How the bench has to be: name and state in turn, {@code setup("covers", "off", "piston", "at_top")}. */
    public ObserveDraft setup(String... statesInTurn) {
        if (statesInTurn.length == 0 || statesInTurn.length % 2 != 0) {
            throw new IllegalArgumentException("names and states of the bench come in turn");
        }
        List<String> states = new ArrayList<>();
        for (int i = 0; i < statesInTurn.length; i += 2) {
            states.add(Piece.name(statesInTurn[i]) + " " + Piece.name(statesInTurn[i + 1]));
        }
        return line("setup " + String.join(", ", states));
    }

    /** The dangers of doing it. */
    public ObserveDraft hazard(String... hazards) {
        return line("hazard " + StageDraft.names(hazards));
    }

    /** What to do or to look at. */
    public ObserveDraft ask(String text) {
        return line("ask " + Piece.text(text));
    }

    /** A remark. */
    public ObserveDraft note(String text) {
        return line("note " + Piece.text(text));
    }

    /** It may be left out. */
    public ObserveDraft optional() {
        return line("optional");
    }
}

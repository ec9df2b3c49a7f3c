package io.github.leafproof.dsl.build;

import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * A made-up case with what must come of it. Its card and its tray are named as seen from the folder that is given to
 * {@link io.github.leafproof.dsl.rehearsal.Rehearsing#run(io.github.leafproof.dsl.Procedure, java.nio.file.Path)}.
 */
public final class RehearsalDraft {

    private final Sheet sheet;

    RehearsalDraft(Sheet sheet) {
        this.sheet = sheet;
    }

    private RehearsalDraft line(String words) {
        sheet.line(words);
        return this;
    }

    /** The engine's card. */
    public RehearsalDraft engine(String card) {
        return line("engine " + Piece.text(card));
    }

    /** The engine's card, and which of its builds is on the bench. */
    public RehearsalDraft engine(String card, String variant) {
        return line("engine " + Piece.text(card) + " variant " + Piece.text(variant));
    }

    /** The number on the engine; stands behind its card. */
    public RehearsalDraft serial(String number) {
        return line("serial " + Piece.text(number));
    }

    /** The gauge tray. */
    public RehearsalDraft gauges(String tray) {
        return line("gauges " + Piece.text(tray));
    }

    /**
     * What a person enters, as the language has it: {@code 21 degC}, {@code yes}, {@code 2026-03-31},
     * {@code passes "0.05" refuses "0.08"}, {@code items "engine", "manual"}.
     */
    public RehearsalDraft enter(String observation, String value) {
        return line("enter " + Piece.name(observation) + " " + Piece.words(value));
    }

    /** Readings of one thing, in order: {@code series("bore", "27.70 mm", "27.71 mm")}. */
    public RehearsalDraft series(String observation, String... readings) {
        return line("enter " + Piece.name(observation) + " series "
                + Arrays.stream(readings).map(Piece::words).collect(Collectors.joining(", ")));
    }

    /** Why something could not be observed. */
    public RehearsalDraft cannot(String observation, String why) {
        return line("enter " + Piece.name(observation) + " cannot " + Piece.text(why));
    }

    /** What must come of a check. */
    public RehearsalDraft expect(String check, Outcome outcome) {
        return line("expect " + Piece.name(check) + " " + outcome.word());
    }

    /** What must come of the engine. */
    public RehearsalDraft expect(Release release) {
        return line("expect release " + release.word());
    }
}

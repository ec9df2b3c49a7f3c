package io.github.leafproof.dsl.html;

import io.github.leafproof.inspection.verdict.Outcome;

/**
 * How an outcome is marked: by a letter and a word, which say it all, and by a colour, which only repeats it.
 *
 * @param letter one letter for each outcome
 * @param word the outcome in words
 * @param light the colour on white
 * @param dark the colour on black
 */
public record Ink(String letter, String word, String light, String dark) {

    public static Ink of(Outcome outcome) {
        return switch (outcome) {
            case PASSES -> new Ink("P", "passes", "#1a7f37", "#2ea043");
            case TOLERATED -> new Ink("T", "tolerated", "#7a6200", "#b08800");
            case FAILS -> new Ink("F", "fails", "#b3202c", "#f0645b");
            case OPEN -> new Ink("O", "open", "#9a5700", "#d18616");
            case CONTRADICTED -> new Ink("C", "contradicted", "#8a2be2", "#b080ff");
            case UNTESTED -> new Ink("U", "untested", "#3d5a80", "#7da2d0");
            case BLOCKED -> new Ink("B", "blocked", "#57606a", "#8b949e");
            case NOT_APPLICABLE -> new Ink("N", "not applicable", "#626b75", "#8d96a0");
        };
    }
}

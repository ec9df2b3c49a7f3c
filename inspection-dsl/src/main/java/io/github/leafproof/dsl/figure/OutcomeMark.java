package io.github.leafproof.dsl.figure;

import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Html;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.util.List;

/** An outcome by its shape, for the eye; its word stands beside it, and its colour only repeats both. */
public final class OutcomeMark {

    private static final String CIRCLE = "M8 1a7 7 0 1 0 0 14a7 7 0 1 0 0-14Z";
    private static final String OCTAGON = "M5 1H11L15 5V11L11 15H5L1 11V5Z";
    private static final String SQUARE = "M1.5 1.5H14.5V14.5H1.5Z";

    private OutcomeMark() {}

    /** The mark, as high as the letters that it stands before. */
    public static Element of(Outcome outcome) {
        return switch (outcome) {
            case PASSES -> mark(outcome, full(CIRCLE), sign("M4.5 8.3L7 10.8L11.6 5.4"));
            case TOLERATED -> mark(outcome, full(CIRCLE), sign("M4 9C5.5 6 7 7 8 8S10.5 10 12 7"));
            case FAILS -> mark(outcome, full(OCTAGON), sign("M5.2 5.2L10.8 10.8M10.8 5.2L5.2 10.8"));
            case OPEN -> mark(outcome, hollow(CIRCLE), full("M8 1a7 7 0 0 0 0 14Z"));
            case CONTRADICTED ->
                mark(
                        outcome,
                        full(SQUARE),
                        sign("M4 5.5H10.5M8.5 3.5L10.5 5.5L8.5 7.5M12 10.5H5.5M7.5 8.5L5.5 10.5L7.5 12.5"));
            case UNTESTED -> mark(outcome, hollow(CIRCLE).with("stroke-dasharray", "3 2"));
            case BLOCKED -> mark(outcome, full(SQUARE), sign("M4.5 8H11.5"));
            case NOT_APPLICABLE -> mark(outcome, hollow(CIRCLE), hollow("M3.5 12.5L12.5 3.5"));
        };
    }

    /** The mark of a release: what is held waits, and what is unfinished is not whole. */
    public static Element of(Release release) {
        return switch (release) {
            case READY -> of(Outcome.PASSES);
            case HOLD -> mark(Outcome.OPEN, full(CIRCLE), sign("M6 5V11M10 5V11"));
            case REJECT -> of(Outcome.FAILS);
            case UNFINISHED -> of(Outcome.UNTESTED);
        };
    }

    private static Element mark(Outcome outcome, Element... strokes) {
        return Html.element("svg", List.of(strokes))
                .style("mark " + outcome.word())
                .with("viewBox", "-1 -1 18 18")
                .with("aria-hidden", "true");
    }

    private static Element full(String shape) {
        return Pen.path(shape).style("full");
    }

    private static Element hollow(String shape) {
        return Pen.path(shape).style("hollow");
    }

    private static Element sign(String shape) {
        return Pen.path(shape).style("sign");
    }
}

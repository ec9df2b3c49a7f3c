package io.github.leafproof.dsl.syntax;

import io.github.leafproof.dsl.source.Span;
import java.util.List;
import java.util.stream.Collectors;

/** A quoted text, in pieces: what is printed as it stands, and holes that are filled with a value when it is shown. */
public record Text(List<Piece> pieces, Span span) {

    /** More decimals than this no gauge gives. */
    public static final int MOST_DIGITS = 12;

    public Text {
        pieces = List.copyOf(pieces);
    }

    /** A piece of a text. */
    public sealed interface Piece permits Plain, Hole {}

    /** Letters printed as they stand, escapes already undone. */
    public record Plain(String letters) implements Piece {}

    /**
     * A value to be filled in: {@code {x in thou, 1 digit}}.
     *
     * @param digits how many decimals to show, 0 to {@value #MOST_DIGITS}, or −1 where the value's own uncertainty decides
     */
    public record Hole(Expression value, int digits, Span span) implements Piece {}

    /** Whether every piece is plain. */
    public boolean isPlain() {
        for (Piece piece : pieces) {
            if (!(piece instanceof Plain)) {
                return false;
            }
        }
        return true;
    }

    /** The letters of the plain pieces; holes are left out. */
    public String plain() {
        if (pieces.size() == 1 && pieces.get(0) instanceof Plain whole) {
            return whole.letters();
        }
        return pieces.stream()
                .filter(Plain.class::isInstance)
                .map(piece -> ((Plain) piece).letters())
                .collect(Collectors.joining());
    }
}

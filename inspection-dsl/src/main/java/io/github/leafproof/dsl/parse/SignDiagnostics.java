package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;
import java.util.Locale;

/** What is said about single signs and numbers. */
final class SignDiagnostics {

    private SignDiagnostics() {}

    static Diagnostic unknown(Span sign) {
        int character = sign.source().text().codePointAt(sign.start());
        boolean visible = switch (Character.getType(character)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.PRIVATE_USE,
                    Character.SURROGATE,
                    Character.UNASSIGNED,
                    Character.SPACE_SEPARATOR,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
        String shown = visible ? "`" + Character.toString(character) + "`" : invisible(character);
        return Diagnostic.error(Code.LP106, sign, shown + " means nothing here")
                .help("take it out, or put it in quotes if it belongs to a text");
    }

    static Diagnostic inText(Span sign) {
        int character = sign.source().text().codePointAt(sign.start());
        return Diagnostic.error(Code.LP106, sign, invisible(character) + " means nothing in a text")
                .help("take it out: it cannot be shown, and could make a screen show something else than is written");
    }

    private static String invisible(int character) {
        return String.format(Locale.ROOT, "the invisible character U+%04X", character);
    }

    // toAState: whether it stands before a state of the bench, and its text
    static Diagnostic foreign(Span sign, String written, boolean toAState) {
        String meant = toAState
                ? "->"
                : switch (written) {
                    case "&&" -> "and";
                    case "||" -> "or";
                    case "**" -> "^";
                    case "+-", "+/-" -> "±";
                    case "=<" -> "at most";
                    case "=>" -> "at least";
                    case "==" -> "is";
                    case ":=" -> "=";
                    case "!" -> "not";
                    default -> "is not";
                };
        return Diagnostic.error(Code.LP117, sign, "`" + written + "` is the sign of another language")
                .help("write `" + meant + "`");
    }

    static Diagnostic foreignComment(Span comment) {
        return Diagnostic.error(
                        Code.LP126,
                        comment.source().span(comment.start(), comment.start() + 1),
                        "not the sign of a comment")
                .help("begin a comment with // on each of its lines");
    }

    static Diagnostic semicolon(Span sign) {
        return Diagnostic.error(Code.LP109, sign, "no semicolon is needed").help("take it out");
    }

    static Diagnostic decimalComma(Span number, String meant) {
        boolean thousands = meant.matches("[1-9][0-9]{0,2}[.][0-9]{3}");
        String remedy = thousands
                ? "write " + meant + ", or " + meant.replace(".", "") + " if thousands are meant"
                : "write " + meant;
        return Diagnostic.error(Code.LP111, number, "a decimal comma")
                .help(remedy + "; between two values write a blank after the comma");
    }

    static Diagnostic noughtMissing(Span number, String meant) {
        return Diagnostic.error(Code.LP112, number, "a number begins with a digit")
                .help("write " + meant);
    }

    static Diagnostic stopBehindUnit(Span stop) {
        return Diagnostic.error(Code.LP113, stop, "a unit has no full stop").help("take it out");
    }
}

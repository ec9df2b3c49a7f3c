package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.Locale;

/** What is said about a file that does not yield a text. */
final class ReadingDiagnostics {

    private ReadingDiagnostics() {}

    static Diagnostic missing(SourceText file) {
        return Diagnostic.error(Code.LP101, file.span(0, 0), "there is no such file")
                .help("look at the name and the folder; a procedure's name ends in .inspection");
    }

    static Diagnostic folder(SourceText file) {
        return Diagnostic.error(Code.LP102, file.span(0, 0), "this is a folder, not a file")
                .help("name the procedure's file in it");
    }

    static Diagnostic unreadable(SourceText file) {
        return Diagnostic.error(Code.LP103, file.span(0, 0), "the file cannot be read")
                .help("see whether you may read it, and whether its disk is there");
    }

    static Diagnostic empty(SourceText file) {
        return Diagnostic.error(Code.LP105, file.span(0, 0), "the file is empty")
                .help("a procedure begins: procedure first_look \"First look\" revision 1");
    }

    static Diagnostic json(SourceText file) {
        return Diagnostic.error(Code.LP147, file.span(0, 0), "this is a JSON file, and no procedure")
                .help(
                        "name a procedure here, whose name ends in .inspection; sheets, cards and trays have places of their own");
    }

    static Diagnostic notUtf8(Span place, int wrong) {
        return Diagnostic.error(
                        Code.LP104,
                        place,
                        String.format(Locale.ROOT, "the file is not UTF-8: the byte %02X cannot stand here", wrong))
                .help("save it as UTF-8; most editors ask for the encoding when saving under a name");
    }

    static Diagnostic utf16(Span place) {
        return Diagnostic.error(Code.LP104, place, "the file is not UTF-8; it looks like UTF-16")
                .help("save it as UTF-8; most editors ask for the encoding when saving under a name");
    }
}

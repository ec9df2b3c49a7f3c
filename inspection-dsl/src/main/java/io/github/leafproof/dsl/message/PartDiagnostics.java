package io.github.leafproof.dsl.message;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.inspection.quantity.Spelling;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Mistakes with the files that a procedure uses. */
public final class PartDiagnostics {

    private static final String USED_HERE = "used here";

    private PartDiagnostics() {}

    public static Diagnostic noFolder(SourceText folder) {
        return Diagnostic.error(Code.LP101, folder.span(0, 0), "there is no such folder")
                .help("name the folder that the procedures and their parts are in");
    }

    public static Diagnostic missing(Span place, String name, Collection<String> others) {
        return Diagnostic.error(Code.LP160, place, "there is no file " + name)
                .help(meant(name, others)
                        .map(other -> "did you mean \"" + other + "\"?")
                        .orElse("names of used files are seen from the procedures' folder, or from the one named with"
                                + " --root; see whether it is there"));
    }

    /** The same name in another folder, or else the nearest. */
    private static Optional<String> meant(String name, Collection<String> others) {
        String last = "/" + name.substring(name.lastIndexOf('/') + 1);
        return others.stream()
                .filter(other -> ("/" + other).endsWith(last))
                .findFirst()
                .or(() -> Spelling.nearest(name, others));
    }

    public static Diagnostic backslash(Span place, String better) {
        return Diagnostic.error(Code.LP161, place, "folders are parted by / on every machine, not by a backslash")
                .help("write \"" + better + "\"");
    }

    public static Diagnostic wholePath(Span place) {
        return Diagnostic.error(Code.LP161, place, "a used file is named as seen from the procedures' folder")
                .help("leave out what comes before that folder: use \"parts/lash.inspection\"");
    }

    public static Diagnostic leadsOut(Span place) {
        return Diagnostic.error(Code.LP161, place, "a procedure reads nothing outside of its folder")
                .help("name the file as seen from the procedures' folder; to use it from higher up, name that folder"
                        + " with --root");
    }

    public static Diagnostic noName(Span place) {
        return Diagnostic.error(Code.LP161, place, "this is no name of a file")
                .help("name folders and file, parted by single /: use \"parts/lash.inspection\"");
    }

    public static Diagnostic linkLeadsOut(Span place, String name) {
        return Diagnostic.error(Code.LP162, place, name + " is a link that leads out of the procedures' folder")
                .help("put the file itself there, or name a folder with --root that holds both");
    }

    public static Diagnostic circle(Span place, List<String> path) {
        return Diagnostic.error(
                        Code.LP163,
                        place,
                        path.get(0) + " uses itself"
                                + (path.size() > 2 ? ": " + StructureDiagnostics.arrows(path) : ""))
                .help("take one use out; what two files need from each other goes to a third, used by both");
    }

    public static Diagnostic tooMuch(Span place, int files, int mebibytes) {
        return Diagnostic.error(
                        Code.LP164,
                        place,
                        "with this the procedure uses more than " + files + " files, or comes to more than " + mebibytes
                                + " MiB of text")
                .help("use only the files that it needs");
    }

    public static Diagnostic headerInPart(Span header, Span use) {
        return Diagnostic.error(Code.LP165, header, "a procedure cannot be used by another")
                .alsoAt(use, USED_HERE)
                .help("move what both need to a file without a procedure line, and use that in both");
    }

    public static Diagnostic isPart(Span first) {
        return Diagnostic.error(Code.LP166, first, "this is a part: it has no procedure line, and checks nothing")
                .help("take the procedure that uses it; were it one itself, it would begin: procedure name \"Title\""
                        + " revision 1");
    }

    public static Diagnostic otherEnding(Span place, String last, String ending) {
        return Diagnostic.error(Code.LP167, place, last + " is no procedure's file: its name does not end in " + ending)
                .help("use files whose names end in " + ending + "; cards, trays and sheets are not used but named on"
                        + " the command line and in sheets");
    }

    public static Diagnostic useInBlock(Span use) {
        return Diagnostic.error(Code.LP168, use, "a file is used for the whole procedure, not within braces")
                .help("move it out of the stage or the for around it; a used file may hold stages itself");
    }

    public static Diagnostic usedTwice(Span again, Span first) {
        return Diagnostic.warning(Code.LP169, again, "this file is used already")
                .labelled("again here")
                .alsoAt(first, "first here")
                .help("take one of them out; a file counts once, however often it is used");
    }

    /** What is wrong with a file as such, with the place that asks for it. */
    public static Diagnostic usedHere(Diagnostic problem, Span use) {
        Diagnostic used = problem.alsoAt(use, USED_HERE);
        return problem.code() == Code.LP105
                ? used.help("write into it what the procedure uses of it, or take the use line out")
                : used;
    }
}

package io.github.leafproof.dsl.diagnostic;

import io.github.leafproof.dsl.source.SourceText;
import java.util.ArrayList;
import java.util.List;

/**
 * Prints diagnostics for people: the place, what is wrong, the line with carets under the exact words, and the remedy.
 *
 * <pre>
 * first-look.inspection:48:39: error LP201: this compares a length with a pressure
 *    48 |       require lash[valve] at most 100 kPa
 *       |               ----------- length  ^^^^^^^ pressure
 *    help: lash is limited by engine.lash_max, a length (0.10 mm on this card)
 * </pre>
 */
public final class DiagnosticPrinter {

    private final boolean colour;
    private final StringBuilder out = new StringBuilder();

    private DiagnosticPrinter(boolean colour) {
        this.colour = colour;
    }

    /**
     * Prints them in the order given, one below the other.
     *
     * @param colour whether to colour them with ANSI sequences; they add nothing but colour
     */
    public static String print(List<Diagnostic> diagnostics, boolean colour) {
        DiagnosticPrinter printer = new DiagnosticPrinter(colour);
        diagnostics.forEach(printer::print);
        return printer.out.toString();
    }

    private void print(Diagnostic diagnostic) {
        boolean error = diagnostic.isError();
        Ink ink = error ? Ink.ERROR : Ink.WARNING;
        paint(Ink.STRONG, place(diagnostic) + ": ");
        paint(ink, (error ? "error " : "warning ") + diagnostic.code());
        paint(Ink.STRONG, ": " + OneLine.of(diagnostic.message()));
        out.append('\n');
        List<Mark> marks = marks(diagnostic, ink);
        int gutter = gutter(marks);
        SourceText lastShown = diagnostic.source();
        for (List<Mark> line : Mark.byLine(marks)) {
            Mark first = line.get(0);
            if (first.source() != lastShown) {
                out.append(" ".repeat(gutter))
                        .append("in ")
                        .append(first.source().name())
                        .append(":\n");
                lastShown = first.source();
            }
            printLine(gutter, line);
        }
        if (!diagnostic.help().isEmpty()) {
            out.append("   ");
            paint(Ink.HELP, "help: ");
            out.append(OneLine.of(diagnostic.help())).append('\n');
        }
    }

    /** A file that could not be read, or that is empty, has no line to show. */
    private static boolean isAboutTheFile(Diagnostic diagnostic) {
        return diagnostic.source().text().isEmpty();
    }

    private static String place(Diagnostic diagnostic) {
        String name = OneLine.of(diagnostic.source().name());
        return isAboutTheFile(diagnostic)
                ? name
                : name + ":" + diagnostic.source().at(diagnostic.span().start());
    }

    private static List<Mark> marks(Diagnostic diagnostic, Ink ink) {
        List<Mark> marks = new ArrayList<>();
        if (!isAboutTheFile(diagnostic)) {
            marks.add(Mark.main(diagnostic, ink));
        }
        diagnostic.labels().forEach(label -> marks.add(Mark.second(label)));
        return marks;
    }

    /** As wide as the widest line number, at least five: a blank margin that lets the eye find the lines. */
    private static int gutter(List<Mark> marks) {
        return Math.max(
                5,
                2
                        + marks.stream()
                                .mapToInt(mark -> String.valueOf(mark.line()).length())
                                .max()
                                .orElse(0));
    }

    private void printLine(int gutter, List<Mark> marks) {
        ShownLine line = ShownLine.around(marks);
        String number = String.valueOf(marks.get(0).line());
        paint(
                Ink.MARGIN,
                " ".repeat(gutter - number.length()) + number + (line.text().isBlank() ? " |" : " | "));
        out.append(line.text().stripTrailing()).append('\n');
        for (List<Mark> row : line.rows()) {
            paint(Ink.MARGIN, " ".repeat(gutter) + " | ");
            printMarks(line, row);
            out.append('\n');
        }
    }

    private void printMarks(ShownLine line, List<Mark> row) {
        int column = 0;
        for (Mark mark : row) {
            int start = line.column(mark.start());
            out.append(" ".repeat(Math.max(0, start - column)));
            int width = Math.max(1, line.column(mark.end()) - start);
            String word = mark.word().isEmpty() ? "" : " " + OneLine.of(mark.word());
            paint(mark.ink(), mark.sign().repeat(width) + word);
            column = start + width + ShownLine.width(word);
        }
    }

    private void paint(Ink ink, String words) {
        out.append(colour ? ink.on(words) : words);
    }
}

package io.github.leafproof.dsl.diagnostic;

import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What is drawn under a source line: where it starts and ends within that line (UTF-16 units from the line's
 * beginning), the sign it is drawn with, and its word.
 */
record Mark(SourceText source, int line, int start, int end, String sign, String word, Ink ink) {

    /** Carets under the place that a diagnostic is about. */
    static Mark main(Diagnostic diagnostic, Ink ink) {
        return of(diagnostic.span(), "^", diagnostic.label(), ink);
    }

    /** Dashes under another place that matters. */
    static Mark second(Diagnostic.Label label) {
        return of(label.span(), "-", label.word(), Ink.SECOND);
    }

    /** A span over several lines is drawn under its first. */
    private static Mark of(Span span, String sign, String word, Ink ink) {
        SourceText source = span.source();
        int line = source.at(span.start()).line();
        int lineStart = source.lineStart(line);
        int lineEnd = lineStart + source.line(line).length();
        int start = Math.min(span.start(), lineEnd) - lineStart;
        return new Mark(
                source, line, start, Math.max(start, Math.min(span.end(), lineEnd) - lineStart), sign, word, ink);
    }

    /** Grouped by source and line: the main place's source first, its lines in order, then the others. */
    static List<List<Mark>> byLine(List<Mark> marks) {
        if (marks.isEmpty()) {
            return List.of();
        }
        SourceText first = marks.get(0).source();
        List<Mark> sorted = marks.stream()
                .sorted(Comparator.comparing((Mark mark) -> mark.source() != first)
                        .thenComparing(mark -> mark.source().name())
                        .thenComparing(Mark::line)
                        .thenComparing(Mark::start)
                        .thenComparing(Mark::end))
                .toList();
        List<List<Mark>> lines = new ArrayList<>();
        for (Mark mark : sorted) {
            Mark last = lines.isEmpty() ? null : lines.get(lines.size() - 1).get(0);
            if (last == null || last.source() != mark.source() || last.line() != mark.line()) {
                lines.add(new ArrayList<>());
            }
            lines.get(lines.size() - 1).add(mark);
        }
        return lines;
    }
}

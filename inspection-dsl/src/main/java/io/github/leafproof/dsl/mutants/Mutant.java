package io.github.leafproof.dsl.mutants;

import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A procedure with one slip in it: one edit of the text of one of its files.
 *
 * @param span what is edited; empty where something is put in
 * @param instead what stands there instead; empty where something is left out
 * @param kind what kind of slip it is
 * @param name what it is called in lists: the declaration, what is changed and into what. It does not change with the
 *     lines above, and no two mutants of a procedure share it
 */
public record Mutant(Span span, String instead, Kind kind, String name) {

    /** What kinds of slips are made. */
    public enum Kind {
        /** A number, or a day, a little up or down. */
        LIMIT("a limit shifted", "an entry that lies between the two limits"),
        /** One of the two sides of a window left out. */
        SIDE("one side of the limits dropped", "an entry beyond the side that is gone"),
        /** The wider limits that are still tolerated left out. */
        TOLERATED("what is tolerated dropped", "an entry beyond the limit that is still tolerated"),
        /** The other way round, or strict instead of not. */
        COMPARISON("a comparison swapped", "an entry that the two judge otherwise, such as one on the limit"),
        /** And for or, a part of the two, a lost {@code not}. */
        LOGIC("conditions joined otherwise", "a case in which only one of the parts holds"),
        /** A gate that is no longer waited for. */
        GATE("a gate dropped", "a case in which this gate alone does not let through"),
        /** When a check or an observation applies left out, or that it may be left out. */
        APPLIES("applies otherwise", "a case to which it does not apply, or in which it is left out"),
        /** One of several requirements left out, or the only one taken for granted. */
        REQUIREMENT("a requirement dropped", "a case in which this alone does not hold"),
        /** Another confidence. */
        CONFIDENCE(
                "another confidence", "an entry so near to a limit that it will do for the one and not for the other"),
        /** Two answers of a choice in each other's place. */
        CHOICE("answers swapped", "a case for each of the two answers"),
        /** How grave a check is. */
        SEVERITY("another severity", "a case in which this check fails, and what is released then"),
        /** A line of the release, or a part of one, left out. */
        RELEASE("the release changed", "a case in which this alone decides about the engine");

        private final String words;
        private final String noticedBy;

        Kind(String words, String noticedBy) {
            this.words = words;
            this.noticedBy = noticedBy;
        }

        /** What a rehearsal needs so that it notices such a slip. */
        public String noticedBy() {
            return noticedBy;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /** The file with the edit made. */
    public SourceText text() {
        String text = span.source().text();
        return SourceText.of(
                span.source().name(), text.substring(0, span.start()) + instead + text.substring(span.end()));
    }

    /** File, line and column of the edit. */
    public String place() {
        return span.source().name() + ":" + position();
    }

    /** Line and column of the edit. */
    public SourceText.Position position() {
        return span.source().at(span.start());
    }

    /** The lines that it changes, as they stand in the file. */
    public List<String> before() {
        SourceText source = span.source();
        return IntStream.rangeClosed(firstLine(), lastLine())
                .mapToObj(source::line)
                .toList();
    }

    /** What becomes of them; empty where nothing is left. */
    public List<String> after() {
        SourceText edited = text();
        int more = edited.lines() - span.source().lines();
        return IntStream.rangeClosed(firstLine(), lastLine() + more)
                .mapToObj(edited::line)
                .filter(line -> !line.isBlank())
                .toList();
    }

    private int firstLine() {
        return span.source().at(span.start()).line();
    }

    private int lastLine() {
        return span.source().at(span.end()).line();
    }
}

package io.github.leafproof.dsl.diagnostic;

import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;

/**
 * One thing wrong with a procedure: where, what, and what to do about it.
 *
 * @param message what is wrong, one line in the reader's words, lower case, without a full stop
 * @param label what the span under the caret is, in a word or two; empty where the message says it
 * @param labels other places that matter, each with its word
 * @param help what to do; empty where the message leaves no doubt
 */
public record Diagnostic(
        Code code, Level level, Span span, String message, String label, List<Label> labels, String help) {

    /** In the order of a file; those of one file after those of another. */
    public static final Comparator<Diagnostic> BY_PLACE = Comparator.comparing(
                    (Diagnostic diagnostic) -> diagnostic.source().name())
            .thenComparing(diagnostic -> diagnostic.span().start())
            .thenComparing(diagnostic -> diagnostic.span().end())
            .thenComparing(Diagnostic::code)
            .thenComparing(Diagnostic::message);

    /** File by file in this order, and by place in each; those of other files last. */
    public static Comparator<Diagnostic> inOrderOf(List<SourceText> files) {
        IdentityHashMap<SourceText, Integer> ranks = new IdentityHashMap<>();
        files.forEach(file -> ranks.putIfAbsent(file, ranks.size()));
        return Comparator.comparing((Diagnostic diagnostic) -> ranks.getOrDefault(diagnostic.source(), ranks.size()))
                .thenComparing(BY_PLACE);
    }

    public Diagnostic {
        labels = List.copyOf(labels);
    }

    /** The text it is about. */
    public SourceText source() {
        return span.source();
    }

    /** An error, to be completed with labels and help. */
    public static Diagnostic error(Code code, Span span, String message) {
        return new Diagnostic(code, Level.ERROR, span, message, "", List.of(), "");
    }

    /** A warning, to be completed with labels and help. */
    public static Diagnostic warning(Code code, Span span, String message) {
        return new Diagnostic(code, Level.WARNING, span, message, "", List.of(), "");
    }

    /** The same with a word under the caret. */
    public Diagnostic labelled(String word) {
        return new Diagnostic(code, level, span, message, word, labels, help);
    }

    /** The same with one more place pointed at. */
    public Diagnostic alsoAt(Span place, String word) {
        List<Label> more = new java.util.ArrayList<>(labels);
        more.add(new Label(place, word));
        return new Diagnostic(code, level, span, message, label, more, help);
    }

    /** The same with what to do about it. */
    public Diagnostic help(String remedy) {
        return new Diagnostic(code, level, span, message, label, labels, remedy);
    }

    /** Whether the procedure cannot be used until this is mended. */
    public boolean isError() {
        return level == Level.ERROR;
    }

    /** How bad it is. */
    public enum Level {
        /** The procedure cannot be used. */
        ERROR,
        /** It can be used, but probably does not say what its writer means. */
        WARNING
    }

    /** Another place that matters, and what it is. */
    public record Label(Span span, String word) {}
}

package io.github.leafproof.dsl.mutants;

import io.github.leafproof.dsl.source.Span;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands around a piece of a procedure's text: the word of its clause, its parentheses, the commas of its list. */
final class Around {

    private Around() {}

    /** What stands between two pieces. */
    static Span gap(Span left, Span right) {
        return left.behind().to(right.before());
    }

    /** What a span covers. */
    static String text(Span span) {
        return span.source().of(span);
    }

    /** The first of these words within a span. */
    static Optional<Span> word(Span within, Pattern words) {
        Matcher matcher = words.matcher(text(within));
        return matcher.find()
                ? Optional.of(within.source().span(within.start() + matcher.start(), within.start() + matcher.end()))
                : Optional.empty();
    }

    /** A word within a span that stands in none of its quoted texts. */
    static Optional<Span> wordOutsideTexts(Span within, String word) {
        return word(within, Pattern.compile("\\b" + word + "\\b(?=(?:[^\"]*\"[^\"]*\")*[^\"]*\\z)"));
    }

    /**
     * A clause from its word to the end of its body, parentheses around the body and all; empty where something else stands
     * between the two, such as a comment.
     */
    static Optional<Span> clause(String word, Span body) {
        return before(word, withParentheses(body)).map(begin -> begin.to(withParentheses(body)));
    }

    private static Optional<Span> before(String word, Span span) {
        String text = span.source().text();
        int end = skipBlanksBack(text, span.start());
        int start = end - word.length();
        boolean found = start >= 0
                && text.startsWith(word, start)
                && (start == 0 || !Character.isLetterOrDigit(text.charAt(start - 1)));
        return found ? Optional.of(span.source().span(start, end)) : Optional.empty();
    }

    /** The span and all parentheses that hold it alone. */
    static Span withParentheses(Span span) {
        String text = span.source().text();
        Span whole = span;
        while (true) {
            int open = skipBlanksBack(text, whole.start()) - 1;
            int close = skipBlanks(text, whole.end());
            if (open < 0 || close >= text.length() || text.charAt(open) != '(' || text.charAt(close) != ')') {
                return whole;
            }
            whole = span.source().span(open, close + 1);
        }
    }

    /**
     * One thing of a list with commas, and the comma that goes with it.
     *
     * @param items all things of the list; there are two at least
     */
    static Span ofList(List<Span> items, int index) {
        Span item = items.get(index);
        return index == 0
                ? item.source().span(item.start(), items.get(1).start())
                : item.source().span(items.get(index - 1).end(), item.end());
    }

    /** A span with the blanks before it. */
    static Span withBlanksBefore(Span span) {
        return span.source().span(skipBlanksBack(span.source().text(), span.start()), span.end());
    }

    private static int skipBlanks(String text, int from) {
        int at = from;
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at;
    }

    private static int skipBlanksBack(String text, int from) {
        int at = from;
        while (at > 0 && Character.isWhitespace(text.charAt(at - 1))) {
            at--;
        }
        return at;
    }
}

package io.github.leafproof.dsl.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makes a mess of a procedure without changing what it says. It cuts texts, comments and blanks by a pattern of its own
 * and shares nothing with the layout that is tested by it.
 */
final class Untidy {

    private static final Pattern PIECE = Pattern.compile("//[^\n\r]*|\\s+|[(),{}]|[^\\s\"(),{}/]+|/");
    private static final List<String> SAME_LINE = List.of(" ", "   ", "\t", " \t ");
    private static final List<String> NEXT_LINE = List.of("\n", "\n  ", "\r\n\t", "   \n      ", "\n ");

    private final Random random;
    private final List<String> pieces = new ArrayList<>();

    private Untidy(String text, long seed) {
        this.random = new Random(seed);
        Matcher matcher = PIECE.matcher(text);
        for (int at = 0; at < text.length(); ) {
            int start = at;
            at = text.charAt(at) == '"'
                    ? textEnd(text, at + 1)
                    : matcher.region(at, text.length()).lookingAt() ? matcher.end() : -1;
            pieces.add(text.substring(start, at));
        }
    }

    /** Behind the closing quote; a hole may hold texts of its own. */
    private static int textEnd(String text, int open) {
        int holes = 0;
        for (int at = open; ; at++) {
            switch (text.charAt(at)) {
                case '\\' -> at++;
                case '{' -> holes++;
                case '}' -> holes--;
                case '"' -> {
                    if (holes <= 0) {
                        return at + 1;
                    }
                    at = textEnd(text, at + 1) - 1;
                }
                default -> {}
            }
        }
    }

    /** All comments of a text, in its order. */
    static List<String> comments(String text) {
        return new Untidy(text, 0)
                .pieces.stream()
                        .filter(piece -> piece.startsWith("//"))
                        .map(String::stripTrailing)
                        .toList();
    }

    /** The text with comments strewn in: behind words, and on lines of their own. */
    static String withComments(String text, long seed) {
        return new Untidy(text, seed).strewn();
    }

    private String strewn() {
        StringBuilder strewn = new StringBuilder();
        for (int i = 0; i < pieces.size(); i++) {
            String gap = pieces.get(i);
            if (isFree(i) && gap.isBlank() && random.nextInt(4) == 0) {
                boolean own = random.nextBoolean();
                strewn.append(own ? "\n  //" : " // ")
                        .append(random.nextInt(1000))
                        .append(" \"{ }\n");
            }
            strewn.append(gap);
        }
        return strewn.toString();
    }

    /** The text with other line breaks and blanks, and blank lines only where it has some. */
    static String of(String text, long seed) {
        return new Untidy(text, seed).messed();
    }

    private String messed() {
        StringBuilder messed = new StringBuilder();
        for (int i = 0; i < pieces.size(); i++) {
            String piece = pieces.get(i);
            if (piece.isBlank()) {
                messed.append(gap(i));
            } else {
                boolean glued = i > 0 && !pieces.get(i - 1).isBlank();
                boolean bracket = isBracket(i) || (i > 0 && isBracket(i - 1));
                messed.append(glued && bracket && !isComment(i) && random.nextInt(3) == 0 ? pick(SAME_LINE) : "");
                messed.append(piece);
            }
        }
        return messed.toString();
    }

    private String gap(int i) {
        String gap = pieces.get(i);
        boolean hasLineEnd = gap.indexOf('\n') >= 0;
        if (gap.chars().filter(c -> c == '\n').count() > 1) {
            return pick(NEXT_LINE) + pick(NEXT_LINE) + (random.nextBoolean() ? pick(NEXT_LINE) : "");
        }
        if (isComment(i - 1)) {
            return pick(NEXT_LINE);
        }
        if (isComment(i + 1)) {
            return hasLineEnd ? pick(NEXT_LINE) : pick(SAME_LINE);
        }
        return isFree(i) ? pick(random.nextBoolean() ? NEXT_LINE : SAME_LINE) : gap;
    }

    /** Whether a line may end, or go on, at this gap: between a number and its unit it may not. */
    private boolean isFree(int i) {
        String before = i == 0 ? "" : pieces.get(i - 1);
        String after = i + 1 < pieces.size() ? pieces.get(i + 1) : "";
        boolean behindNumber = !before.startsWith("\"") && before.matches(".*[0-9]");
        boolean inUnit = List.of("per", "in", "·", "/").contains(before)
                || List.of("per", "in", "·", "/").contains(after);
        return !behindNumber && !inUnit;
    }

    private boolean isComment(int i) {
        return i >= 0 && i < pieces.size() && pieces.get(i).startsWith("//");
    }

    private boolean isBracket(int i) {
        return pieces.get(i).matches("[(),{}]");
    }

    private String pick(List<String> some) {
        return some.get(random.nextInt(some.size()));
    }
}

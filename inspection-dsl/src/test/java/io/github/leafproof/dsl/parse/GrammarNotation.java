package io.github.leafproof.dsl.parse;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.antlr.v4.runtime.Token;

/**
 * The parser generator's grammar in the notation in which the W3C writes its own (XML 1.0, fifth edition, clause 6):
 * labels, actions and options left out, words and signs as they are written.
 */
final class GrammarNotation {

    private static final Pattern PARTS = Pattern.compile("(?<heading>// -+ (?<title>[^\n]*?) -+\n)"
            + "|(?<skip>//[^\n]*|<assoc=right>|#\\s*\\w+|\\w+=(?=\\w)|->\\s*\\w+\\(\\w+\\)|\\s+)"
            + "|'(?<literal>(?:\\\\.|[^'])*)'"
            + "|(?<letters>~?\\[(?:\\\\.|[^\\]])*])"
            + "|(?<word>\\w+)"
            + "|(?<sign>[:;|()*+?.])");

    /** How wide a line may be. */
    private static final int WIDTH = 110;

    private GrammarNotation() {}

    /** The rules of a grammar and the headings between them, behind its options. */
    static String rules(String grammar, Map<String, String> spellings) {
        StringBuilder written = new StringBuilder();
        List<String> rule = new ArrayList<>();
        for (MatchResult part : (Iterable<MatchResult>)
                PARTS.matcher(grammar.substring(grammar.indexOf("// ---"))).results()::iterator) {
            if (part.group(2) != null) {
                written.append(written.isEmpty() ? "" : "\n")
                        .append("/* ")
                        .append(part.group(2))
                        .append(" */\n");
            } else if (part.group(3) == null) {
                String sign = sign(part, spellings);
                if (sign.equals(";")) {
                    written.append(rule(rule));
                    rule.clear();
                } else if (!sign.isEmpty()) {
                    rule.add(sign);
                }
            }
        }
        return written.toString();
    }

    private static String sign(MatchResult part, Map<String, String> spellings) {
        if (part.group(4) != null) {
            return literal(part.group(4));
        } else if (part.group(5) != null) {
            return letters(part.group(5));
        } else if (part.group(6) != null) {
            return spellings.getOrDefault(part.group(6), part.group(6));
        }
        return part.group(7);
    }

    /** {@code 'x'}, or {@code "'"}; a sign that is not on every keyboard by its number as well. */
    static String literal(String escaped) {
        StringBuilder plain = new StringBuilder();
        for (int at = 0; at < escaped.length(); at++) {
            if (escaped.startsWith("\\u", at)) {
                plain.append((char) Integer.parseInt(escaped.substring(at + 2, at + 6), 16));
                at += 5;
            } else if (escaped.charAt(at) != '\\') {
                plain.append(escaped.charAt(at));
            }
        }
        return "'" + plain + "'";
    }

    private static String letters(String set) {
        return set.replace("~[", "[^")
                .replaceAll("\\\\u([0-9A-F]{4})", "#x$1")
                .replace("#x00", "#x")
                .replace("\\-", "#x2D")
                .replace("\\r", "#xD")
                .replace("\\n", "#xA")
                .replace("\\t", "#x9")
                .replace("\\f", "#xC");
    }

    private static String rule(List<String> parts) {
        String head = parts.get(0) + " ::= ";
        List<String> alternatives = new ArrayList<>();
        StringBuilder alternative = new StringBuilder();
        int depth = 0;
        for (String part : parts.subList(2, parts.size())) {
            depth += part.equals("(") ? 1 : part.equals(")") ? -1 : 0;
            if (part.equals("|") && depth == 0) {
                alternatives.add(alternative.toString());
                alternative.setLength(0);
            } else {
                boolean glued = alternative.isEmpty()
                        || Set.of("?", "*", "+", ")").contains(part)
                        || (alternative.charAt(alternative.length() - 1) == '('
                                && !alternative.toString().endsWith("'("));
                alternative.append(glued ? "" : " ").append(part);
            }
        }
        alternatives.add(alternative.toString());
        return lines(head, alternatives);
    }

    /** On one line if it fits, else an alternative a line; many short ones fill their lines. */
    private static String lines(String head, List<String> alternatives) {
        String indent = " ".repeat(head.length() - 2) + "| ";
        boolean areShort = alternatives.stream().noneMatch(each -> each.contains(" "));
        StringBuilder lines = new StringBuilder(head);
        int width = head.length();
        boolean oneLine = head.length() + String.join(" | ", alternatives).length() <= WIDTH;
        for (int i = 0; i < alternatives.size(); i++) {
            String next = alternatives.get(i);
            boolean onThisLine = oneLine || (areShort && width + next.length() + 3 <= WIDTH);
            if (i > 0) {
                lines.append(onThisLine ? " | " : "\n" + indent);
                width = onThisLine ? width + 3 : indent.length();
            }
            lines.append(next);
            width += next.length();
        }
        return lines.append('\n').toString();
    }

    /** How each token of the lexer is written in the rules; the first spelling, where there are several. */
    static Map<String, String> spellings(String lexer) {
        Map<String, String> spellings = new LinkedHashMap<>();
        Pattern.compile("(?m)^([A-Z_]+): '((?:\\\\.|[^'])*)'( 's'\\?)?( \\| '[^']*')*;$")
                .matcher(lexer)
                .results()
                .forEach(rule -> spellings.put(rule.group(1), literal(rule.group(2))));
        return spellings;
    }

    /** Which signs and words have a second spelling, in sentences. */
    static List<String> otherSpellings(String lexer) {
        List<String> others = new ArrayList<>();
        Pattern.compile("(?m)^[A-Z_]+: '([^']*)'( 's'\\?| \\| '([^']*)');$")
                .matcher(lexer)
                .results()
                .forEach(rule -> others.add(literal(rule.group(1)) + " is also written "
                        + (rule.group(3) == null ? literal(rule.group(1) + "s") : literal(rule.group(3)))));
        return others;
    }

    /** Whether each token of the lexer is shown by its letters or is one of these. */
    static boolean knows(Map<String, String> spellings, Set<String> othersByName) {
        for (int type = Token.MIN_USER_TOKEN_TYPE; type <= InspectionLexer.VOCABULARY.getMaxTokenType(); type++) {
            String name = InspectionLexer.VOCABULARY.getSymbolicName(type);
            if (!spellings.containsKey(name) && !othersByName.contains(name)) {
                return false;
            }
        }
        return true;
    }
}

package io.github.leafproof.dsl.editor;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jcodings.specific.UTF8Encoding;
import org.joni.Matcher;
import org.joni.Option;
import org.joni.Regex;
import org.joni.Region;
import org.joni.Syntax;

/**
 * Colours a text as an editor does that reads TextMate grammars: line by line, and at each place by the rule that
 * matches first. The regular expressions are those of the editors (Oniguruma's, by its port to Java). Of the grammars
 * it knows {@code match}, {@code begin} and {@code end}, captures by number, {@code patterns} and {@code include};
 * anything else is refused, so that our grammar cannot come to need it unseen.
 */
public final class TextMate {

    private static final Set<String> KNOWN =
            Set.of("name", "match", "captures", "begin", "beginCaptures", "end", "endCaptures", "patterns", "include");

    private final Map<?, ?> grammar;
    private final Map<String, Regex> compiled = new HashMap<>();
    private final Map<Map<?, ?>, List<Map<?, ?>>> flattened = new HashMap<>();

    public TextMate(Map<?, ?> grammar) {
        this.grammar = grammar;
    }

    /** For every character the scope that stands innermost there; the grammar's own where nothing matches. */
    public String[] scopes(String text) {
        String[] scopes = new String[text.length()];
        Arrays.fill(scopes, (String) grammar.get("scopeName"));
        Deque<Map<?, ?>> open = new ArrayDeque<>();
        int start = 0;
        while (start < text.length()) {
            int end = text.indexOf('\n', start) < 0 ? text.length() : text.indexOf('\n', start) + 1;
            new Line(text, start, end, scopes).colour(open);
            start = end;
        }
        return scopes;
    }

    private final class Line {
        private final byte[] bytes;
        private final int[] place;
        private final String[] scopes;

        Line(String text, int start, int end, String[] scopes) {
            String line = text.substring(start, end);
            this.bytes = line.getBytes(StandardCharsets.UTF_8);
            this.place = new int[bytes.length + 1];
            this.scopes = scopes;
            int at = 0;
            for (int i = 0; i < line.length(); i += Character.charCount(line.codePointAt(i))) {
                String letter = line.substring(i, i + Character.charCount(line.codePointAt(i)));
                int length = letter.getBytes(StandardCharsets.UTF_8).length;
                Arrays.fill(place, at, at + length, start + i);
                at += length;
            }
            place[at] = end;
        }

        void colour(Deque<Map<?, ?>> open) {
            int at = 0;
            Set<String> emptyHere = new HashSet<>();
            while (at < bytes.length) {
                Found found = first(open, at);
                if (found == null) {
                    fill(at, bytes.length, open);
                    return;
                }
                fill(at, found.region.getBeg(0), open);
                apply(found, open);
                boolean circles = found.region.getEnd(0) == at
                        && !emptyHere.add(open.size() + " " + System.identityHashCode(found.rule));
                if (found.region.getEnd(0) > at) {
                    emptyHere.clear();
                }
                at = circles ? at + 1 : found.region.getEnd(0);
            }
        }

        private Found first(Deque<Map<?, ?>> open, int at) {
            Found best = null;
            if (!open.isEmpty()) {
                best = search(open.element(), "end", at, null);
            }
            for (Map<?, ?> rule : flat(open.isEmpty() ? grammar : open.element())) {
                best = search(rule, rule.containsKey("begin") ? "begin" : "match", at, best);
            }
            return best;
        }

        private Found search(Map<?, ?> rule, String how, int at, Found best) {
            Matcher matcher = regex((String) rule.get(how)).matcher(bytes);
            boolean found = matcher.search(at, bytes.length, Option.NONE) >= 0;
            boolean earlier = found && (best == null || matcher.getBegin() < best.region.getBeg(0));
            return earlier ? new Found(rule, how, matcher.getEagerRegion().clone()) : best;
        }

        private void apply(Found found, Deque<Map<?, ?>> open) {
            int start = found.region.getBeg(0);
            int end = found.region.getEnd(0);
            switch (found.how) {
                case "begin" -> {
                    open.push(found.rule);
                    fill(start, end, open);
                    captures(found, "beginCaptures");
                }
                case "end" -> {
                    fill(start, end, open);
                    captures(found, "endCaptures");
                    open.pop();
                }
                default -> {
                    fill(start, end, open);
                    name(found.rule, start, end);
                    captures(found, "captures");
                }
            }
        }

        private void captures(Found found, String key) {
            Object captures = found.rule.get(key);
            for (int group = 0; captures != null && group < found.region.getNumRegs(); group++) {
                Object capture = ((Map<?, ?>) captures).get(String.valueOf(group));
                if (capture != null && found.region.getBeg(group) >= 0) {
                    name((Map<?, ?>) capture, found.region.getBeg(group), found.region.getEnd(group));
                }
            }
        }

        private void fill(int start, int end, Deque<Map<?, ?>> open) {
            for (Map<?, ?> rule : open) {
                if (rule.containsKey("name")) {
                    name(rule, start, end);
                    return;
                }
            }
        }

        private void name(Map<?, ?> rule, int start, int end) {
            if (rule.get("name") instanceof String name) {
                Arrays.fill(scopes, place[start], place[end], name);
            }
        }
    }

    private record Found(Map<?, ?> rule, String how, Region region) {}

    private Regex regex(String written) {
        return compiled.computeIfAbsent(written, pattern -> {
            byte[] bytes = pattern.getBytes(StandardCharsets.UTF_8);
            return new Regex(bytes, 0, bytes.length, Option.CAPTURE_GROUP, UTF8Encoding.INSTANCE, Syntax.RUBY);
        });
    }

    /** The rules within a rule, with what they include in its place. */
    private List<Map<?, ?>> flat(Map<?, ?> rule) {
        return flattened.computeIfAbsent(rule, within -> {
            List<Map<?, ?>> rules = new ArrayList<>();
            gather(within, rules, new HashSet<>());
            return rules;
        });
    }

    private void gather(Map<?, ?> within, List<Map<?, ?>> rules, Set<Object> included) {
        if (!(within.get("patterns") instanceof List<?> patterns)) {
            return;
        }
        for (Object each : patterns) {
            Map<?, ?> rule = (Map<?, ?>) each;
            if (!KNOWN.containsAll(rule.keySet())) {
                throw new IllegalArgumentException("this matcher does not know all of " + rule.keySet());
            }
            Object include = rule.get("include");
            if (include != null && !included.add(include)) {
                continue;
            }
            Map<?, ?> meant = include == null ? rule : included(include.toString());
            if (meant.containsKey("match") || meant.containsKey("begin")) {
                rules.add(meant);
            } else {
                gather(meant, rules, included);
            }
        }
    }

    private Map<?, ?> included(String what) {
        if (what.equals("$self")) {
            return grammar;
        }
        Object rule = ((Map<?, ?>) grammar.get("repository")).get(what.substring(1));
        if (rule == null) {
            throw new IllegalArgumentException("nothing is called " + what);
        }
        return (Map<?, ?>) rule;
    }
}

package io.github.leafproof.dsl.source;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The stretches of a procedure's texts that could not be made sense of. Whatever was said there is lost, so nobody should
 * be blamed for what may have stood in it: a name that is mentioned in the damage may have been declared there, and a
 * block with damage in it may have held what it seems to lack.
 */
public final class Damage {

    private static final Pattern WORD = Pattern.compile("[\\p{L}_][\\p{L}_0-9]*");

    private final List<Span> spans;
    private final boolean nameless;
    private final Map<SourceText, NavigableMap<Integer, Integer>> endsByStart = new HashMap<>();
    private final Set<String> words = new HashSet<>();

    private Damage(List<Span> spans, boolean nameless) {
        this.spans = List.copyOf(spans);
        this.nameless = nameless;
        for (Span span : spans) {
            mark(span);
        }
        endsByStart.forEach((source, ends) -> ends.forEach((start, end) -> {
            Matcher word = WORD.matcher(source.text()).region(start, end);
            while (word.find()) {
                words.add(word.group());
            }
        }));
    }

    /**
     * These stretches, which may overlap.
     *
     * @param nameless whether something was declared in them whose name cannot even be read
     */
    public static Damage of(List<Span> spans, boolean nameless) {
        return new Damage(spans, nameless);
    }

    /** Nothing is lost. */
    public static Damage none() {
        return new Damage(List.of(), false);
    }

    /** The damage of two texts together. */
    public Damage and(Damage other) {
        List<Span> all = new ArrayList<>(spans);
        all.addAll(other.spans);
        return new Damage(all, nameless || other.nameless);
    }

    /** Keeps the stretches apart from each other: where two overlap or meet, they become one. */
    private void mark(Span span) {
        NavigableMap<Integer, Integer> ends = endsByStart.computeIfAbsent(span.source(), text -> new TreeMap<>());
        int start = span.start();
        int end = span.end();
        Map.Entry<Integer, Integer> near = ends.floorEntry(end);
        while (near != null && near.getValue() >= start) {
            ends.remove(near.getKey());
            start = Math.min(start, near.getKey());
            end = Math.max(end, near.getValue());
            near = ends.floorEntry(end);
        }
        ends.put(start, end);
    }

    /** Whether all could be read. */
    public boolean isNone() {
        return spans.isEmpty();
    }

    /** Whether a part of this stretch is lost, or something right before or behind it. */
    public boolean touches(Span span) {
        if (isNone()) {
            return false;
        }
        NavigableMap<Integer, Integer> ends = endsByStart.get(span.source());
        Map.Entry<Integer, Integer> last = ends == null ? null : ends.floorEntry(span.end());
        return last != null && last.getValue() >= span.start();
    }

    /** Whether this word stands in what is lost. */
    public boolean mentions(String word) {
        return words.contains(word);
    }

    /** Whether something of this name may have been declared in what is lost. */
    public boolean mayDeclare(String name) {
        return nameless || mentions(name);
    }
}

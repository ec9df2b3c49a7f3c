package io.github.leafproof.dsl.formula;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What a condition has to say for itself once it is judged: what it requires, in numbers; the value it found; the
 * reason, in plain words.
 */
public final class Account {

    private final List<String> requirements = new ArrayList<>();
    private final Map<String, String> values = new LinkedHashMap<>();
    private final List<String> reasons = new ArrayList<>();
    private final List<Held> held = new ArrayList<>();

    private Account() {}

    /**
     * A value held to limits, as it was judged: what a picture of it shows.
     *
     * @param subject what yields the value
     * @param value what is known of it
     * @param limits the limits in numbers
     */
    public record Held(Formula subject, Value value, LimitsHeld.Window limits, Value.Judged judged) {
        /** The value as the procedure names it. */
        public String words() {
            return subject.words();
        }
    }

    /** The account of a condition in a frame. */
    public static Account of(Formula condition, Frame frame) {
        Account account = new Account();
        condition.account(frame, account);
        return account;
    }

    /** The requirement in one line, limits in numbers. */
    public String requirement() {
        return String.join(" ", requirements);
    }

    /** The values that were judged, in one line, by name where there are several; empty where nothing was measured. */
    public String value() {
        return values.size() == 1
                ? values.values().iterator().next()
                : values.entrySet().stream()
                        .map(value -> value.getKey() + " " + value.getValue())
                        .collect(Collectors.joining("; "));
    }

    /** Why it came out as it did, a sentence each. */
    public List<String> reasons() {
        return List.copyOf(reasons);
    }

    /** The values that were held to limits, each as it was judged; none that only had to miss them. */
    public List<Held> held() {
        return List.copyOf(held);
    }

    void requires(String words) {
        requirements.add(words);
    }

    /** Takes over what a part has to say for itself. */
    void includes(Account part) {
        part.values.forEach(values::putIfAbsent);
        part.reasons.forEach(this::says);
    }

    void holds(Held value) {
        held.add(value);
    }

    void says(String sentence) {
        if (!reasons.contains(sentence)) {
            reasons.add(sentence);
        }
    }

    void measures(Formula subject, Frame frame) {
        Value value = subject.value(frame);
        if (!(value instanceof Value.Missing) && !(subject instanceof Constant)) {
            values.putIfAbsent(subject.words(), Shown.measured(value, frame.units()));
        }
    }
}

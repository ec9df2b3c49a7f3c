package io.github.leafproof.dsl.formula;

import java.util.ArrayList;
import java.util.List;

/**
 * What a condition has to say for itself once it is judged: what it requires, in numbers; the value it found; the
 * reason, in plain words.
 */
public final class Account {

    private final List<String> requirements = new ArrayList<>();
    private final List<String> values = new ArrayList<>();
    private final List<String> reasons = new ArrayList<>();

    private Account() {}

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

    /** The values that were judged, in one line; empty where nothing was measured. */
    public String value() {
        return String.join("; ", values);
    }

    /** Why it came out as it did, a sentence each. */
    public List<String> reasons() {
        return List.copyOf(reasons);
    }

    void requires(String words) {
        requirements.add(words);
    }

    void joins(String word) {
        requirements.add(word);
    }

    void says(String sentence) {
        if (!reasons.contains(sentence)) {
            reasons.add(sentence);
        }
    }

    void measures(Formula subject, Frame frame) {
        Value value = subject.value(frame);
        if (!(value instanceof Value.Missing) && !(subject instanceof Constant)) {
            String shown = Shown.measured(value, frame.units());
            if (!values.contains(shown)) {
                values.add(shown);
            }
        }
    }
}

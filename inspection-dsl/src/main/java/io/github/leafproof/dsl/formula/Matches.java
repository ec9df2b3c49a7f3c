package io.github.leafproof.dsl.formula;

import java.util.List;

/**
 * Whether two values without uncertainty stand in a relation: the same option, a grade at least as high, every item
 * there, the same words.
 *
 * @param holds the relation
 * @param relation as written between the two: {@code is}, {@code at least}
 * @param finding what to say where it does not hold, given both values
 */
public record Matches(Formula subject, Formula other, String relation, Standing holds, Finding finding)
        implements Formula {

    /** Puts a failure into words, such as which items are lacking; empty where the values speak for themselves. */
    @FunctionalInterface
    public interface Finding {
        String of(Value subject, Value other);
    }

    @Override
    public Value value(Frame frame) {
        Value value = subject.value(frame);
        Value with = other.value(frame);
        if (value instanceof Value.Missing || with instanceof Value.Missing) {
            return Value.Missing.of(List.of(value, with));
        }
        return Value.Judged.certain(holds.test(value, with));
    }

    @Override
    public String words() {
        return subject.words() + " " + relation + " " + other.words();
    }

    @Override
    public List<Formula> parts() {
        return List.of(subject, other);
    }

    @Override
    public void account(Frame frame, Account account) {
        account.requires(subject.words() + " " + relation + " " + Shown.limit(other, frame));
        account.measures(subject, frame);
        if (value(frame) instanceof Value.Judged judged && !judged.holds()) {
            String said = finding.of(subject.value(frame), other.value(frame));
            if (!said.isEmpty()) {
                account.says(said);
            }
        }
    }
}

package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.verdict.Outcome;
import java.util.List;

/** One value where a condition holds, another where it does not. */
public record IfElse(Formula condition, Formula then, Formula otherwise) implements Formula {

    @Override
    public Value value(Frame frame) {
        Value found = condition.value(frame);
        if (!(found instanceof Value.Judged judged)) {
            return found;
        }
        if (judged.holds()) {
            return then.value(frame);
        }
        return judged.outcome() == Outcome.FAILS
                ? otherwise.value(frame)
                : Value.Missing.of(Value.Lack.Kind.UNDECIDED, condition.words(), "cannot be told either way");
    }

    @Override
    public String words() {
        return "if " + condition.words() + " then " + then.words() + " else " + otherwise.words();
    }

    @Override
    public List<Formula> parts() {
        return List.of(condition, then, otherwise);
    }

    @Override
    public void account(Frame frame, Account account) {
        Value found = condition.value(frame);
        if (found instanceof Value.Judged judged && judged.holds()) {
            then.account(frame, account);
        } else if (found instanceof Value.Judged judged && judged.outcome() == Outcome.FAILS) {
            otherwise.account(frame, account);
        } else {
            account.requires(words());
        }
    }
}

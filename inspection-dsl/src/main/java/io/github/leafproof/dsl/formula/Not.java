package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import java.util.List;

/** The opposite of a condition: what is open or contradicted stays so. */
public record Not(Formula part) implements Formula {

    @Override
    public Value value(Frame frame) {
        Value value = part.value(frame);
        if (!(value instanceof Value.Judged judged)) {
            return value;
        }
        Conformity of = judged.conformity();
        Outcome outcome =
                judged.holds() ? Outcome.FAILS : judged.outcome() == Outcome.FAILS ? Outcome.PASSES : judged.outcome();
        return new Value.Judged(outcome, new Conformity(1 - of.high(), 1 - of.low(), 0, 0), Side.NONE);
    }

    @Override
    public String words() {
        return "not " + (part instanceof Joined ? "(" + part.words() + ")" : part.words());
    }

    @Override
    public List<Formula> parts() {
        return List.of(part);
    }

    @Override
    public void account(Frame frame, Account account) {
        Account own = Account.of(part, frame);
        String opposite = "not " + (part instanceof Joined ? "(" + own.requirement() + ")" : own.requirement());
        account.requires(part instanceof Slot ? part.words() + " is no" : opposite);
        account.includes(own);
    }
}

package io.github.leafproof.dsl.formula;

import java.util.List;
import java.util.function.IntConsumer;

/** The value of an observation, of a fact of the engine or of a derived value. */
public record Slot(int number, String words) implements Formula {

    @Override
    public Value value(Frame frame) {
        return frame.slot(number);
    }

    @Override
    public List<Formula> parts() {
        return List.of();
    }

    @Override
    public void slots(IntConsumer reader) {
        reader.accept(number);
    }

    /** On its own in a requirement stands only what is yes or no. */
    @Override
    public void account(Frame frame, Account account) {
        account.requires(words + " is yes");
        account.measures(this, frame);
    }
}

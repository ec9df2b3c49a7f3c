package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Account;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Value;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;

/** Counts how often it is evaluated. */
record Counted(Formula formula, AtomicInteger count) implements Formula {
    @Override
    public Value value(Frame frame) {
        count.incrementAndGet();
        return formula.value(frame);
    }

    @Override
    public String words() {
        return formula.words();
    }

    @Override
    public List<Formula> parts() {
        return List.of(formula);
    }

    @Override
    public void slots(IntConsumer reader) {
        formula.slots(reader);
    }

    @Override
    public void account(Frame frame, Account account) {
        formula.account(frame, account);
    }
}

package io.github.leafproof.dsl.formula;

import java.util.ArrayList;
import java.util.List;

/**
 * The arm that an option selects.
 *
 * @param arms the formula for each option of the subject's type, in its order
 */
public record Chosen(Formula subject, List<Formula> arms) implements Formula {

    public Chosen {
        arms = List.copyOf(arms);
    }

    @Override
    public Value value(Frame frame) {
        Value value = subject.value(frame);
        return value instanceof Value.Pick pick ? arms.get(pick.option()).value(frame) : value;
    }

    /** The formula that counts in this frame, or this one while the subject is not known. */
    public Formula arm(Frame frame) {
        return subject.value(frame) instanceof Value.Pick pick ? arms.get(pick.option()) : this;
    }

    @Override
    public String words() {
        return "the choice by " + subject.words();
    }

    @Override
    public List<Formula> parts() {
        List<Formula> parts = new ArrayList<>(arms);
        parts.add(subject);
        return parts;
    }

    @Override
    public void account(Frame frame, Account account) {
        Formula arm = arm(frame);
        if (arm == this) {
            account.requires(words());
        } else {
            arm.account(frame, account);
        }
    }
}

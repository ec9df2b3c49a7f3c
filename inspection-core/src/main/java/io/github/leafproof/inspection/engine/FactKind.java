package io.github.leafproof.inspection.engine;

import io.github.leafproof.inspection.quantity.Dimension;
import java.util.List;
import java.util.Optional;

/** What can be said where a card states a fact: an amount of some dimension, yes or no, one of a few words. */
public sealed interface FactKind {

    /** How a person would describe what belongs there: {@code a length}, {@code yes or no}. */
    String words();

    /** What is wrong with this statement, as the end of a sentence that begins with the fact's name; empty when nothing is. */
    Optional<String> complaintAbout(Fact stated);

    /** An amount of one dimension. */
    record Measure(Dimension dimension) implements FactKind {
        @Override
        public String words() {
            return "an amount of the kind " + dimension.words();
        }

        @Override
        public Optional<String> complaintAbout(Fact stated) {
            if (!(stated instanceof Fact.Amount given)) {
                return wants(this);
            }
            return given.amount().dimension().equals(dimension)
                    ? Optional.empty()
                    : Optional.of("must be of the kind " + dimension.words() + "; " + given.amount()
                            + " is of the kind " + given.amount().dimension().words());
        }
    }

    /** Yes or no. */
    record YesNo() implements FactKind {
        @Override
        public String words() {
            return "yes or no";
        }

        @Override
        public Optional<String> complaintAbout(Fact stated) {
            return stated instanceof Fact.Flag ? Optional.empty() : wants(this);
        }
    }

    /** One of a few words, each as files and procedures spell it. */
    record OneOf(List<String> choices) implements FactKind {

        /** Keeps the order given. */
        public OneOf {
            choices = List.copyOf(choices);
        }

        @Override
        public String words() {
            return "one of " + String.join(", ", choices);
        }

        @Override
        public Optional<String> complaintAbout(Fact stated) {
            if (!(stated instanceof Fact.Word given)) {
                return wants(this);
            }
            return choices.contains(given.word())
                    ? Optional.empty()
                    : Optional.of("must be " + words() + ", not " + given.word());
        }
    }

    /** Any text. */
    record Text() implements FactKind {
        @Override
        public String words() {
            return "a text";
        }

        @Override
        public Optional<String> complaintAbout(Fact stated) {
            return stated instanceof Fact.Word ? Optional.empty() : wants(this);
        }
    }

    /** A list of texts. */
    record TextList() implements FactKind {
        @Override
        public String words() {
            return "a list of texts";
        }

        @Override
        public Optional<String> complaintAbout(Fact stated) {
            return stated instanceof Fact.Words ? Optional.empty() : wants(this);
        }
    }

    private static Optional<String> wants(FactKind kind) {
        return Optional.of("must be " + kind.words());
    }
}

package io.github.leafproof.inspection.engine;

import io.github.leafproof.inspection.quantity.Quantity;
import java.util.List;

/** One thing a card states about an engine. */
public sealed interface Fact {

    /** A measured or prescribed amount: {@code bore} is {@code 27.7 mm}. */
    record Amount(Quantity amount) implements Fact {}

    /** Whether something is so: {@code choke} is yes or no. */
    record Flag(boolean yes) implements Fact {}

    /** A word, or a free text: {@code throttle_arm} is {@code metal}. */
    record Word(String word) implements Fact {}

    /** A list, such as what belongs into the box. */
    record Words(List<String> words) implements Fact {

        /** Keeps the order given. */
        public Words {
            words = List.copyOf(words);
        }
    }
}

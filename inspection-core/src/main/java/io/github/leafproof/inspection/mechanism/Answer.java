package io.github.leafproof.inspection.mechanism;

import io.github.leafproof.inspection.quantity.Estimate;

/** What a calculation comes to: an amount, or the reason why there is none. */
public sealed interface Answer {

    /** The amount. */
    record Known(Estimate amount) implements Answer {}

    /**
     * Why there is no amount: something given lies where the formula does not hold.
     *
     * @param mechanism the calculation that was asked
     * @param input what was given, by its name; empty where nothing single is at fault
     * @param words what it is, what it must be and why, in the words of the trade, without a full stop
     */
    record Refusal(String mechanism, String input, String words) implements Answer {}

    /**
     * The amount, for a caller who has made sure that there is one.
     *
     * @throws IllegalArgumentException for a refusal, with its words as the message
     */
    default Estimate known() {
        if (this instanceof Refusal refusal) {
            throw new IllegalArgumentException(refusal.words());
        }
        return ((Known) this).amount();
    }
}

package io.github.leafproof.inspection.engine;

import java.util.List;
import java.util.Optional;

/**
 * A fact every card may state, known to the procedure language with its kind: {@code engine.lash_min} is a length before
 * any card is read.
 *
 * @param name as cards and procedures spell it; a dot separates a group, as in {@code materials.valve}
 * @param kind what can be stated
 * @param keeper whether the card of the model states it, or the sheet of one engine
 * @param meaning a sentence for the reader of a card
 */
public record CardFact(String name, FactKind kind, Keeper keeper, String meaning) {

    /** Where a fact is written down. */
    public enum Keeper {
        /** On the card, for every engine of the model. */
        CARD,
        /** On the job sheet, for the engine on the bench. */
        SHEET
    }

    /** The standard fact of this name, spelled exactly so. */
    public static Optional<CardFact> named(String name) {
        return Optional.ofNullable(StandardFacts.BY_NAME.get(name));
    }

    /** All standard facts, those of the card first, in the order in which people ask for them. */
    public static List<CardFact> all() {
        return StandardFacts.ALL;
    }
}

package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.inspection.engine.CardFact;
import io.github.leafproof.inspection.engine.EngineCard;
import java.util.Map;

/** Which file states a fact of the engine, and where in it. */
final class FactSource {

    private FactSource() {}

    static String of(String fact, Evidence evidence) {
        boolean sheet = CardFact.named(fact)
                .filter(known -> known.keeper() == CardFact.Keeper.SHEET)
                .isPresent();
        if (sheet) {
            return "the sheet " + evidence.sheet().name();
        }
        EngineCard card = evidence.card().content();
        String variant = evidence.sheet().heading().engine().variant();
        String name = "the card " + evidence.card().name();
        if (variant != null && card.variants().getOrDefault(variant, Map.of()).containsKey(fact)) {
            return name + ", variant " + variant;
        }
        return card.shop().containsKey(fact) ? name + ", the shop's own facts" : name;
    }
}

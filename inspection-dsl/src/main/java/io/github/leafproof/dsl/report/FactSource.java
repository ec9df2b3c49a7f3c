package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.inspection.engine.CardFact;
import io.github.leafproof.inspection.engine.EngineCard;
import java.util.Map;

/** Which file states a fact of the engine, and where in it. */
final class FactSource {

    private FactSource() {}

    static String of(String fact, Evidence.Files files) {
        boolean sheet = CardFact.named(fact)
                .filter(known -> known.keeper() == CardFact.Keeper.SHEET)
                .isPresent();
        if (sheet) {
            return "the sheet " + files.sheet().name();
        }
        EngineCard card = files.card().content();
        String variant = files.sheet().content().engine().variant();
        String name = "the card " + files.card().name();
        if (variant != null && card.variants().getOrDefault(variant, Map.of()).containsKey(fact)) {
            return name + ", variant " + variant;
        }
        return card.shop().containsKey(fact) ? name + ", the shop's own facts" : name;
    }
}

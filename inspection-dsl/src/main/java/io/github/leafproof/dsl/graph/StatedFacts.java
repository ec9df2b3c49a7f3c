package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.record.SheetEngine;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What a card states of the facts that are asked for, before there is a job sheet. */
public final class StatedFacts {

    /** Facts that the job sheet states, of the engine on the bench. */
    private static final Set<String> OF_THE_SHEET = Set.of("engine.serial", "engine.condition", "engine.owner");

    private StatedFacts() {}

    /**
     * The value of each fact, by its slot; {@link Value.Missing} where the card does not state it. Facts that only a job
     * sheet can state are left out.
     *
     * @param variant which of the card's variants is meant, or null for an engine of which that is not known
     */
    public static Map<Node.Fact, Value> of(List<Node.Fact> facts, EngineCard card, @Nullable String variant) {
        SheetEngine engine = new SheetEngine(null, null, null, variant);
        Map<Node.Fact, Value> values = new LinkedHashMap<>();
        for (Node.Fact fact : facts) {
            if (!OF_THE_SHEET.contains(fact.name())) {
                values.put(fact, EngineFactValue.of(fact, card, engine));
            }
        }
        return values;
    }
}

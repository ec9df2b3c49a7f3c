package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.engine.Fact;
import io.github.leafproof.inspection.record.SheetEngine;
import org.jspecify.annotations.Nullable;

/** The value of a fact of the engine: from the sheet what is this engine's own, from the card what its model shares. */
final class EngineFactValue {

    private EngineFactValue() {}

    /** What a card calls it. */
    static String nameOnCard(Node.Fact fact) {
        return fact.name().substring("engine.".length());
    }

    static Value of(Node.Fact fact, EngineCard card, SheetEngine engine) {
        String name = nameOnCard(fact);
        return switch (name) {
            case "serial" -> ofSheet(fact, engine.serial());
            case "condition" -> ofSheet(fact, engine.condition());
            case "owner" -> ofSheet(fact, engine.owner());
            case "variant" -> word(fact, engine.variant() == null ? EngineCard.UNKNOWN_VARIANT : engine.variant());
            case "model" -> word(fact, card.model());
            case "maker" -> word(fact, card.maker());
            default ->
                card.fact(name, engine.variant())
                        .map(known -> value(fact, known))
                        .orElseGet(() -> missing(fact, "the engine card"));
        };
    }

    private static Value ofSheet(Node.Fact fact, @Nullable String word) {
        return word == null ? missing(fact, "the job sheet") : word(fact, word);
    }

    private static Value missing(Node.Fact fact, String where) {
        return Value.Missing.of(Value.Lack.Kind.NOT_ON_CARD, fact.name(), "is not stated on " + where);
    }

    private static Value value(Node.Fact fact, Fact stated) {
        if (stated instanceof Fact.Amount amount) {
            return Value.Amount.stated(amount.amount());
        }
        if (stated instanceof Fact.Flag flag) {
            return Value.Judged.certain(flag.yes());
        }
        if (stated instanceof Fact.Words words) {
            return new Value.Things(words.words());
        }
        return word(fact, ((Fact.Word) stated).word());
    }

    private static Value word(Node.Fact fact, String word) {
        if (fact.type() instanceof Type.Choice choice) {
            int option = choice.options().indexOf(word);
            return option < 0
                    ? Value.Missing.of(
                            Value.Lack.Kind.NOT_ON_CARD,
                            fact.name(),
                            "is " + word + ", which is none of " + String.join(", ", choice.options()))
                    : new Value.Pick(option, word);
        }
        return new Value.Words(word);
    }
}

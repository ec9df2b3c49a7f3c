package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.engine.CardFact;
import io.github.leafproof.inspection.engine.Fact;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * From JSON to the facts a shop added to its card. No table says what they are, so each is taken as it is written: whether
 * {@code "8 mm"} is a length or the name of a shelf is known to the procedure that declares it.
 */
final class ShopFacts {
    private ShopFacts() {}

    static Map<String, Fact> read(Spot shop) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        shop.anyFields("the shop's own facts by name").ifPresent(fields -> {
            for (String key : fields.keys()) {
                if (CardFact.named(key).isPresent()) {
                    fields.complainAtKey(
                            key,
                            FileMistake.LP633,
                            key + " is a fact every card or sheet knows",
                            "move it out of shop, or give the shop's own fact another name");
                }
                fields.optional(key).flatMap(ShopFacts::fact).ifPresent(fact -> facts.put(key, fact));
            }
        });
        return facts;
    }

    private static Optional<Fact> fact(Spot spot) {
        if (spot.json() instanceof Json.Text) {
            return spot.text("a text").map(Fact.Word::new);
        }
        if (spot.json() instanceof Json.Digits) {
            return spot.number("a number").map(number -> new Fact.Amount(FactReading.plain(number)));
        }
        if (spot.json() instanceof Json.Truth truth) {
            return Optional.of(new Fact.Flag(truth.yes()));
        }
        if (spot.json() instanceof Json.Items) {
            return FactReading.distinctTexts(spot).map(Fact.Words::new);
        }
        return spot.wrongKind(
                "a text, a number, true or false, or a list of texts", "a shop's own facts have no parts of their own");
    }
}

package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.engine.CardFact;
import io.github.leafproof.inspection.engine.CardFact.Keeper;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.engine.Fact;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** From JSON to an engine card. */
final class CardReading {
    private static final List<String> HEADINGS = List.of("model", "maker", "years");

    private static final List<CardFact> FACTS = CardFact.all().stream()
            .filter(fact -> fact.keeper() == Keeper.CARD && !HEADINGS.contains(fact.name()))
            .toList();

    /** The keys of the facts; those of a group, as in {@code materials.valve}, stand under one key. */
    private static final List<String> FACT_KEYS =
            FACTS.stream().map(CardReading::outerKey).distinct().toList();

    private static final String SHOP = "shop";

    private CardReading() {}

    private static String outerKey(CardFact fact) {
        int dot = fact.name().indexOf('.');
        return dot < 0 ? fact.name() : fact.name().substring(0, dot);
    }

    static Optional<EngineCard> card(Spot spot) {
        return spot.fields("an engine card", cardKeys()).flatMap(fields -> {
            int before = spot.errors();
            Optional<String> model =
                    fields.required("model", "what the maker calls the engine").flatMap(s -> s.text("a name"));
            Optional<String> maker =
                    fields.required("maker", "who made the engine").flatMap(s -> s.text("a name"));
            Optional<String> years = fields.optional("years").flatMap(s -> s.text("the years it was made in"));
            Stated stated = facts(fields);
            Map<String, Map<String, Fact>> shopVariants = new LinkedHashMap<>();
            Map<String, Stated> variants = variants(fields, shopVariants);
            Map<String, Fact> shop = fields.optional(SHOP).map(ShopFacts::read).orElse(Map.of());
            CardSanity.check(stated, variants);
            if (spot.errors() > before) {
                return Optional.empty();
            }
            Map<String, Map<String, Fact>> differences = new LinkedHashMap<>();
            variants.forEach((name, variant) -> differences.put(name, variant.facts()));
            return Optional.of(new EngineCard(
                    model.orElseThrow(),
                    maker.orElseThrow(),
                    years.orElse(null),
                    stated.facts(),
                    differences,
                    shop,
                    shopVariants));
        });
    }

    private static List<String> cardKeys() {
        List<String> keys = new ArrayList<>(HEADINGS);
        keys.addAll(FACT_KEYS);
        keys.addAll(List.of("variants", SHOP));
        return keys;
    }

    private static Map<String, Stated> variants(Fields card, Map<String, Map<String, Fact>> shopVariants) {
        List<String> keys = new ArrayList<>(FACT_KEYS);
        keys.add(SHOP);
        Map<String, Stated> variants = new LinkedHashMap<>();
        card.optional("variants")
                .flatMap(spot -> spot.anyFields("the variants by name"))
                .ifPresent(fields -> {
                    for (String name : fields.keys()) {
                        if (name.isBlank()) {
                            fields.complainAtKey(
                                    name,
                                    FileMistake.LP615,
                                    "a variant needs a name",
                                    "name it as a sheet would, such as \"early cam\"");
                        }
                        fields.optional(name)
                                .flatMap(spot -> spot.fields("what differs in this variant", keys))
                                .ifPresent(differing -> {
                                    variants.put(name, facts(differing));
                                    differing
                                            .optional(SHOP)
                                            .map(ShopFacts::read)
                                            .ifPresent(own -> shopVariants.put(name, own));
                                });
                    }
                });
        return variants;
    }

    private static Stated facts(Fields fields) {
        Stated stated = new Stated(new LinkedHashMap<>(), new LinkedHashMap<>());
        for (String key : FACT_KEYS) {
            fields.optional(key).ifPresent(spot -> {
                Optional<CardFact> single = CardFact.named(key);
                if (single.isPresent()) {
                    state(single.get(), spot, stated);
                } else {
                    group(key, spot, stated);
                }
            });
        }
        return stated;
    }

    private static void group(String key, Spot spot, Stated stated) {
        List<CardFact> members =
                FACTS.stream().filter(fact -> fact.name().startsWith(key + ".")).toList();
        List<String> keys = members.stream()
                .map(fact -> fact.name().substring(key.length() + 1))
                .toList();
        spot.fields("the " + key + " by part", keys).ifPresent(fields -> {
            for (int i = 0; i < members.size(); i++) {
                CardFact fact = members.get(i);
                fields.optional(keys.get(i)).ifPresent(inner -> state(fact, inner, stated));
            }
        });
    }

    private static void state(CardFact fact, Spot spot, Stated stated) {
        FactReading.read(fact, spot).ifPresent(read -> {
            stated.facts().put(fact.name(), read);
            stated.spots().put(fact.name(), spot);
        });
    }

    /** Facts with the places where they are stated. */
    record Stated(Map<String, Fact> facts, Map<String, Spot> spots) {}
}

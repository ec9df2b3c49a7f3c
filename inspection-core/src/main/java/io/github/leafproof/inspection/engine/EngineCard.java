package io.github.leafproof.inspection.engine;

import io.github.leafproof.inspection.engine.CardFact.Keeper;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a shop knows of a model of engine: its dimensions, its limits, and how its variants differ.
 *
 * <p>The same model can have been made with two cams or two cylinders that want different lash (common practice: vintage
 * selects the limits). A variant states only what differs. {@value #UNKNOWN_VARIANT} is a legal answer to which variant an
 * engine is; a card may give it limits of its own, and without them the card's own facts hold.
 *
 * @param model the model as its maker names it
 * @param maker who made it
 * @param years when it was made, as text; null when not known
 * @param facts standard facts by name, as {@link CardFact} lists them; groups are joined with a dot
 * @param variants what differs, by the name of the variant
 * @param shop facts this shop added to its cards, as they are written there: what a text means, a length or a word, is for
 *     the procedure to say that declares the fact
 * @param shopVariants which of these differ, by the name of the variant; each of them is one that {@code variants} lists
 */
public record EngineCard(
        String model,
        String maker,
        @Nullable String years,
        Map<String, Fact> facts,
        Map<String, Map<String, Fact>> variants,
        Map<String, Fact> shop,
        Map<String, Map<String, Fact>> shopVariants) {

    /** What a sheet answers when nobody can say which variant an engine is. */
    public static final String UNKNOWN_VARIANT = "unknown";

    private static final Set<String> HEADINGS = Set.of("model", "maker", "years");

    /** Refuses a fact no card can state, or of the wrong kind, and a shop fact that hides a standard one. */
    public EngineCard {
        if (model.isBlank() || maker.isBlank()) {
            throw new IllegalArgumentException("a card needs a model and a maker");
        }
        facts = checked(facts, "the card of " + model);
        Map<String, Map<String, Fact>> kept = new TreeMap<>();
        for (Map.Entry<String, Map<String, Fact>> variant : variants.entrySet()) {
            kept.put(variant.getKey(), checked(variant.getValue(), "the variant " + variant.getKey() + " of " + model));
        }
        variants = Collections.unmodifiableMap(kept);
        shop = ownNames(shop);
        Map<String, Map<String, Fact>> own = new TreeMap<>();
        for (Map.Entry<String, Map<String, Fact>> variant : shopVariants.entrySet()) {
            if (!variants.containsKey(variant.getKey())) {
                throw new IllegalArgumentException("the card of " + model + " has no variant " + variant.getKey());
            }
            own.put(variant.getKey(), ownNames(variant.getValue()));
        }
        shopVariants = Collections.unmodifiableMap(own);
    }

    /** A card on which no fact of the shop's own differs between variants. */
    public EngineCard(
            String model,
            String maker,
            @Nullable String years,
            Map<String, Fact> facts,
            Map<String, Map<String, Fact>> variants,
            Map<String, Fact> shop) {
        this(model, maker, years, facts, variants, shop, Map.of());
    }

    private static Map<String, Fact> ownNames(Map<String, Fact> shop) {
        for (String name : shop.keySet()) {
            if (CardFact.named(name).isPresent()) {
                throw new IllegalArgumentException(
                        name + " is a fact every card knows; the shop's own facts need other names");
            }
        }
        return Map.copyOf(shop);
    }

    /** What is wrong with a standard fact stated on a card under this name; empty when nothing is. */
    public static Optional<String> complaintAbout(String name, Fact stated) {
        Optional<CardFact> fact =
                CardFact.named(name).filter(known -> known.keeper() == Keeper.CARD && !HEADINGS.contains(known.name()));
        return fact.isEmpty()
                ? Optional.of(name + " is no fact of a card")
                : fact.get().kind().complaintAbout(stated).map(complaint -> name + " " + complaint);
    }

    /** Whether the card can answer for this variant: one it lists, or {@value #UNKNOWN_VARIANT}. */
    public boolean knowsVariant(String variant) {
        return variants.containsKey(variant) || variant.equals(UNKNOWN_VARIANT);
    }

    /**
     * What the card states under this name: first the variant's word, then the card's own, then the shop's. Model, maker and
     * years count as facts too.
     *
     * @param variant the variant this engine is; null when the sheet does not say
     * @throws IllegalArgumentException for a variant the card does not know: limits for another engine would be a guess. Ask
     *     {@link #knowsVariant} first
     */
    public Optional<Fact> fact(String name, @Nullable String variant) {
        if (variant != null) {
            requireKnown(variant);
            Optional<Fact> particular = Stream.of(variants, shopVariants)
                    .flatMap(each -> Optional.ofNullable(
                            each.getOrDefault(variant, Map.of()).get(name))
                            .stream())
                    .findFirst();
            if (particular.isPresent()) {
                return particular;
            }
        }
        return heading(name)
                .or(() -> Optional.ofNullable(facts.get(name)))
                .or(() -> Optional.ofNullable(shop.get(name)));
    }

    private void requireKnown(String variant) {
        if (!knowsVariant(variant)) {
            throw new IllegalArgumentException("the card of " + model + " knows no variant " + variant + "; it knows "
                    + String.join(", ", variants.keySet()) + (variants.isEmpty() ? "" : " and ") + UNKNOWN_VARIANT);
        }
    }

    private Optional<Fact> heading(String name) {
        return switch (name) {
            case "model" -> Optional.of(new Fact.Word(model));
            case "maker" -> Optional.of(new Fact.Word(maker));
            case "years" -> Optional.ofNullable(years).map(Fact.Word::new);
            default -> Optional.empty();
        };
    }

    private static Map<String, Fact> checked(Map<String, Fact> facts, String where) {
        facts.forEach((name, stated) -> complaintAbout(name, stated).ifPresent(complaint -> {
            throw new IllegalArgumentException(where + ": " + complaint);
        }));
        return Map.copyOf(facts);
    }
}

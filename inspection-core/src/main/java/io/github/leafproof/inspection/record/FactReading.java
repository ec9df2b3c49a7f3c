package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.engine.CardFact;
import io.github.leafproof.inspection.engine.Fact;
import io.github.leafproof.inspection.engine.FactKind;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Unit;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** From JSON to one fact of an engine card. */
final class FactReading {
    /** Every other amount on a card is above zero; a shop may set valves without lash, or an idle stop that shuts. */
    private static final Set<String> MAY_BE_ZERO = Set.of("lash_min", "lash_max", "lash_tolerated", "idle_opening_min");

    private static final int MOST_TEXTS = 1_000;

    private FactReading() {}

    static Optional<Fact> read(CardFact fact, Spot spot) {
        if (fact.kind() instanceof FactKind.Measure measure) {
            return amount(fact.name(), measure, spot).map(Fact.Amount::new);
        }
        if (fact.kind() instanceof FactKind.YesNo) {
            return spot.yesNo().map(Fact.Flag::new);
        }
        if (fact.kind() instanceof FactKind.OneOf oneOf) {
            return spot.word("a word for " + fact.name(), oneOf.choices()).map(Fact.Word::new);
        }
        if (fact.kind() instanceof FactKind.TextList) {
            return distinctTexts(spot).map(Fact.Words::new);
        }
        return spot.text("a text").map(Fact.Word::new);
    }

    private static Optional<Quantity> amount(String name, FactKind.Measure measure, Spot spot) {
        if (measure.dimension().isRatio()) {
            return ratio(name, spot);
        }
        return MAY_BE_ZERO.contains(name)
                ? Amounts.zeroOrMore(spot, measure.dimension())
                : Amounts.aboveZero(spot, measure.dimension());
    }

    private static Optional<Quantity> ratio(String name, Spot spot) {
        // The volume above the piston is largest at the bottom of the stroke, so a compression ratio exceeds one.
        BigDecimal bound = name.equals("compression_ratio") ? BigDecimal.ONE : BigDecimal.ZERO;
        return spot.number("a ratio as a plain number").flatMap(number -> {
            if (number.compareTo(bound) <= 0) {
                return spot.no(
                        FileMistake.LP623,
                        name + " cannot be " + number,
                        "write a number above " + bound + ", or leave the key out where it is not known");
            }
            return Optional.of(plain(number));
        });
    }

    static Quantity plain(BigDecimal number) {
        return Quantity.of(number.toString(), Unit.ONE);
    }

    /** A list of texts with something in it and none of them twice. */
    static Optional<List<String>> distinctTexts(Spot spot) {
        return spot.someItems("a list of texts").flatMap(spots -> {
            if (spots.size() > MOST_TEXTS) {
                return spot.no(
                        FileMistake.LP608,
                        "a list of " + spots.size() + " texts is longer than any card's",
                        "a list on a card holds " + MOST_TEXTS + " texts at most");
            }
            return Optional.of(distinct(spots, "a text"));
        });
    }

    /** What the items say, each once. */
    static List<String> distinct(List<Spot> items, String what) {
        Set<String> texts = new LinkedHashSet<>();
        for (Spot item : items) {
            item.text(what)
                    .filter(text -> !texts.add(text))
                    .ifPresent(text -> item.complain(
                            FileMistake.LP618,
                            Shown.quoted(text) + " stands in the list twice",
                            "remove one of the two"));
        }
        return List.copyOf(texts);
    }
}

package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.engine.Fact;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.record.CardReading.Stated;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What facts of one engine say about each other: whether they can all be true. */
final class CardSanity {
    /** Maker's figures are rounded (common practice); beyond this share one of the three is a slip, or of another engine. */
    private static final double ROUNDED_DISPLACEMENT = 0.05;

    private record Ordered(String lower, String upper, FileMistake mistake, String help) {}

    private static final String MEND = "correct the one that is wrong, or exchange the two";

    private static final List<Ordered> ORDERED = List.of(
            new Ordered("lash_min", "lash_max", FileMistake.LP631, MEND),
            new Ordered(
                    "lash_max",
                    "lash_tolerated",
                    FileMistake.LP631,
                    "what is put up with lies at or beyond what is aimed for"),
            new Ordered("idle_opening_min", "idle_opening_max", FileMistake.LP631, MEND),
            new Ordered(
                    "idle_opening_max",
                    "carb_bore",
                    FileMistake.LP632,
                    "the barrel cannot open wider than its own bore"));

    private CardSanity() {}

    static void check(Stated card, Map<String, Stated> variants) {
        ORDERED.forEach(pair -> check(pair, card, card, ""));
        variants.forEach((name, variant) -> {
            Stated whole = together(card, variant);
            ORDERED.stream()
                    .filter(pair -> variant.facts().containsKey(pair.lower())
                            || variant.facts().containsKey(pair.upper()))
                    .forEach(pair -> check(pair, variant, whole, " in the variant " + Shown.quoted(name)));
        });
        checkRod(card);
        checkDisplacement(card);
    }

    /** A variant states what differs; for the rest the card's word holds. */
    private static Stated together(Stated card, Stated variant) {
        Map<String, Fact> facts = new HashMap<>(card.facts());
        facts.putAll(variant.facts());
        return new Stated(facts, variant.spots());
    }

    private static void check(Ordered pair, Stated complained, Stated whole, String where) {
        Optional<Quantity> lower = amount(whole, pair.lower());
        Optional<Quantity> upper = amount(whole, pair.upper());
        if (lower.isEmpty()
                || upper.isEmpty()
                || lower.get().base() <= upper.get().base()) {
            return;
        }
        String at = complained.spots().containsKey(pair.lower()) ? pair.lower() : pair.upper();
        complain(
                complained,
                at,
                pair.mistake(),
                pair.lower() + " (" + lower.get() + ") is above " + pair.upper() + " (" + upper.get() + ")" + where,
                pair.help());
    }

    private static void checkRod(Stated card) {
        Optional<Quantity> rod = amount(card, "rod_length");
        Optional<Quantity> stroke = amount(card, "stroke");
        if (rod.isPresent()
                && stroke.isPresent()
                && rod.get().base() <= stroke.get().base() / 2) {
            complain(
                    card,
                    "rod_length",
                    FileMistake.LP632,
                    "a rod of " + rod.get() + " is no longer than half the stroke of " + stroke.get()
                            + ", and no crank turns with it",
                    "give the length from centre to centre, and the whole stroke");
        }
    }

    private static void checkDisplacement(Stated card) {
        Optional<Quantity> bore = amount(card, "bore");
        Optional<Quantity> stroke = amount(card, "stroke");
        Optional<Quantity> displacement = amount(card, "displacement");
        if (bore.isEmpty() || stroke.isEmpty() || displacement.isEmpty()) {
            return;
        }
        double swept = Math.PI
                / 4
                * bore.get().base()
                * bore.get().base()
                * stroke.get().base();
        double stated = displacement.get().base();
        if (Math.abs(swept - stated) > ROUNDED_DISPLACEMENT * Math.max(swept, stated)) {
            Unit unit = displacement.get().unit();
            complain(
                    card,
                    "displacement",
                    FileMistake.LP681,
                    "bore and stroke give " + Display.number(unit.fromBase(swept), 3) + " " + unit.symbol() + ", not "
                            + displacement.get(),
                    "check all three; printed classes are sometimes larger than the engine");
        }
    }

    private static void complain(Stated stated, String fact, FileMistake mistake, String message, String help) {
        Spot spot = stated.spots().get(fact);
        if (spot != null) {
            spot.complain(mistake, message, help);
        }
    }

    private static Optional<Quantity> amount(Stated stated, String name) {
        return Optional.ofNullable(stated.facts().get(name))
                .filter(Fact.Amount.class::isInstance)
                .map(fact -> ((Fact.Amount) fact).amount());
    }
}

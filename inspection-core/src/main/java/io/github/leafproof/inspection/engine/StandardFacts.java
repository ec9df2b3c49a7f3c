package io.github.leafproof.inspection.engine;

import static io.github.leafproof.inspection.quantity.Dimension.ANGLE;
import static io.github.leafproof.inspection.quantity.Dimension.LENGTH;
import static io.github.leafproof.inspection.quantity.Dimension.LENGTH_PER_TURN;
import static io.github.leafproof.inspection.quantity.Dimension.RATIO;
import static io.github.leafproof.inspection.quantity.Dimension.VOLUME;

import io.github.leafproof.inspection.engine.CardFact.Keeper;
import io.github.leafproof.inspection.quantity.Dimension;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The table of facts a card or a sheet can state: a new one is one line here, and a line in the format's page. */
final class StandardFacts {
    private static final FactKind TEXT = new FactKind.Text();

    /** What parts of the valve train are made of; their growth with heat decides what a warm lash is worth. */
    private static final FactKind MATERIAL =
            oneOf("aluminium", "steel", "cast iron", "austenitic steel", "brass", "bronze", "titanium");

    static final List<CardFact> ALL = List.of(
            card("model", TEXT, "the model as its maker names it"),
            card("maker", TEXT, "who made it"),
            card("years", TEXT, "when it was made"),
            card("displacement", VOLUME, "swept volume as the maker states it"),
            card("bore", LENGTH, "diameter of the cylinder"),
            card("stroke", LENGTH, "travel of the piston from one dead centre to the other"),
            card("rod_length", LENGTH, "connecting rod, from centre to centre"),
            card("compression_ratio", RATIO, "largest volume above the piston divided by the smallest"),
            card("lash_min", LENGTH, "smallest valve lash aimed for, on a cold engine"),
            card("lash_max", LENGTH, "largest valve lash aimed for, on a cold engine"),
            card(
                    "lash_tolerated",
                    LENGTH,
                    "lash beyond the largest aimed for that is put up with if the engine runs well"),
            card(
                    "lash_limit_kind",
                    oneOf("window", "limit leaf"),
                    "whether the lash has two limits, or is set by other means and one leaf only must not enter"),
            card("adjuster_pitch", LENGTH_PER_TURN, "what the lash adjuster advances in one turn"),
            card(
                    "rocker_ratio",
                    RATIO,
                    "arm on the valve's side of the rocker divided by the arm on the push rod's side"),
            card("rocker_side_of_adjuster", oneOf("push rod", "valve"), "what the adjuster bears on"),
            card("materials.cylinder", MATERIAL, "what the cylinder is made of"),
            card("materials.push_rod", MATERIAL, "what the push rods are made of"),
            card("materials.valve", MATERIAL, "what the valves are made of"),
            card(
                    "throttle_arm",
                    oneOf("metal", "plastic"),
                    "what the throttle arm is made of; the needle's datum follows it"),
            card("throttle_stop", new FactKind.YesNo(), "whether there is a screw that stops the throttle barrel"),
            card("choke", new FactKind.YesNo(), "whether there is a choke"),
            card("carb_bore", LENGTH, "diameter of the passage through the throttle barrel"),
            card("low_needle_pitch", LENGTH_PER_TURN, "what the low-speed needle advances in one turn"),
            card("high_needle_start", ANGLE, "how far the high-speed needle is opened from its seat for a first start"),
            card("idle_opening_min", LENGTH, "smallest opening of the throttle barrel at idle"),
            card("idle_opening_max", LENGTH, "largest opening of the throttle barrel at idle"),
            card("box", new FactKind.TextList(), "what belongs into the box"),
            sheet("serial", "the number on this engine"),
            sheet("condition", "as it came in: new in box, old stock, used"),
            sheet("owner", "whose it is, or the job it belongs to"),
            sheet("variant", "which of the card's variants it is, or unknown"));

    static final Map<String, CardFact> BY_NAME =
            ALL.stream().collect(Collectors.toUnmodifiableMap(CardFact::name, Function.identity()));

    private StandardFacts() {}

    private static CardFact card(String name, FactKind kind, String meaning) {
        return new CardFact(name, kind, Keeper.CARD, meaning);
    }

    private static CardFact card(String name, Dimension dimension, String meaning) {
        return card(name, new FactKind.Measure(dimension), meaning);
    }

    private static CardFact sheet(String name, String meaning) {
        return new CardFact(name, TEXT, Keeper.SHEET, meaning);
    }

    private static FactKind oneOf(String... choices) {
        return new FactKind.OneOf(List.of(choices));
    }
}

package io.github.leafproof.examples.speed;

import java.util.function.DoubleFunction;

/** Everybody in the comparison. */
public enum Contestants {
    BY_HAND("hand-written Java", ByHand::new),
    LEAFPROOF("Leafproof", ByLeafproof::new),
    LEAFPROOF_INTERPRETED("Leafproof, interpreted", ByLeafproofInterpreted::new),
    JANINO("Janino", ByJanino::new),
    CEL("CEL (dev.cel)", ByCel::new),
    MVEL("MVEL", ByMvel::new),
    JEXL("Commons JEXL", ByJexl::new),
    DROOLS("Drools", ByDrools::new);

    private final String title;

    @SuppressWarnings("ImmutableEnumChecker") // A constructor, and so always the same.
    private final DoubleFunction<Contestant<?>> maker;

    Contestants(String title, DoubleFunction<Contestant<?>> maker) {
        this.title = title;
        this.maker = maker;
    }

    public String title() {
        return title;
    }

    /** With the rules made ready, for this most lash in millimetres. */
    public Contestant<?> under(double lashMax) {
        return maker.apply(lashMax);
    }
}

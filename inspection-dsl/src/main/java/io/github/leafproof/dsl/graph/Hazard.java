package io.github.leafproof.dsl.graph;

import java.util.Locale;
import java.util.Optional;

/**
 * A danger to people, and the caution shown before a step that carries it.
 *
 * @param name as procedures write it: {@code fuel}
 * @param caution one or two short sentences
 */
public record Hazard(String name, String caution) {

    /** The usual hazards of the bench; every procedure knows them. */
    public enum Usual {
        FUEL("Model fuel is poison by mouth, skin and breath; a little methanol can blind. "
                + "Wear gloves, let air through, never suck or blow a line that has held fuel."),
        FIRE("Methanol burns with a flame you hardly see by day. No spark, flame or lit plug "
                + "near it; extinguisher within reach, spills wiped and lids shut before you go on."),
        PROPELLER("Treat the propeller as able to start at any moment. Hands, sleeves, leads and "
                + "other people out of its plane; use a stick or starter, never a finger, once fuel "
                + "is near."),
        HOT("Engine, exhaust and plug burn the skin for many minutes after a run. Let them " + "cool, or wear gloves."),
        PRESSURE("Air or liquid under pressure can turn the engine and throw parts. Lock the "
                + "shaft, wear an eye shield, let the pressure off before you undo anything."),
        EYES("Wear an eye shield: fuel, springs, clips and chips fly without warning."),
        LUNGS("Vapour and exhaust harm before you smell them. Work outdoors or under "
                + "extraction, and stop at the first headache or dizziness."),
        NOISE("A running engine harms your hearing within minutes. Wear ear protection, and see "
                + "that bystanders do."),
        ELECTRIC("A glow or starter battery can fire the engine, burn you or start a fire. "
                + "Disconnect it before hands go near, and keep its leads from shorting.");

        private final String caution;

        Usual(String caution) {
            this.caution = caution;
        }

        /** The hazard with its usual caution. */
        public Hazard hazard() {
            return new Hazard(word(), caution);
        }

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The usual hazard of that name. */
        public static Optional<Hazard> named(String name) {
            for (Usual usual : values()) {
                if (usual.word().equals(name)) {
                    return Optional.of(usual.hazard());
                }
            }
            return Optional.empty();
        }
    }
}

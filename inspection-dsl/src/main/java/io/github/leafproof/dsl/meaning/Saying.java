package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.source.Span;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * One place of a procedure that can come out in several ways, and which ways these are. What a loop repeats is one place, as it
 * is written.
 *
 * @param name what stands there, as written: {@code lash_within[valve]}, {@code engine.throttle_arm: metal}
 * @param span where it stands
 * @param ways the ways in which it can come out, in their order
 * @param never the ways in which such a place may come out elsewhere, and this one cannot, whatever is entered
 * @param restsOn the observations and facts that it reads, by way of values or at once; of a loop, those of the first round
 */
public record Saying(Kind kind, String name, Span span, Set<Way> ways, Set<Way> never, List<String> restsOn) {

    /** What kinds of places there are. */
    public enum Kind {
        CHECK("check", "outcomes of checks"),
        CONDITION("condition", "sides of conditions"),
        OPTION("option", "options compared with"),
        ARM("arm", "arms of choices"),
        GATE("gate", "gates"),
        RELEASE("release", "lines of the release"),
        ADVICE("advice", "pieces of advice");

        private final String word;
        private final String several;

        Kind(String word, String several) {
            this.word = word;
            this.several = several;
        }

        /** What such a place is called. */
        public String word() {
            return word;
        }

        /** What the ways of such places are called together. */
        public String several() {
            return several;
        }

        Set<Way> conceivable() {
            return switch (this) {
                case CHECK -> EnumSet.range(Way.PASSES, Way.NOT_APPLICABLE);
                case CONDITION -> EnumSet.of(Way.FAILS, Way.HOLDS);
                case OPTION -> EnumSet.of(Way.HOLDS);
                case ARM -> EnumSet.of(Way.CHOSEN);
                case GATE -> EnumSet.of(Way.LETS_THROUGH, Way.HOLDS_BACK);
                case RELEASE -> EnumSet.of(Way.DECIDES);
                case ADVICE -> EnumSet.of(Way.GIVEN);
            };
        }
    }

    public Saying {
        ways = inOrder(ways);
        never = inOrder(never);
        restsOn = List.copyOf(restsOn);
    }

    /** Told from its place alone: many are looked up while rehearsals are counted. */
    @Override
    public int hashCode() {
        return 31 * span.start() + name.hashCode();
    }

    private static Set<Way> inOrder(Set<Way> ways) {
        Set<Way> ordered = EnumSet.noneOf(Way.class);
        ordered.addAll(ways);
        return Collections.unmodifiableSet(ordered);
    }
}

package io.github.leafproof.dsl.meaning;

import io.github.leafproof.inspection.verdict.Outcome;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What conditions joined by and, or by or, can come out as together: {@code Joined}, for all of their fates at once. */
final class Fates {

    private static final List<Outcome> WORST_FIRST =
            List.of(Outcome.FAILS, Outcome.CONTRADICTED, Outcome.OPEN, Outcome.TOLERATED, Outcome.PASSES);

    private final boolean and;
    private Set<Fate> joint = EnumSet.noneOf(Fate.class);
    private final Set<Fate> alone = EnumSet.noneOf(Fate.class);
    private boolean nothingYet = true;

    Fates(boolean and) {
        this.and = and;
    }

    /** One condition more, which may be left out and then has no say. */
    void join(Set<Fate> part, boolean leftOut) {
        Set<Fate> next = EnumSet.noneOf(Fate.class);
        for (Fate one : joint) {
            part.forEach(other -> next.add(telling(one, other)));
        }
        if (nothingYet) {
            next.addAll(part);
        }
        if (leftOut) {
            next.addAll(joint);
        } else {
            nothingYet = false;
        }
        joint = next;
        part.stream()
                .filter(fate -> fate.outcome() == (and ? Outcome.FAILS : Outcome.PASSES))
                .forEach(alone::add);
    }

    private Fate telling(Fate one, Fate other) {
        boolean firstIsWorse = WORST_FIRST.indexOf(one.outcome()) <= WORST_FIRST.indexOf(other.outcome());
        return firstIsWorse == and ? one : other;
    }

    /** One that decides alone decides even where the others are missing. */
    Set<Fate> joint() {
        Set<Fate> all = EnumSet.copyOf(alone);
        all.addAll(joint);
        return all;
    }

    /** The opposite; a side is lost with it. */
    static Set<Fate> not(Set<Fate> fates) {
        Set<Fate> opposite = EnumSet.noneOf(Fate.class);
        for (Fate fate : fates) {
            opposite.add(fate.holds() ? Fate.FAILS : fate.fails() ? Fate.PASSES : fate);
        }
        return opposite;
    }
}

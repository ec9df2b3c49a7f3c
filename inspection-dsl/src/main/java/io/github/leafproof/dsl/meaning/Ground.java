package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Applied;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.Node;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What a procedure can know of each of its slots, before any condition is taken to hold. */
final class Ground {

    /** More is not thought through: a procedure of a bench takes a hundredth of it. What is left counts as possible. */
    private static final long STEPS = 1_000_000;

    /** A large procedure may take more than a small one, yet no more of it for each of its parts. */
    private static final long STEPS_FOR_EACH = 40;

    /** What a value rests on. */
    enum Trait {
        /** Something that need not be entered; a condition on it then has no say. */
        LEFT_OUT,
        /** Something measured, which nobody knows to the last digit. */
        MEASURED,
        /** Something read from a gauge of the tray. */
        GAUGED,
        /** A gap. */
        FELT,
        /** Something from outside of the procedure. */
        ASKED
    }

    /** What is known of a slot, by its number. */
    private final List<@Nullable Known> slots;

    private final IdentityHashMap<Formula, Set<Trait>> bodies = new IdentityHashMap<>();
    private final long mostSteps;
    private long steps;

    /** @param derived what computes it, where something does */
    private record Known(Possible possible, Set<Trait> traits, Node.@Nullable Derived derived) {}

    /** @param checks how many checks there are to think through */
    Ground(List<Node.Fact> facts, List<Node.Observation> observed, List<Node.Derived> inOrder, int checks) {
        mostSteps = STEPS + STEPS_FOR_EACH * (observed.size() + inOrder.size() + checks);
        slots = new ArrayList<>(Collections.nCopies(facts.size() + observed.size() + inOrder.size(), null));
        for (Node.Fact fact : facts) {
            slots.set(fact.slot(), new Known(Possible.of(fact.type()), traits(fact.type(), false), null));
        }
        for (Node.Observation each : observed) {
            Set<Trait> own = traits(each.type(), each.optional() || each.when() != null);
            if (each.gauge() != null && own.contains(Trait.MEASURED)) {
                own.add(Trait.GAUGED);
            }
            slots.set(each.slot(), new Known(Possible.of(each.type()), own, null));
        }
        Possibilities possibilities = new Possibilities(this);
        for (Node.Derived each : inOrder) {
            Possible possible = possibilities.of(each.formula());
            slots.set(each.slot(), new Known(possible, traits(each.formula()), each));
        }
    }

    private @Nullable Known known(int slot) {
        return slot < slots.size() ? slots.get(slot) : null;
    }

    private static Set<Trait> traits(Type type, boolean leftOut) {
        Set<Trait> traits = EnumSet.of(Trait.ASKED);
        if (leftOut) {
            traits.add(Trait.LEFT_OUT);
        }
        if (type instanceof Type.Gap) {
            traits.add(Trait.FELT);
        }
        if (type instanceof Type.Series
                || (!(type instanceof Type.Count) && type.inArithmetic().isPresent())) {
            traits.add(Trait.MEASURED);
        }
        return traits;
    }

    Possible of(int slot) {
        Known known = known(slot);
        return known == null ? new Possible.Anything() : known.possible;
    }

    Optional<Node.Derived> derived(int slot) {
        Known known = known(slot);
        return Optional.ofNullable(known == null ? null : known.derived);
    }

    /** What the value of a formula rests on, through derived values. */
    Set<Trait> traits(Formula formula) {
        Set<Trait> all = EnumSet.noneOf(Trait.class);
        add(formula, all);
        return all;
    }

    private void add(Formula formula, Set<Trait> all) {
        if (formula instanceof Slot slot) {
            Known known = known(slot.number());
            all.addAll(known == null ? EnumSet.allOf(Trait.class) : known.traits);
        } else if (formula instanceof Applied applied) {
            addEach(applied.arguments(), all);
            Set<Trait> known = bodies.get(applied.body());
            if (known == null) {
                known = EnumSet.noneOf(Trait.class);
                addEach(applied.body().parts(), known);
                bodies.put(applied.body(), known);
            }
            all.addAll(known);
        } else {
            addEach(formula.parts(), all);
        }
    }

    private void addEach(List<Formula> parts, Set<Trait> all) {
        for (Formula part : parts) {
            add(part, all);
        }
    }

    boolean has(Formula formula, Trait trait) {
        return traits(formula).contains(trait);
    }

    /** Whether something was left that nobody thought through. */
    boolean hasGivenUp() {
        return steps > mostSteps;
    }

    /** Counts a step; says whether so many were made that nothing more should be thought through. */
    boolean isTired() {
        return ++steps > mostSteps;
    }
}

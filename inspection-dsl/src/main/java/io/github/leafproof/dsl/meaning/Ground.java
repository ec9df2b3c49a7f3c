package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Applied;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.Node;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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

    private final Map<Integer, Possible> possible = new HashMap<>();
    private final Map<Integer, Set<Trait>> traits = new HashMap<>();
    private final Map<Integer, Node.Derived> derived = new HashMap<>();
    private final IdentityHashMap<Formula, Set<Trait>> bodies = new IdentityHashMap<>();
    private final long mostSteps;
    private long steps;

    /** @param checks how many checks there are to think through */
    Ground(List<Node.Fact> facts, List<Node.Observation> observed, List<Node.Derived> inOrder, int checks) {
        mostSteps = STEPS + STEPS_FOR_EACH * (observed.size() + inOrder.size() + checks);
        facts.forEach(fact -> {
            possible.put(fact.slot(), Possible.of(fact.type()));
            traits.put(fact.slot(), traits(fact.type(), false));
        });
        observed.forEach(each -> {
            possible.put(each.slot(), Possible.of(each.type()));
            Set<Trait> own = traits(each.type(), each.optional() || each.when() != null);
            if (each.gauge() != null && own.contains(Trait.MEASURED)) {
                own.add(Trait.GAUGED);
            }
            traits.put(each.slot(), own);
        });
        Possibilities possibilities = new Possibilities(this);
        for (Node.Derived each : inOrder) {
            derived.put(each.slot(), each);
            traits.put(each.slot(), traits(each.formula()));
            possible.put(each.slot(), possibilities.of(each.formula()));
        }
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
        return possible.getOrDefault(slot, new Possible.Anything());
    }

    Optional<Node.Derived> derived(int slot) {
        return Optional.ofNullable(derived.get(slot));
    }

    /** What the value of a formula rests on, through derived values. */
    Set<Trait> traits(Formula formula) {
        Set<Trait> all = EnumSet.noneOf(Trait.class);
        add(formula, all);
        return all;
    }

    private void add(Formula formula, Set<Trait> all) {
        if (formula instanceof Slot slot) {
            Set<Trait> known = traits.get(slot.number());
            all.addAll(known == null ? EnumSet.allOf(Trait.class) : known);
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

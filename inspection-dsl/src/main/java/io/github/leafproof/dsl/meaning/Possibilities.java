package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Applied;
import io.github.leafproof.dsl.formula.Argument;
import io.github.leafproof.dsl.formula.Chosen;
import io.github.leafproof.dsl.formula.Computed;
import io.github.leafproof.dsl.formula.Constant;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.IfElse;
import io.github.leafproof.dsl.formula.InUnit;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.Matches;
import io.github.leafproof.dsl.formula.Not;
import io.github.leafproof.dsl.formula.Range;
import io.github.leafproof.dsl.formula.SameNumber;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Node;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the values of formulas can be, whatever is entered: ranges of numbers, options, and what a condition can come out
 * as. Abstract interpretation of the graph, and sound: nothing that can happen is ever called impossible, while some of
 * what cannot happen is called possible; the last bits of a calculation apart. Where a value is missing nothing is claimed; these are the values if there are
 * any.
 */
final class Possibilities {

    /** Deeper nothing is thought through; formulas within each other go no deeper either. */
    private static final int DEEPEST = 48;

    private final Ground ground;
    private final Map<Integer, Possible> narrowed;
    private final List<Possible> arguments;
    private final Map<Integer, Possible> lookedAt;
    private int depth;

    Possibilities(Ground ground) {
        this(ground, Map.of(), List.of(), new HashMap<>());
    }

    private Possibilities(
            Ground ground, Map<Integer, Possible> narrowed, List<Possible> arguments, Map<Integer, Possible> lookedAt) {
        this.ground = ground;
        this.narrowed = narrowed;
        this.arguments = arguments;
        this.lookedAt = lookedAt;
    }

    Ground ground() {
        return ground;
    }

    /** The same, where a slot has one of these values. */
    Possibilities with(int slot, Possible values) {
        Map<Integer, Possible> more = new HashMap<>(narrowed);
        more.put(slot, values);
        return new Possibilities(ground, more, arguments, new HashMap<>());
    }

    /** The same, where a condition holds; empty where it never does. */
    Optional<Possibilities> where(Formula condition) {
        return new Narrowing(this).where(condition);
    }

    /** The same, where a condition fails; empty where it never does. */
    Optional<Possibilities> whereNot(Formula condition) {
        return new Narrowing(this).whereNot(condition);
    }

    /** What a condition can come out as. */
    Set<Fate> fates(Formula condition) {
        return of(condition).fates();
    }

    boolean canHold(Formula condition) {
        return Fate.canHold(fates(condition));
    }

    boolean canFail(Formula condition) {
        return Fate.canFail(fates(condition));
    }

    /** Whether a condition comes out as nothing but fulfilled, where it is known at all. */
    boolean surelyHolds(Formula condition) {
        return Fate.surelyHolds(fates(condition));
    }

    /** In which range a number lies. */
    Range range(Formula number) {
        return of(number).number().range();
    }

    Possible of(Formula formula) {
        if (ground.isTired() || depth >= DEEPEST) {
            return new Possible.Anything();
        }
        depth++;
        Possible possible = understood(formula);
        depth--;
        return possible;
    }

    private Possible understood(Formula formula) {
        if (formula instanceof Slot slot) {
            return slot(slot.number());
        }
        if (formula instanceof Constant constant) {
            return Possible.of(constant.value());
        }
        if (formula instanceof Argument argument) {
            return argument.number() < arguments.size() ? arguments.get(argument.number()) : new Possible.Anything();
        }
        if (formula instanceof Applied applied) {
            return inside(applied).of(applied.body());
        }
        if (formula instanceof InUnit inUnit) {
            return of(inUnit.part()).number();
        }
        if (formula instanceof Computed computed) {
            return computed(computed);
        }
        if (formula instanceof IfElse either) {
            return either(either);
        }
        if (formula instanceof Chosen chosen) {
            return chosen(chosen);
        }
        return condition(formula);
    }

    /** The same within a function, applied to its arguments. */
    Possibilities inside(Applied applied) {
        List<Possible> given = applied.arguments().stream().map(this::of).toList();
        return new Possibilities(ground, narrowed, given, lookedAt).at(depth);
    }

    private Possible condition(Formula formula) {
        if (formula instanceof Not not) {
            return new Possible.Truth(Fates.not(fates(not.part())));
        }
        if (formula instanceof Joined joined) {
            return joined(joined);
        }
        if (formula instanceof LimitsHeld held) {
            return new Possible.Truth(new Held(this, held).fates());
        }
        if (formula instanceof SameNumber same) {
            return new Possible.Truth(same(same));
        }
        return formula instanceof Matches matches ? new Possible.Truth(matches(matches)) : new Possible.Anything();
    }

    /** A derived value is looked at anew where something is narrowed, since it may rest on that. */
    private Possible slot(int slot) {
        Possible known = narrowed.get(slot);
        if (known == null) {
            known = lookedAt.get(slot);
        }
        Optional<Node.Derived> derived = ground.derived(slot);
        if (known != null || narrowed.isEmpty() || derived.isEmpty() || depth >= DEEPEST / 4) {
            return known != null ? known : ground.of(slot);
        }
        Possible anew = of(derived.get().formula());
        lookedAt.put(slot, anew);
        return anew;
    }

    private Possible computed(Computed computed) {
        // A plain loop: streams within streams would take far more of the stack where formulas nest.
        List<Range> ranges = new ArrayList<>(computed.parts().size());
        boolean exact = true;
        for (Formula part : computed.parts()) {
            Possible.Numbers numbers = of(part).number();
            ranges.add(numbers.range());
            exact &= numbers.exact();
        }
        return new Possible.Numbers(computed.rule().range(ranges), exact);
    }

    private Possible either(IfElse either) {
        Optional<Possible> then =
                where(either.condition()).map(inside -> inside.at(depth).of(either.then()));
        Optional<Possible> otherwise =
                whereNot(either.condition()).map(inside -> inside.at(depth).of(either.otherwise()));
        return then.isPresent() && otherwise.isPresent()
                ? then.get().or(otherwise.get())
                : then.or(() -> otherwise).orElseGet(Possible.Anything::new);
    }

    private Possible chosen(Chosen chosen) {
        if (!(of(chosen.subject()) instanceof Possible.Among among)) {
            return chosen.arms().stream().map(this::of).reduce(Possible::or).orElseGet(Possible.Anything::new);
        }
        Possible all = null;
        for (Value value : among.values()) {
            Possibilities inside = chosen.subject() instanceof Slot slot
                    ? with(slot.number(), new Possible.Among(Set.of(value))).at(depth)
                    : this;
            Possible arm = value instanceof Value.Pick pick
                    ? inside.of(chosen.arms().get(pick.option()))
                    : new Possible.Anything();
            all = all == null ? arm : all.or(arm);
        }
        return all == null ? new Possible.Anything() : all;
    }

    private Possibilities at(int sameDepth) {
        depth = sameDepth;
        return this;
    }

    private Possible joined(Joined joined) {
        Fates all = new Fates(joined.and());
        for (Formula part : joined.parts()) {
            all.join(fates(part), ground.has(part, Ground.Trait.LEFT_OUT));
        }
        Set<Fate> joint = all.joint();
        boolean together = joined.and() ? Fate.canHold(joint) : Fate.canFail(joint);
        if (together && new Narrowing(this).together(joined).isEmpty()) {
            joint.removeIf(fate -> joined.and() ? fate.holds() : fate.fails());
        }
        return new Possible.Truth(joint);
    }

    private Set<Fate> same(SameNumber same) {
        Possible.Numbers one = of(same.subject()).number();
        Possible.Numbers two = of(same.other()).number();
        if (!one.exact() || !two.exact()) {
            // What is measured may turn out to have been stated, and the other way round.
            return EnumSet.of(Fate.PASSES, Fate.FAILS, Fate.OPEN);
        }
        Range apart = one.range().plus(two.range().negated());
        boolean canBe = apart.holds(0) || Held.isNear(one.range(), two.range());
        boolean canDiffer = apart.low() != 0 || apart.high() != 0;
        Set<Fate> fates = EnumSet.noneOf(Fate.class);
        if (canBe) {
            fates.addAll(Fate.certain(same.same()));
        }
        if (canDiffer) {
            fates.addAll(Fate.certain(!same.same()));
        }
        return fates;
    }

    private Set<Fate> matches(Matches matches) {
        if (!(of(matches.subject()) instanceof Possible.Among one
                && of(matches.other()) instanceof Possible.Among two)) {
            return EnumSet.of(Fate.PASSES, Fate.FAILS);
        }
        Set<Fate> fates = EnumSet.noneOf(Fate.class);
        for (Value value : one.values()) {
            for (Value other : two.values()) {
                fates.addAll(Fate.certain(matches.holds().test(value, other)));
                if (fates.size() == 2 || ground.isTired()) {
                    return EnumSet.of(Fate.PASSES, Fate.FAILS);
                }
            }
        }
        return fates;
    }
}

package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Applied;
import io.github.leafproof.dsl.formula.Chosen;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.IfElse;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.formula.Not;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.meaning.Saying.Kind;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Expression;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What can come of the conditions and choices within a formula: it is walked as it is judged, in one arm as in the other, with
 * what is known in each.
 */
final class Sides {

    private final Sites sites;
    private final SayingDrafts drafts;

    Sides(Sites sites, SayingDrafts drafts) {
        this.sites = sites;
        this.drafts = drafts;
    }

    /** A condition that something hangs on as a whole, and all that it is made of. */
    void decision(Formula condition, Possibilities so) {
        Formula upright = upright(condition);
        if (sites.conditions.containsKey(upright)) {
            ask(upright, so);
        }
        within(upright, so);
    }

    /** The same for one that can only hold, since nothing is judged where it does not: that an engine is of the right kind. */
    void granted(Formula condition, Possibilities so) {
        Formula upright = upright(condition);
        Sites.Condition written = sites.conditions.get(upright);
        if (written != null) {
            drafts.add(
                    SayingDrafts.at(Kind.CONDITION, written.span()),
                    EnumSet.of(upright == condition ? Way.HOLDS : Way.FAILS),
                    upright);
        }
        if (upright == condition && upright instanceof Joined joined && joined.and()) {
            joined.parts().forEach(part -> granted(part, so));
        } else {
            within(upright, so);
        }
    }

    /** A condition as it stands without the {@code not} before it: the sides of one are those of the other. */
    private static Formula upright(Formula condition) {
        Formula upright = condition;
        while (upright instanceof Not not) {
            upright = not.part();
        }
        return upright;
    }

    private void ask(Formula condition, Possibilities so) {
        Sites.Condition written = sites.conditions.get(condition);
        if (written != null) {
            Set<Way> ways = EnumSet.noneOf(Way.class);
            if (so.canHold(condition)) {
                ways.add(Way.HOLDS);
            }
            if (so.canFail(condition)) {
                ways.add(Way.FAILS);
            }
            drafts.add(SayingDrafts.at(Kind.CONDITION, written.span()), ways, condition);
        }
    }

    /** All that a formula is made of, itself apart. */
    void within(Formula formula, Possibilities so) {
        if (formula instanceof IfElse either) {
            decision(either.condition(), so);
            so.where(either.condition()).ifPresent(then -> walk(either.then(), then));
            so.whereNot(either.condition()).ifPresent(otherwise -> walk(either.otherwise(), otherwise));
        } else if (formula instanceof Chosen chosen) {
            choice(chosen, so);
        } else if (formula instanceof Applied applied) {
            applied.arguments().forEach(argument -> walk(argument, so));
            walk(applied.body(), so.inside(applied));
        } else {
            formula.parts().forEach(part -> walk(part, so));
        }
    }

    private void walk(Formula formula, Possibilities so) {
        Sites.Condition condition = sites.conditions.get(formula);
        if (condition != null && !condition.ofOthers()) {
            ask(formula, so);
        }
        Span option = sites.options.get(formula);
        if (option != null && so.canHold(formula)) {
            drafts.add(SayingDrafts.at(Kind.OPTION, option), EnumSet.of(Way.HOLDS), formula);
        }
        within(formula, so);
    }

    private void choice(Chosen chosen, Possibilities so) {
        walk(chosen.subject(), so);
        Sites.Choice site = sites.chosen.get(chosen);
        IdentityHashMap<Formula, Set<Value>> valuesOf = new IdentityHashMap<>();
        for (Value.Pick pick : picks(chosen, so)) {
            valuesOf.computeIfAbsent(chosen.arms().get(pick.option()), arm -> new LinkedHashSet<>())
                    .add(pick);
            if (site != null) {
                drafts.add(arm(site, pick.option()), EnumSet.of(Way.CHOSEN), chosen.subject());
            }
        }
        for (Formula arm : chosen.arms()) {
            Set<Value> values = valuesOf.remove(arm);
            if (values != null) {
                walk(arm, inArm(chosen.subject(), values, so));
            }
        }
    }

    private static Possibilities inArm(Formula subject, Set<Value> values, Possibilities so) {
        return subject instanceof Slot slot && so.of(subject) instanceof Possible.Among
                ? so.with(slot.number(), new Possible.Among(values))
                : so;
    }

    private static List<Value.Pick> picks(Chosen chosen, Possibilities so) {
        if (so.of(chosen.subject()) instanceof Possible.Among among) {
            return among.values().stream()
                    .filter(Value.Pick.class::isInstance)
                    .map(Value.Pick.class::cast)
                    .toList();
        }
        return IntStream.range(0, chosen.arms().size())
                .mapToObj(option -> new Value.Pick(option, ""))
                .toList();
    }

    /** The arm that stands for an option. */
    static SayingDrafts.Key arm(Sites.Choice site, int option) {
        Expression.Choose choose = site.choose();
        int number = site.armOf().get(option);
        String subject = SayingDrafts.written(choose.subject().span());
        if (number == choose.arms().size()) {
            Span otherwise = Objects.requireNonNull(choose.otherwise()).span();
            return new SayingDrafts.Key(Kind.ARM, otherwise, subject + ": otherwise");
        }
        List<Expression.Option> options = choose.arms().get(number).options();
        Span all = options.get(0).span().to(options.get(options.size() - 1).span());
        return new SayingDrafts.Key(Kind.ARM, all, subject + ": " + SayingDrafts.written(all));
    }
}

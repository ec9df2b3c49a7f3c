package io.github.leafproof.dsl.coverage;

import io.github.leafproof.dsl.formula.Applied;
import io.github.leafproof.dsl.formula.Chosen;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.IfElse;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.dsl.meaning.Saying;
import io.github.leafproof.dsl.meaning.Sayings;
import io.github.leafproof.dsl.meaning.Way;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import io.github.leafproof.inspection.verdict.Side;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What one judgement shows of what its procedure can say. Conditions are evaluated once more on the values that were judged;
 * judging itself is not watched, and takes no longer for it.
 *
 * <p>What counts is what was judged: a requirement behind a shut gate says nothing, and neither does the arm that was not chosen.
 */
final class Watching {

    private final Sayings sayings;
    private final Judgement judgement;
    private final Map<Saying, Set<Way>> shown = new HashMap<>();

    private Watching(Sayings sayings, Judgement judgement) {
        this.sayings = sayings;
        this.judgement = judgement;
    }

    static Map<Saying, Set<Way>> of(Sayings sayings, Judgement judgement) {
        Watching watching = new Watching(sayings, judgement);
        watching.watch();
        return watching.shown;
    }

    private void watch() {
        Frame frame = judgement.frame();
        judgement.graph().applies().ifPresent(applies -> walk(applies, frame));
        judgement.graph().derived().forEach(derived -> walk(derived.formula(), frame));
        for (Node.Observation observation : judgement.graph().observations()) {
            walk(observation.ask(), frame);
            if (observation.when() != null) {
                walk(observation.when(), frame);
            }
        }
        judgement.verdicts().forEach(this::verdict);
        release();
    }

    private void show(Saying saying, Way way) {
        shown.computeIfAbsent(saying, same -> EnumSet.noneOf(Way.class)).add(way);
    }

    private void verdict(Verdict verdict) {
        Node.Check check = verdict.check();
        Frame frame = judgement.frame(check);
        Saying saying = sayings.of(check);
        show(saying, way(saying, verdict));
        if (check.when() != null) {
            walk(check.when(), frame);
        }
        if (check.when() == null || holds(check.when().value(frame))) {
            for (Sayings.Gated gated : sayings.gates(check)) {
                boolean shut = verdict.blockedBy().contains(gated.gate());
                show(gated.place(), shut ? Way.HOLDS_BACK : Way.LETS_THROUGH);
            }
            if (verdict.outcome() != Outcome.BLOCKED) {
                walk(check.requirement(), frame);
            }
        }
        List<Node.Advice> advice = check.advice();
        for (int number = 0; number < advice.size(); number++) {
            if (advice.get(number).occasion().is(verdict.outcome(), verdict.side())) {
                show(sayings.advice(check, number), Way.GIVEN);
                walk(advice.get(number).text(), frame);
            }
        }
    }

    /** A failure is told by its side where the limits have two; one that lies on neither shows neither. */
    private static Way way(Saying saying, Verdict verdict) {
        if (verdict.outcome() == Outcome.FAILS && !saying.ways().contains(Way.FAILS)) {
            return verdict.side() == Side.LOW
                    ? Way.FAILS_LOW
                    : verdict.side() == Side.HIGH ? Way.FAILS_HIGH : Way.FAILS;
        }
        return Way.valueOf(verdict.outcome().name());
    }

    private static boolean holds(Value value) {
        return value instanceof Value.Judged judged && judged.holds();
    }

    /** Notes the conditions and choices of a formula, each only where it is evaluated for a result. */
    private void walk(Formula formula, Frame frame) {
        sayings.at(formula).ifPresent(saying -> condition(saying, formula.value(frame)));
        if (formula instanceof IfElse either) {
            walk(either.condition(), frame);
            if (either.condition().value(frame) instanceof Value.Judged judged) {
                if (judged.holds()) {
                    walk(either.then(), frame);
                } else if (judged.outcome() == Outcome.FAILS) {
                    walk(either.otherwise(), frame);
                }
            }
        } else if (formula instanceof Chosen chosen) {
            walk(chosen.subject(), frame);
            if (chosen.subject().value(frame) instanceof Value.Pick pick) {
                sayings.arm(chosen, pick.option()).ifPresent(arm -> show(arm, Way.CHOSEN));
                walk(chosen.arms().get(pick.option()), frame);
            }
        } else if (formula instanceof Applied applied) {
            applied.arguments().forEach(argument -> walk(argument, frame));
            walk(applied.body(), applied.inside(frame));
        } else {
            formula.parts().forEach(part -> walk(part, frame));
        }
    }

    private void condition(Saying saying, Value value) {
        if (value instanceof Value.Judged judged) {
            if (judged.holds()) {
                show(saying, Way.HOLDS);
            } else if (judged.outcome() == Outcome.FAILS && saying.kind() == Saying.Kind.CONDITION) {
                show(saying, Way.FAILS);
            }
        }
    }

    private void release() {
        List<ReleaseRule.Clause> clauses = judgement.graph().release().clauses();
        for (int number = 0; number < clauses.size(); number++) {
            if (clauses.get(number).when().holds(judgement.verdicts())) {
                show(sayings.line(number), Way.DECIDES);
                return;
            }
        }
    }
}

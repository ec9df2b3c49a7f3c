package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.message.ReachDiagnostics;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Expression;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Whether what is decided by conditions and choices can ever be decided one way and the other. */
final class DecisionReach {

    private final Problems problems;
    private final Outline outline;
    private final Possibilities always;
    private final EveryRound rounds;
    private final Map<Span, Boolean> settled = new HashMap<>();

    DecisionReach(Problems problems, Outline outline, Possibilities always) {
        this.problems = problems;
        this.outline = outline;
        this.always = always;
        this.rounds = new EveryRound(outline.hasLoops());
    }

    void look(Sites sites, List<Node.Observation> observed) {
        observed.forEach(this::asked);
        sites.choices.forEach(this::choice);
        sites.ifs.forEach(this::decided);
        sites.sames.forEach(this::exactly);
        rounds.report(problems);
    }

    private void asked(Node.Observation observation) {
        Formula when = observation.when();
        if (when == null) {
            return;
        }
        Declaration.Observe written = Objects.requireNonNull(outline.observations.get(observation.name()))
                .declaration();
        Span span = Objects.requireNonNull(written.when()).span();
        if (always.canHold(when)) {
            rounds.doubt(Code.LP441, span);
        } else {
            rounds.claim(ReachDiagnostics.neverAsked(span, observation.name()));
        }
        if (always.surelyHolds(when)) {
            rounds.claim(ReachDiagnostics.alwaysHolds(span, observation.name() + " is asked for without it"));
        } else {
            rounds.doubt(Code.LP434, span);
        }
    }

    private void choice(Sites.Choice choice) {
        List<Expression.Arm> arms = choice.choose().arms();
        Set<Integer> chosen = new HashSet<>();
        if (always.of(choice.subject()) instanceof Possible.Among among) {
            for (Value value : among.values()) {
                if (value instanceof Value.Pick pick) {
                    chosen.add(choice.armOf().get(pick.option()));
                }
            }
        } else {
            chosen.addAll(choice.armOf());
        }
        Span subject = choice.choose().subject().span();
        for (int arm = 0; arm < arms.size(); arm++) {
            Span span = arms.get(arm).options().get(0).span();
            if (chosen.contains(arm)) {
                rounds.doubt(Code.LP438, span);
            } else {
                rounds.claim(ReachDiagnostics.armNeverChosen(span, subject));
            }
        }
        Expression otherwise = choice.choose().otherwise();
        if (otherwise != null && choice.armOf().contains(arms.size())) {
            rounds.doubt(Code.LP438, otherwise.span());
        } else if (otherwise != null) {
            rounds.claim(ReachDiagnostics.otherwiseNeverChosen(otherwise.span()));
        }
    }

    private void decided(Sites.If site) {
        boolean holds = always.canHold(site.formula());
        boolean fails = always.canFail(site.formula());
        // Yes in one round and no in another is what a loop asks for.
        Boolean first = holds == fails ? null : settled.putIfAbsent(site.condition(), holds);
        if (holds != fails && (first == null || first == holds)) {
            rounds.claim(ReachDiagnostics.settled(site.condition(), holds));
        } else {
            rounds.doubt(Code.LP442, site.condition());
        }
    }

    private void exactly(Sites.Same site) {
        boolean measured = site.formula().parts().stream()
                .anyMatch(part -> always.ground().has(part, Ground.Trait.GAUGED)
                        || always.ground().has(part, Ground.Trait.FELT));
        if (measured) {
            rounds.claim(ReachDiagnostics.measuredExactly(site.span()));
        } else {
            rounds.doubt(Code.LP443, site.span());
        }
    }
}

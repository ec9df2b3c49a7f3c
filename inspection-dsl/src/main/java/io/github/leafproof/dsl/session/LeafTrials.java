package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.formula.NextLeafAdvice;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Ties;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.inspection.clearance.NextLeaf;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which leaf or pin to offer to a gap next, by the advice of the checks that rest on it. */
final class LeafTrials {

    private final Judgement judgement;
    private final Ties ties;

    LeafTrials(Judgement judgement) {
        this.judgement = judgement;
        this.ties = judgement.graph().ties();
    }

    /** Whether another trial would settle what the trials so far leave open, or in contradiction. */
    boolean wouldSettle(Node.Observation observation) {
        if (!(judgement.evidence().value(observation) instanceof Value.Felt)) {
            return false;
        }
        List<Verdict> verdicts = ties.checks(observation).stream()
                .map(check -> judgement.verdicts().get(check.number()))
                .toList();
        return verdicts.stream().anyMatch(verdict -> verdict.outcome() == Outcome.CONTRADICTED)
                || verdicts.stream()
                        .filter(verdict -> verdict.outcome() == Outcome.OPEN)
                        .flatMap(verdict -> advice(verdict.check(), observation))
                        .anyMatch(next -> next instanceof NextLeaf.Try || next instanceof NextLeaf.Repeat);
    }

    /** What to offer; empty where no check has advice on it, or nothing more is to be tried. */
    Optional<NextLeaf> next(Node.Observation observation) {
        return ties.checks(observation).stream()
                .filter(check -> verdict(check).outcome() != Outcome.NOT_APPLICABLE)
                .flatMap(check -> advice(check, observation))
                .filter(next -> !(next instanceof NextLeaf.Settled))
                .findFirst();
    }

    private Verdict verdict(Node.Check check) {
        return judgement.verdicts().get(check.number());
    }

    private Stream<NextLeaf> advice(Node.Check check, Node.Observation observation) {
        Optional<FeelSet> set = set(observation);
        return set.isEmpty()
                ? Stream.of()
                : check.advice().stream()
                        .flatMap(advice -> NextLeafAdvice.in(advice.text()))
                        .filter(advice -> advice.gap() instanceof Slot slot && slot.number() == observation.slot())
                        .flatMap(advice -> advice.next(judgement.frame(check), set.get()).stream());
    }

    private Optional<FeelSet> set(Node.Observation observation) {
        return observation.type() instanceof Type.Gap && observation.gauge() != null
                ? judgement
                        .evidence()
                        .tray()
                        .content()
                        .gauge(observation.gauge().name())
                        .flatMap(gauge -> gauge instanceof FeelSet set ? Optional.of(set) : Optional.empty())
                : Optional.empty();
    }
}

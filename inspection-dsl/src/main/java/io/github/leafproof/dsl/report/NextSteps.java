package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.BenchState;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is worth doing next, in the order of the procedure: first what failed or stays open, each with its advice, then
 * what is not known yet: what a file does not say, and what nobody could enter so far, with the changes of the bench
 * that it takes. What a shut gate blocks has to wait.
 */
final class NextSteps {

    private static final Set<Outcome> WORTH_ADVICE =
            EnumSet.of(Outcome.FAILS, Outcome.OPEN, Outcome.CONTRADICTED, Outcome.TOLERATED);

    private final Judgement judgement;
    private final Cautions cautions;
    private final List<Report.Check> checks;
    private final Map<String, String> bench = new HashMap<>();
    private final Set<String> asked = new HashSet<>();
    private final List<Report.Step> steps = new ArrayList<>();

    NextSteps(Judgement judgement, Cautions cautions, List<Report.Check> checks) {
        this.judgement = judgement;
        this.cautions = cautions;
        this.checks = checks;
        judgement.graph().states().forEach(state -> bench.put(state.name(), state.starts()));
    }

    List<Report.Step> steps() {
        for (Verdict verdict : judgement.verdicts()) {
            Report.Check check = checks.get(verdict.check().number());
            if (WORTH_ADVICE.contains(verdict.outcome())) {
                check.advice()
                        .forEach(advice -> steps.add(new Report.Step(check.title() + ": " + advice, check.cautions())));
            }
        }
        for (Verdict verdict : judgement.verdicts()) {
            if (verdict.outcome() == Outcome.UNTESTED) {
                verdict.lacks().forEach(lack -> ask(lack, verdict));
            }
        }
        return List.copyOf(steps);
    }

    private void ask(Value.Lack lack, Verdict verdict) {
        if (!asked.add(lack.subject())) {
            return;
        }
        Node node = judgement.graph().node(lack.subject()).orElse(null);
        boolean cannot = lack.kind() == Value.Lack.Kind.CANNOT;
        if (lack.kind() == Value.Lack.Kind.NOT_ON_CARD) {
            steps.add(new Report.Step("Find out and write down: " + lack, List.of()));
        } else if (node instanceof Node.Observation observation
                && (cannot || lack.kind() == Value.Lack.Kind.NOT_ENTERED)) {
            ask(observation, verdict, cannot ? "; so far it " + lack.words() : "");
        }
    }

    private void ask(Node.Observation observation, Verdict verdict, String soFar) {
        observation.needs().forEach(this::bring);
        Value ask = observation.ask().value(judgement.frame(verdict.check()));
        String words = ask instanceof Value.Words text ? text.text() : observation.name();
        String with = observation.gauge() == null
                ? ""
                : ", with " + observation.gauge().name();
        steps.add(
                new Report.Step(words + " (" + observation.name() + with + ")" + soFar, cautions.during(observation)));
    }

    private void bring(BenchState.Need need) {
        BenchState state = cautions.state(need.name());
        String from = bench.getOrDefault(need.name(), state.starts());
        for (BenchState.Change change : state.way(from, need.state()).orElse(List.of())) {
            steps.add(new Report.Step(change.how(), Cautions.of(change)));
        }
        bench.put(need.name(), need.state());
    }
}

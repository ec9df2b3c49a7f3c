package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.BenchState;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.StepOrder;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.dsl.graph.Work;
import io.github.leafproof.inspection.record.Report;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is worth doing next, in the order of the procedure: first what failed or stays open, each with its advice, then
 * what is not known yet: what a file does not say, and what nobody could enter so far, with the changes of the bench
 * that it takes. What a shut gate blocks has to wait.
 */
final class NextSteps {

    private final Judgement judgement;
    private final Cautions cautions;
    private final List<Report.Check> checks;
    private final Map<String, String> bench = new HashMap<>();
    private final List<Report.Step> steps = new ArrayList<>();

    NextSteps(Judgement judgement, Cautions cautions, List<Report.Check> checks) {
        this.judgement = judgement;
        this.cautions = cautions;
        this.checks = checks;
        judgement.graph().states().forEach(state -> bench.put(state.name(), state.starts()));
    }

    List<Report.Step> steps() {
        judgement.worthDoing().forEach(this::take);
        return List.copyOf(steps);
    }

    private void take(Work work) {
        if (work instanceof Work.Attend attend) {
            Report.Check check = checks.get(attend.verdict().check().number());
            check.advice()
                    .forEach(advice -> steps.add(new Report.Step(check.title() + ": " + advice, check.cautions())));
        } else if (work instanceof Work.FindOut find) {
            steps.add(new Report.Step("Find out and write down: " + find.lack(), List.of()));
        } else if (work instanceof Work.Observe observe) {
            boolean cannot = observe.lack().kind() == Value.Lack.Kind.CANNOT;
            ask(
                    observe.observation(),
                    observe.verdict(),
                    cannot ? "; so far it " + observe.lack().words() : "");
        }
    }

    private void ask(Node.Observation observation, Verdict verdict, String soFar) {
        judgement.graph().setup(observation, bench).forEach(this::bring);
        Value ask = observation.ask().value(judgement.frame(verdict.check()));
        String words = ask instanceof Value.Words text ? text.text() : observation.name();
        String with = observation.gauge() == null
                ? ""
                : ", with " + observation.gauge().name();
        steps.add(new Report.Step(
                words + " (" + observation.name() + with + ")" + soFar, cautions.during(observation, bench)));
    }

    private void bring(StepOrder.Change step) {
        BenchState.Change change = step.change();
        steps.add(new Report.Step(change.how(), cautions.of(step.state(), change, bench)));
        bench.put(step.state().name(), change.to());
    }
}

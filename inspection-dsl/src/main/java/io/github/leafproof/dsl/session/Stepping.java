package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.StepOrder;
import io.github.leafproof.dsl.report.Cautions;
import io.github.leafproof.inspection.gauge.Gauge;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Puts together what there is to say of a step before it is taken. */
final class Stepping {

    private Stepping() {}

    static NextStep to(Standing standing, Node.Observation observation) {
        CheckGraph graph = standing.basis().graph();
        Cautions cautions = Cautions.in(graph);
        Map<String, String> bench = standing.bench();
        List<Setup> setup = new ArrayList<>();
        for (StepOrder.Change step : graph.setup(observation, bench)) {
            setup.add(new Setup(step.state(), step.change(), cautions.of(step.state(), step.change(), bench)));
            bench.put(step.state().name(), step.change().to());
        }
        return new NextStep(
                observation,
                reason(standing, observation),
                setup,
                ask(standing, observation),
                gauge(standing, observation),
                new LeafTrials(standing.judgement()).next(observation).orElse(null),
                cautions.during(observation, bench));
    }

    private static NextStep.Reason reason(Standing standing, Node.Observation observation) {
        return switch (standing.placeOf(observation)) {
            case TO_DO, PUT_OFF, WAITING ->
                isKnown(standing, observation) ? NextStep.Reason.MORE : NextStep.Reason.FIRST;
            case DONE, COULD_NOT, SKIPPED, NOT_APPLICABLE -> NextStep.Reason.AGAIN;
        };
    }

    /** What was adjusted and not observed again is not known, though there are entries. */
    private static boolean isKnown(Standing standing, Node.Observation observation) {
        return !(standing.judgement().evidence().value(observation) instanceof Value.Missing);
    }

    private static String ask(Standing standing, Node.Observation observation) {
        Value ask = observation.ask().value(standing.judgement().frame());
        return ask instanceof Value.Words words ? words.text() : observation.name();
    }

    private static @Nullable Gauge gauge(Standing standing, Node.Observation observation) {
        return observation.gauge() == null
                ? null
                : standing.basis()
                        .tray()
                        .content()
                        .gauge(observation.gauge().name())
                        .orElse(null);
    }
}

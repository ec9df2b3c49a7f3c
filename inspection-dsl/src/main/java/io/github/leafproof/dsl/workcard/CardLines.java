package io.github.leafproof.dsl.workcard;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.BenchState;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.StepOrder;
import io.github.leafproof.dsl.report.Cautions;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Puts the lines of a card together, from what is known of an engine of which nothing was entered yet. */
final class CardLines {

    private final Judgement blank;
    private final CheckGraph graph;
    private final Cautions cautions;
    private final Map<String, Integer> told = new LinkedHashMap<>();
    private final List<WorkCard.Line> lines = new ArrayList<>();

    CardLines(Judgement blank) {
        this.blank = blank;
        this.graph = blank.graph();
        this.cautions = Cautions.in(graph);
    }

    List<WorkCard.Line> all() {
        List<Node.Observation> asked =
                graph.observations().stream().filter(this::mayBeAsked).toList();
        StepOrder order = graph.stepOrder(asked, Map.of());
        Map<String, List<String>> wanted = wanted(order.observations());
        Map<String, String> bench = new HashMap<>();
        String stage = "";
        int number = 0;
        for (StepOrder.Step step : order.steps()) {
            if (step instanceof StepOrder.Change change) {
                change(change, bench);
                bench.put(change.state().name(), change.change().to());
            } else if (step instanceof StepOrder.Observe observe) {
                Node.Observation observation = observe.observation();
                if (!observation.stage().equals(stage)) {
                    stage = observation.stage();
                    stage(stage);
                }
                List<Integer> holding = numbers(cautions.during(observation, bench));
                lines.add(step(++number, observation, wanted.getOrDefault(observation.name(), List.of()), holding));
            }
        }
        return lines;
    }

    /** A stage begins before the changes of the bench that its first step needs. */
    private void stage(String title) {
        int at = lines.size();
        while (at > 0 && !(lines.get(at - 1) instanceof WorkCard.Step)) {
            at--;
        }
        if (!title.isEmpty()) {
            lines.add(at, new WorkCard.Stage(title));
        }
    }

    /** What a fact of this engine's card rules out is not asked. */
    private boolean mayBeAsked(Node.Observation observation) {
        return observation.when() == null
                || !(observation.when().value(blank.frame()) instanceof Value.Judged judged
                        && judged.outcome() == Outcome.FAILS);
    }

    private void change(StepOrder.Change step, Map<String, String> bench) {
        BenchState.Change change = step.change();
        List<Integer> holding = numbers(cautions.of(step.state(), change, bench));
        lines.add(new WorkCard.Change(
                plain(step.state().name() + ": " + change.from() + " to " + change.to()), change.how(), holding));
    }

    /** A word of the procedure as people write it: {@code glow lead}. */
    static String plain(String word) {
        return word.replace('_', ' ');
    }

    /** The numbers of cautions; one that was not told yet is told here, before what it holds for. */
    private List<Integer> numbers(List<String> words) {
        List<Integer> numbers = new ArrayList<>();
        for (String each : words) {
            if (!told.containsKey(each)) {
                told.put(each, told.size() + 1);
                lines.add(new WorkCard.Caution(told.size(), each));
            }
            numbers.add(told.getOrDefault(each, 0));
        }
        numbers.sort(Comparator.naturalOrder());
        return numbers;
    }

    private WorkCard.Step step(int number, Node.Observation observation, List<String> wanted, List<Integer> holding) {
        Value ask = observation.ask().value(blank.frame());
        boolean always = observation.when() == null
                || (observation.when().value(blank.frame()) instanceof Value.Judged judged && judged.holds());
        return new WorkCard.Step(
                number,
                observation.name(),
                ask instanceof Value.Words words
                        ? words.text()
                        : observation.ask().words(),
                observation.type(),
                gauge(observation),
                always || observation.when() == null ? "" : observation.when().words(),
                observation.notes(),
                wanted,
                holding);
    }

    private @Nullable Gauge gauge(Node.Observation observation) {
        return observation.gauge() == null
                ? null
                : blank.evidence()
                        .tray()
                        .content()
                        .gauge(observation.gauge().name())
                        .orElse(null);
    }

    /** What is required, by the last of the observations that it takes to tell. */
    private Map<String, List<String>> wanted(List<Node.Observation> order) {
        Map<String, Report.Check> checks = new HashMap<>();
        Reporting.of(blank).checks().forEach(check -> checks.put(check.name(), check));
        Map<String, List<String>> wanted = new HashMap<>();
        for (Node.Check check : graph.checks()) {
            Report.Check told = checks.get(check.name());
            if (told == null || told.requirement() == null || told.outcome() == Outcome.NOT_APPLICABLE) {
                continue;
            }
            List<Node.Observation> observed = graph.observationsOf(check);
            String requirement = told.requirement();
            order.stream()
                    .filter(observed::contains)
                    .reduce((earlier, later) -> later)
                    .ifPresent(last -> wanted.computeIfAbsent(last.name(), name -> new ArrayList<>())
                            .add(withoutIts(last.name(), requirement)));
        }
        return wanted;
    }

    /** A requirement beside what it is about need not name it again: {@code within 0.4 mm of 6 mm}. */
    private static String withoutIts(String name, String requirement) {
        for (String beginning : List.of(name + " is ", name + " ")) {
            if (requirement.startsWith(beginning)) {
                return requirement.substring(beginning.length());
            }
        }
        return requirement;
    }
}

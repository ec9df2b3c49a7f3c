package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.BenchState;
import io.github.leafproof.dsl.graph.GaugeNeed;
import io.github.leafproof.dsl.graph.Hazard;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.message.HazardDiagnostics;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Name;
import io.github.leafproof.inspection.quantity.Dimension;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * No procedure has an engine run without showing what a running engine does to people. That it runs is known by two
 * signs: a state of the bench says so in its name, or a rotational speed is observed. Whoever words it otherwise is not
 * found out; docs/safety.md says so.
 */
final class RunningEngine {

    /** What belongs before every run, common practice: docs/safety.md. */
    private static final List<String> CAUTIONS = List.of("propeller", "hot", "fuel", "eyes");

    private static final Set<String> RUNS = Set.of("running", "runs", "idling", "idles");

    /** {@code not_running}, {@code before_running}, and the state {@code off} of a setup {@code engine_runs}. */
    private static final Set<String> STANDS =
            Set.of("not", "no", "never", "off", "stopped", "stands", "before", "after", "until", "without");

    private final Problems problems;
    private final Outline outline;
    private final Map<String, BenchState> states = new LinkedHashMap<>();

    RunningEngine(Problems problems, Outline outline, Bench bench) {
        this.problems = problems;
        this.outline = outline;
        bench.states().forEach(state -> states.put(state.name(), state));
    }

    void look(List<Node.Observation> observed) {
        outline.setups.values().forEach(this::look);
        observed.forEach(this::look);
    }

    /** Each state in which the engine runs carries the cautions, so that whatever comes near it shows them. */
    private void look(Declaration.Setup setup) {
        BenchState state = states.get(setup.name().text());
        Map<String, Name> named = new LinkedHashMap<>();
        setup.whiles().forEach(each -> named.putIfAbsent(each.state().text(), each.state()));
        setup.changes().forEach(each -> named.putIfAbsent(each.to().text(), each.to()));
        named.putIfAbsent(setup.starts().text(), setup.starts());
        named.forEach((word, name) -> {
            List<String> lacking = state == null || !runs(setup.name().text(), word)
                    ? List.of()
                    : lacking(state.hazardsWhile(word).stream());
            if (!lacking.isEmpty()) {
                problems.add(
                        HazardDiagnostics.runsInState(name.span(), setup.name().text(), word, lacking));
            }
        });
    }

    /** A speed of the shaft is read from an engine that runs. */
    private void look(Node.Observation observation) {
        if (!isSpeed(observation)) {
            return;
        }
        Stream<Hazard> lasting = observation.needs().stream()
                .flatMap(need -> Objects.requireNonNull(states.get(need.name())).hazardsWhile(need.state()).stream());
        List<String> lacking = lacking(Stream.concat(observation.hazards().stream(), lasting));
        if (!lacking.isEmpty()) {
            Span span = Objects.requireNonNull(outline.observations.get(observation.name()))
                    .declaration()
                    .target()
                    .span();
            problems.add(HazardDiagnostics.runsWhileRead(span, observation.name(), lacking));
        }
    }

    private static boolean isSpeed(Node.Observation observation) {
        GaugeNeed gauge = observation.gauge();
        Dimension read = gauge == null ? null : gauge.of();
        Type type = observation.type() instanceof Type.Series series ? series.of() : observation.type();
        return type.equals(new Type.Measure(Dimension.ROTATIONAL_SPEED))
                || (read != null && read.equals(Dimension.ROTATIONAL_SPEED));
    }

    /** {@code shaft running}, {@code shaft running_rich}, {@code engine_runs lean}. */
    private static boolean runs(String setup, String state) {
        return (hasWord(state, RUNS::contains) || hasWord(setup, RUNS::contains)) && !hasWord(state, STANDS::contains);
    }

    private static boolean hasWord(String name, Predicate<String> wanted) {
        return Arrays.stream(name.split("_")).anyMatch(wanted);
    }

    private static List<String> lacking(Stream<Hazard> shown) {
        List<String> named = shown.map(Hazard::name).toList();
        return CAUTIONS.stream().filter(caution -> !named.contains(caution)).toList();
    }
}

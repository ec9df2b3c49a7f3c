package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Constant;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.GaugeNeed;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.message.TypeDiagnostics;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Text;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.DecisionRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a person is asked to enter. */
final class Observations {

    private final Problems problems;
    private final Outline outline;
    private final Names names;
    private final Bench bench;

    Observations(Problems problems, Outline outline, Names names, Bench bench) {
        this.problems = problems;
        this.outline = outline;
        this.names = names;
        this.bench = bench;
    }

    List<Node.Observation> understand() {
        List<Integer> slots = new ArrayList<>();
        outline.observations.forEach((key, item) -> slots.add(names.observe(key, item.declaration())));
        List<Node.Observation> observations = new ArrayList<>();
        int next = 0;
        for (Map.Entry<String, Item<Declaration.Observe>> entry : outline.observations.entrySet()) {
            int slot = slots.get(next++);
            if (slot >= 0) {
                observations.add(observation(slot, entry.getKey(), entry.getValue()));
            }
        }
        return observations;
    }

    private Node.Observation observation(int slot, String key, Item<Declaration.Observe> item) {
        Declaration.Observe observe = item.declaration();
        Type type = names.observedType(key);
        GaugeNeed gauge = observe.gauge() == null ? null : bench.gauge(observe.gauge());
        agree(observe, type, gauge);
        Formula when = observe.when() == null ? null : names.expressions().condition(observe.when(), item.env());
        List<String> notes = observe.notes().stream()
                .map(note -> fixed(problems, names, note, item.env()))
                .toList();
        return new Node.Observation(
                slot,
                key,
                type,
                ask(observe, key, item.env()),
                gauge,
                bench.needs(observe),
                bench.hazards(observe.hazards()),
                notes,
                observe.optional(),
                when,
                item.stage());
    }

    private Formula ask(Declaration.Observe observe, String key, Env env) {
        String fallback = key.replace('_', ' ');
        Formula plain = new Constant(new Value.Words(fallback), fallback);
        Formula text = observe.ask() == null ? plain : names.expressions().text(observe.ask(), env);
        return text == null ? plain : text;
    }

    /** A gap is felt with leaves or pins; a quantity is read from an instrument for it; a count needs a counter at most. */
    private void agree(Declaration.Observe observe, Type type, @Nullable GaugeNeed gauge) {
        if (gauge == null) {
            if (type instanceof Type.Gap && observe.gauge() == null && !problems.isHurt(observe.span())) {
                problems.add(StructureDiagnostics.gapWithoutGauge(observe.type().span()));
            }
            return;
        }
        Dimension of = gauge.of();
        if (gauge.kind() == GaugeNeed.Kind.READING && of == null) {
            // What the gauge reads made no sense, and that was said already.
            return;
        }
        Type read = type instanceof Type.Series series ? series.of() : type;
        boolean agrees = switch (gauge.kind()) {
            case LEAF_SET, PIN_SET -> type instanceof Type.Gap;
            case COUNTER -> read instanceof Type.Count;
            case READING ->
                of != null
                        && read instanceof Type.Measure measure
                        && measure.dimension().equals(of);
        };
        if (!agrees && observe.gauge() != null) {
            problems.add(TypeDiagnostics.gaugeForOther(
                    observe.type().span(), type.words(), observe.gauge().span(), gauge.words()));
        }
    }

    /** A text that says the same for every engine: only names of loops may fill its holes. */
    static String fixed(Problems problems, Names names, Text text, Env env) {
        if (text.isPlain()) {
            return text.plain();
        }
        Formula formula = names.expressions().text(text, env);
        if (formula == null) {
            return "";
        }
        boolean[] reads = {false};
        formula.slots(slot -> reads[0] = true);
        if (reads[0]) {
            problems.add(StructureDiagnostics.textNotFixed(text.span()));
            return "";
        }
        Frame frame = Frame.of(new Value[0], DecisionRule.simpleAcceptance(), UnitSystem.METRIC);
        return ((Value.Words) formula.value(frame)).text();
    }
}

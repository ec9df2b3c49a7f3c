package io.github.leafproof.dsl.graph;

import java.util.List;

/**
 * What a check's verdict rests on, each in the order of the procedure.
 *
 * @param facts what the engine's card or the job sheet must state
 * @param observations what must be entered, and what decides whether it is asked for at all
 * @param values what is computed on the way
 * @param gauges what is measured with
 * @param states the states that the bench must be brought into
 * @param gates the checks that must let through first, near or far; what these need themselves is asked of them
 */
public record Needs(
        List<Node.Fact> facts,
        List<Node.Observation> observations,
        List<Node.Derived> values,
        List<GaugeNeed> gauges,
        List<BenchState.Need> states,
        List<Node.Check> gates) {
    public Needs {
        facts = List.copyOf(facts);
        observations = List.copyOf(observations);
        values = List.copyOf(values);
        gauges = List.copyOf(gauges);
        states = List.copyOf(states);
        gates = List.copyOf(gates);
    }
}

package io.github.leafproof.dsl.graph;

import java.util.List;

/**
 * What one observation bears on, each in the order of the procedure.
 *
 * @param values what is computed from it, directly or by way of other values
 * @param observations what is asked for, or not, because of it
 * @param checks the checks that are judged by it
 * @param waiting the checks that wait for one of these as for a gate, and do not read it themselves
 * @param advice what is said in words or numbers that come from it
 */
public record Affected(
        List<Node.Derived> values,
        List<Node.Observation> observations,
        List<Node.Check> checks,
        List<Node.Check> waiting,
        List<Said> advice) {
    public Affected {
        values = List.copyOf(values);
        observations = List.copyOf(observations);
        checks = List.copyOf(checks);
        waiting = List.copyOf(waiting);
        advice = List.copyOf(advice);
    }

    /** A piece of advice and the check that gives it. */
    public record Said(Node.Check check, Node.Advice advice) {}
}

package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What a procedure was compiled to. Immutable, and safe to share between threads. */
public final class Compilation {

    private final CheckGraph graph;
    private final boolean interprets;
    private final int compiledChecks;
    private final Program[] programs;
    private final List<byte[]> classes;
    private final int longestMethod;
    private final int lines;

    private Compilation(CheckGraph graph, Layout layout, Plan plan) {
        this.graph = graph;
        this.interprets = plan.interprets();
        this.compiledChecks = compiledChecks(graph, plan);
        ClassWriting writing = new ClassWriting(plan.lines());
        CheckWriting checks = new CheckWriting(graph, layout, plan);
        graph.settlingOrder().forEach(node -> writing.add(code -> checks.settle(node, code)));
        graph.checkOrder()
                .forEach(number ->
                        writing.add(code -> checks.judge(graph.checks().get(number), code)));
        writing.add(checks::release);
        this.longestMethod = writing.longest();
        this.lines = writing.lines();
        this.classes = new ArrayList<>();
        this.programs = writing.define(classes).toArray(Program[]::new);
    }

    static Compilation of(CheckGraph graph, Layout layout) {
        return new Compilation(graph, layout, Plan.of(graph, layout));
    }

    void run(Figures figures, Outcomes into) {
        if (figures.graph != graph || into.graph != graph) {
            throw new IllegalArgumentException("figures and outcomes belong to another procedure");
        }
        if (interprets) {
            into.takeValues(figures);
        }
        into.takeSlate(lines);
        into.seen = 0;
        for (Program program : programs) {
            program.run(figures, into);
        }
    }

    /**
     * How many checks are compiled as a whole: neither they nor any value that they read is left to the interpreter.
     */
    public int compiledChecks() {
        return compiledChecks;
    }

    /** The length of the longest method, in bytes. */
    int longestMethod() {
        return longestMethod;
    }

    /** The classes that were made, as the machine reads them; for whoever wants to look at the code. */
    public List<byte[]> classes() {
        return classes.stream().map(byte[]::clone).toList();
    }

    private static int compiledChecks(CheckGraph graph, Plan plan) {
        Set<Integer> rest = new HashSet<>();
        for (Node node : graph.settlingOrder()) {
            if (node instanceof Node.Derived derived) {
                if (plan.isInterpreted(derived) || reads(plan, derived.formula(), rest)) {
                    rest.add(derived.slot());
                }
            } else if (node instanceof Node.Observation observation
                    && observation.when() != null
                    && reads(plan, observation.when(), rest)) {
                rest.add(observation.slot());
            }
        }
        return (int) graph.checks().stream()
                .filter(check -> !reads(plan, check.requirement(), rest)
                        && (check.when() == null || !reads(plan, check.when(), rest)))
                .count();
    }

    /** Whether a formula is interpreted, or reads what hangs on something that is. */
    private static boolean reads(Plan plan, Formula formula, Set<Integer> rest) {
        Set<Integer> read = new HashSet<>();
        formula.slots(read::add);
        return plan.term(formula).isEmpty() || read.stream().anyMatch(rest::contains);
    }
}

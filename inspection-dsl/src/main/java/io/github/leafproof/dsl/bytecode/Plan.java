package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.verdict.DecisionRule;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.Opcodes;

/**
 * Which formulas of a graph are compiled, and where each of them finds what it reads. A value whose formula cannot be compiled
 * is interpreted, and so is every value that it reads itself, for the interpreter knows no figures. What reads such a value may
 * be compiled nevertheless.
 */
final class Plan {

    private final CheckGraph graph;
    private final Layout layout;
    private final Map<Integer, Node> nodes = new HashMap<>();
    private final Map<DecisionRule, Translation> translations = new HashMap<>();
    private final Map<Integer, Shape> shapes = new HashMap<>();
    private final IdentityHashMap<Formula, Term> terms = new IdentityHashMap<>();
    private final Map<Integer, Integer> lines = new HashMap<>();
    private final Set<Integer> interpreted = new HashSet<>();
    private boolean interprets;

    private Plan(CheckGraph graph, Layout layout) {
        this.graph = graph;
        this.layout = layout;
        graph.facts().forEach(fact -> nodes.put(fact.slot(), fact));
        graph.observations().forEach(observation -> nodes.put(observation.slot(), observation));
        graph.derived().forEach(derived -> nodes.put(derived.slot(), derived));
    }

    static Plan of(CheckGraph graph, Layout layout) {
        Plan plan = new Plan(graph, layout);
        int before = -1;
        // What is interpreted has another shape, so that what reads it may have to be interpreted, too.
        while (plan.interpreted.size() > before) {
            before = plan.interpreted.size();
            plan.translate();
        }
        return plan;
    }

    /** The code of a formula; empty where it is interpreted. */
    Optional<Term> term(Formula formula) {
        return Optional.ofNullable(terms.get(formula));
    }

    /** Whether anything is interpreted. */
    boolean interprets() {
        return interprets;
    }

    /** How many lines of the slate hold derived values. */
    int lines() {
        return lines.size();
    }

    /** The line of the slate that holds a derived value. */
    int line(int slot) {
        return lines.getOrDefault(slot, -1);
    }

    /** Whether a derived value is interpreted. */
    boolean isInterpreted(Node.Derived derived) {
        return interpreted.contains(derived.slot());
    }

    private void translate() {
        terms.clear();
        shapes.clear();
        lines.clear();
        for (Node node : graph.settlingOrder()) {
            if (node instanceof Node.Derived derived) {
                if (isInterpreted(derived) || !translate(derived.formula(), graph.rule())) {
                    interpreted.add(derived.slot());
                    interpret(derived.formula());
                } else {
                    term(derived.formula()).ifPresent(term -> take(derived.slot(), term.shape()));
                }
            } else if (node instanceof Node.Observation observation) {
                translateOrInterpret(observation.when(), graph.rule());
            }
        }
        for (Node.Check check : graph.checks()) {
            translateOrInterpret(check.when(), check.rule());
            translateOrInterpret(check.requirement(), check.rule());
        }
    }

    private void take(int slot, Shape shape) {
        shapes.put(slot, shape);
        if (shape.isWorked()) {
            lines.put(slot, lines.size());
        }
    }

    private void translateOrInterpret(@Nullable Formula formula, DecisionRule rule) {
        if (formula != null && !translate(formula, rule)) {
            interpret(formula);
        }
    }

    private boolean translate(Formula formula, DecisionRule rule) {
        Term term = translations
                .computeIfAbsent(rule, each -> new Translation(layout, this::read, each))
                .of(formula);
        if (term != null) {
            terms.put(formula, term);
        }
        return term != null;
    }

    /** The interpreter reads values, so that what it reads has to be there as one. */
    private void interpret(Formula formula) {
        interprets = true;
        formula.slots(slot -> {
            if (nodes.get(slot) instanceof Node.Derived) {
                interpreted.add(slot);
            }
        });
    }

    private @Nullable Term read(int slot) {
        Node node = nodes.get(slot);
        if (node instanceof Node.Fact fact) {
            return slot(slot, given(fact.type(), Shape.EXACT), false, false);
        }
        if (node instanceof Node.Observation observation) {
            Shape number = Layout.mayBeUncertain(observation) ? Shape.KNOWN : Shape.EXACT;
            return slot(slot, given(observation.type(), number), observation.when() != null, false);
        }
        if (!(node instanceof Node.Derived derived)) {
            return null;
        }
        Shape known = shapes.get(slot);
        Shape shape = known == null ? computed(derived.type()) : known;
        return shape == null ? null : slot(slot, shape, true, true);
    }

    /** The shape of what somebody states. */
    private static Shape given(Type type, Shape number) {
        if (type instanceof Type.Measure) {
            return number;
        }
        if (type instanceof Type.YesNo) {
            return Shape.CONDITION;
        }
        if (type instanceof Type.Gap) {
            return Shape.GAP;
        }
        if (type instanceof Type.Items) {
            return Shape.THINGS;
        }
        return type instanceof Type.Series ? Shape.READINGS : Shape.EXACT;
    }

    /** The shape of what the interpreter computed; null where what came of it is no number. */
    private static @Nullable Shape computed(Type type) {
        if (type instanceof Type.Measure || type instanceof Type.Count) {
            return Shape.KNOWN;
        }
        if (type instanceof Type.YesNo) {
            return Shape.CONDITION;
        }
        return type instanceof Type.Choice || type instanceof Type.Date ? Shape.EXACT : null;
    }

    /**
     * How a slot is read.
     *
     * @param settled whether its state is found out while judging
     * @param derived whether its value is
     */
    private Term slot(int slot, Shape shape, boolean settled, boolean derived) {
        return new Term(shape, code -> {
            code.states(settled);
            code.push(slot);
            code.instruction(Opcodes.IALOAD);
            if (shape.isCondition()) {
                return code.state();
            }
            if (shape.isWorked()) {
                return new Term.Local(code.state().state(), line(slot));
            }
            if (shape.equals(Shape.READINGS)) {
                code.push(layout.more(slot));
                return code.both(shape);
            }
            code.number(derived, slot);
            if (shape.isRow()) {
                code.instruction(Opcodes.D2I);
            }
            for (int i = 1; i < shape.doubles(); i++) {
                code.number(derived, layout.more(slot) + i - 1);
            }
            return code.both(shape);
        });
    }
}

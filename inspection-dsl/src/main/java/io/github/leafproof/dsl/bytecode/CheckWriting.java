package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.bytecode.Term.Local;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.verdict.Condition;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import io.github.leafproof.inspection.verdict.Severity;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;

/** The code that settles a value or judges a check, and the code that decides about the engine. */
final class CheckWriting {

    private final CheckGraph graph;
    private final Layout layout;
    private final Plan plan;
    private final Map<String, Integer> numbers = new HashMap<>();

    CheckWriting(CheckGraph graph, Layout layout, Plan plan) {
        this.graph = graph;
        this.layout = layout;
        this.plan = plan;
        graph.checks().forEach(check -> numbers.put(check.name(), check.number()));
    }

    /** Works out a derived value, or whether an observation applies. */
    void settle(Node node, Code code) {
        if (node instanceof Node.Observation observation) {
            code.outcomes();
            code.figures();
            code.push(observation.slot());
            Formula when = Objects.requireNonNull(observation.when());
            Local applies = truth(when, graph.rule(), code);
            code.load(applies);
            code.callOn(Outcomes.class, "settle", void.class, Figures.class, int.class, int.class);
        } else if (node instanceof Node.Derived derived) {
            if (plan.isInterpreted(derived)) {
                code.outcomes();
                code.push(derived.formula(), Formula.class);
                code.push(derived.slot());
                code.callOn(Outcomes.class, "derive", void.class, Formula.class, int.class);
            } else {
                derive(derived, code);
            }
        }
    }

    private void derive(Node.Derived derived, Code code) {
        Term term = plan.term(derived.formula()).orElseThrow();
        Local value = term.written().to(code);
        code.states(true);
        code.push(derived.slot());
        code.load(value);
        code.instruction(Opcodes.IASTORE);
        if (term.shape().isWorked()) {
            Label end = new Label();
            code.load(value);
            code.jump(Opcodes.IFNE, end);
            OnSlate.write(code, term.shape(), value, plan.line(derived.slot()));
            code.place(end);
        }
        int doubles = term.shape().doubles();
        for (int i = 0; i < doubles; i++) {
            code.numbers(true);
            code.push(i == 0 ? derived.slot() : layout.more(derived.slot()) + i - 1);
            code.loadDouble(value, i);
            code.instruction(Opcodes.DASTORE);
        }
        if (term.shape().isRow()) {
            code.numbers(true);
            code.push(derived.slot());
            code.loadValue(term.shape(), value);
            code.instruction(Opcodes.I2D);
            code.instruction(Opcodes.DASTORE);
        }
    }

    private Local truth(Formula condition, DecisionRule rule, Code code) {
        return plan.term(condition).map(term -> term.written().to(code)).orElseGet(() -> {
            code.outcomes();
            code.push(condition, Formula.class);
            code.push(rule, DecisionRule.class);
            code.callOn(Outcomes.class, "truth", int.class, Formula.class, DecisionRule.class);
            return code.state();
        });
    }

    /** Judges a check, after the gates that it waits for. */
    void judge(Node.Check check, Code code) {
        Label end = new Label();
        if (check.when() != null) {
            Local applies = truth(check.when(), check.rule(), code);
            Label does = new Label();
            code.load(applies);
            code.call(Truth.class, "holds", boolean.class, int.class);
            code.jump(Opcodes.IFNE, does);
            code.outcomes();
            code.push(check.number());
            code.load(applies);
            code.call(Truth.class, "outcomeUnlessItApplies", int.class, int.class);
            say(check, code);
            code.jump(Opcodes.GOTO, end);
            code.place(does);
        }
        if (!check.after().isEmpty()) {
            gates(check, code, end);
        }
        Local required = truth(check.requirement(), check.rule(), code);
        code.outcomes();
        code.push(check.number());
        code.load(required);
        code.call(Truth.class, "outcome", int.class, int.class);
        say(check, code);
        code.place(end);
    }

    private static void gates(Node.Check check, Code code, Label end) {
        Label shut = new Label();
        Label open = new Label();
        for (int gate : check.after()) {
            code.outcomes();
            code.push(gate);
            code.callOn(Outcomes.class, "holdsBack", boolean.class, int.class);
            code.jump(Opcodes.IFNE, shut);
        }
        code.jump(Opcodes.GOTO, open);
        code.place(shut);
        code.outcomes();
        code.push(check.number());
        code.push(Truth.number(Outcome.BLOCKED));
        say(check, code);
        code.jump(Opcodes.GOTO, end);
        code.place(open);
    }

    private static void say(Node.Check check, Code code) {
        code.push(Truth.number(check.severity()));
        code.callOn(Outcomes.class, "say", void.class, int.class, int.class, int.class);
    }

    /** Decides about the engine: the first clause that applies. An engine that nobody has checked is unfinished. */
    void release(Code code) {
        Label end = new Label();
        List<ReleaseRule.Clause> clauses = graph.checks().isEmpty()
                ? List.of(new ReleaseRule.Clause(Release.UNFINISHED, new Condition.Always()))
                : graph.release().clauses();
        for (ReleaseRule.Clause clause : clauses) {
            Label next = new Label();
            unless(clause.when(), next, code);
            code.outcomes();
            code.push(Truth.number(clause.result()));
            code.callOn(Outcomes.class, "release", void.class, int.class);
            code.jump(Opcodes.GOTO, end);
            code.place(next);
        }
        code.place(end);
    }

    /** Jumps where a condition does not hold. */
    private void unless(Condition condition, Label to, Code code) {
        if (condition instanceof Condition.AnyCheck any) {
            code.outcomes();
            code.field(Outcomes.class, "seen", long.class);
            code.push(bits(any));
            code.instruction(Opcodes.LAND);
            code.push(0L);
            code.instruction(Opcodes.LCMP);
            code.jump(Opcodes.IFEQ, to);
        } else if (condition instanceof Condition.OneCheck one) {
            Integer number = numbers.get(one.name());
            if (number == null) {
                code.jump(Opcodes.GOTO, to);
                return;
            }
            code.outcomes();
            code.push(number);
            code.push(Outcomes.bits(one.outcomes()));
            code.callOn(Outcomes.class, "isOneOf", boolean.class, int.class, int.class);
            code.jump(Opcodes.IFEQ, to);
        } else if (condition instanceof Condition.Both both) {
            both.parts().forEach(part -> unless(part, to, code));
        } else if (condition instanceof Condition.Either either) {
            Label holds = new Label();
            for (Condition part : either.parts()) {
                Label next = new Label();
                unless(part, next, code);
                code.jump(Opcodes.GOTO, holds);
                code.place(next);
            }
            code.jump(Opcodes.GOTO, to);
            code.place(holds);
        } else if (condition instanceof Condition.Not not) {
            Label holdsNot = new Label();
            unless(not.part(), holdsNot, code);
            code.jump(Opcodes.GOTO, to);
            code.place(holdsNot);
        }
    }

    /** Eight bits for each severity, one for each outcome. */
    private static long bits(Condition.AnyCheck any) {
        Set<Severity> severities = any.severities().isEmpty() ? Set.of(Severity.values()) : any.severities();
        return severities.stream()
                .mapToLong(severity -> (long) Outcomes.bits(any.outcomes()) << (8 * Truth.number(severity)))
                .sum();
    }
}

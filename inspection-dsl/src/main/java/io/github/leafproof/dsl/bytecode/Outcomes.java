package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Judge;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.dsl.graph.Verdicts;
import io.github.leafproof.inspection.quantity.Slate;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.util.Collection;
import java.util.stream.Stream;

/**
 * What all checks of one engine came to, and its release. One of these is filled again and again, for one engine after
 * another; it belongs to one thread.
 */
public final class Outcomes {

    private static final Outcome[] OUTCOMES = Outcome.values();
    private static final Release[] RELEASES = Release.values();
    private static final Value NOT_ASKED = Value.Missing.of(Value.Lack.Kind.NOT_ASKED, "", "does not apply");

    private static final int LETS_THROUGH =
            bits(Stream.of(OUTCOMES).filter(Outcome::letsThrough).toList());

    final CheckGraph graph;
    private final byte[] outcomes;
    private int release = Truth.number(Release.UNFINISHED);

    /** What is computed on the way, where {@link Figures} have what is given. */
    final int[] state;

    final double[] number;
    private final Layout layout;
    /** The same as values, for what is interpreted. */
    private final Value[] values;

    /** Where numbers are computed whose uncertainty is not known beforehand. */
    Slate slate = new Slate(0);

    /** Which outcomes there are so far: eight bits for each severity. */
    long seen;

    Outcomes(CheckGraph graph, Layout layout) {
        this.graph = graph;
        this.layout = layout;
        this.outcomes = new byte[graph.checks().size()];
        this.state = new int[graph.slots()];
        this.number = new double[layout.length()];
        this.values = new Value[graph.slots()];
    }

    /** What a check came to, by its number. */
    public Outcome of(int check) {
        return OUTCOMES[outcomes[check]];
    }

    /** What was decided about the engine. */
    public Release release() {
        return RELEASES[release];
    }

    /** How many checks there are. */
    public int size() {
        return outcomes.length;
    }

    /** Takes over what the interpreter says. */
    void interpret(Figures figures) {
        Verdicts verdicts = Judge.verdicts(figures.evidence());
        for (Verdict verdict : verdicts) {
            outcomes[verdict.check().number()] = (byte) Truth.number(verdict.outcome());
        }
        release = Truth.number(graph.release().release(verdicts));
    }

    /** A bit for each of some outcomes. */
    static int bits(Collection<Outcome> some) {
        return some.stream().mapToInt(outcome -> 1 << Truth.number(outcome)).sum();
    }

    // From here on what the compiled code calls.

    /** Makes ready for calculations on so many lines. */
    void takeSlate(int lines) {
        if (slate.lines() < lines) {
            slate = new Slate(lines);
        }
    }

    /** Writes on a line a whole estimate, given where it is. */
    void write(Figures figures, int line, double origin) {
        slate.write(line, Origin.estimate((int) origin, figures.values, values));
    }

    /** Makes ready for formulas that are interpreted. */
    void takeValues(Figures figures) {
        System.arraycopy(figures.values, 0, values, 0, values.length);
    }

    void say(int check, int outcome, int severity) {
        outcomes[check] = (byte) outcome;
        seen |= 1L << ((8 * severity) + outcome);
    }

    /** Whether what waits for this check has to go on waiting. */
    boolean holdsBack(int gate) {
        return !isOneOf(gate, LETS_THROUGH);
    }

    /** Whether a check has one of some outcomes: a bit for each that counts. */
    boolean isOneOf(int check, int some) {
        return ((some >>> outcomes[check]) & 1) != 0;
    }

    void release(int decided) {
        release = decided;
    }

    /** Of an observation that was not made: whether it need not have been, since it does not apply. */
    void settle(Figures figures, int slot, int applies) {
        int entered = figures.state[slot];
        boolean mayBeLeftOut = entered >= Truth.LACKS && !Truth.isNotAsked(entered);
        if (mayBeLeftOut && (applies == Truth.FAILS || Truth.isNotAsked(applies))) {
            state[slot] = Truth.LACKS | Truth.NOT_ASKED;
            values[slot] = NOT_ASKED;
        } else {
            state[slot] = entered;
        }
    }

    void derive(Formula formula, int slot) {
        Value value = formula.value(Frame.of(values, graph.rule(), UnitSystem.METRIC));
        values[slot] = value;
        state[slot] = Truth.of(value);
        if (value instanceof Value.Amount amount) {
            Figures.put(amount.estimate(), Origin.ofValue(slot), slot, layout.more(slot), number);
        } else if (value instanceof Value.Pick pick) {
            number[slot] = pick.option();
        } else if (value instanceof Value.Day day) {
            number[slot] = (double) day.day().toEpochDay();
        }
    }

    int truth(Formula condition, DecisionRule rule) {
        return Truth.of(condition.value(Frame.of(values, rule, UnitSystem.METRIC)));
    }
}

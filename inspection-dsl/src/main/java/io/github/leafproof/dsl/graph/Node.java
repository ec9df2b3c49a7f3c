package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Severity;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A node of a check graph. Observations, facts and derived values have a slot each; checks have a number. */
public sealed interface Node {

    /** As the procedure names it, loops written out: {@code lash[intake]}. */
    String name();

    /** A fact of the engine, from its card or from the job sheet. */
    record Fact(int slot, String name, Type type) implements Node {}

    /**
     * One thing that a person enters.
     *
     * @param ask what to do or to look at, in a line; it may name facts of the engine
     * @param gauge what it is measured with, or null
     * @param needs the bench states in which it is done
     * @param hazards its own, beside those of the states
     * @param optional whether it may be left out without the inspection counting as unfinished
     * @param when whether it applies to this engine, or null where it always does
     */
    record Observation(
            int slot,
            String name,
            Type type,
            Formula ask,
            @Nullable GaugeNeed gauge,
            List<BenchState.Need> needs,
            List<Hazard> hazards,
            List<String> notes,
            boolean optional,
            @Nullable Formula when,
            String stage)
            implements Node {
        public Observation {
            needs = List.copyOf(needs);
            hazards = List.copyOf(hazards);
            notes = List.copyOf(notes);
        }
    }

    /** A value computed from others. */
    record Derived(int slot, String name, Type type, Formula formula) implements Node {}

    /**
     * A judgement.
     *
     * @param number its place among the checks, from 0, in the order of the procedure
     * @param gate whether other checks may wait for it
     * @param after the gates that must let through first, by their numbers
     * @param when whether it applies, or null where it always does
     * @param requirement what must hold
     * @param advice what to say when it comes out in a certain way
     * @param because the sources of, or the reasons for, its limits
     */
    record Check(
            int number,
            String name,
            String title,
            String stage,
            Severity severity,
            boolean gate,
            List<Integer> after,
            @Nullable Formula when,
            Formula requirement,
            DecisionRule rule,
            List<Advice> advice,
            List<String> because)
            implements Node {
        public Check {
            after = List.copyOf(after);
            advice = List.copyOf(advice);
            because = List.copyOf(because);
        }
    }

    /** What to say in a case. */
    record Advice(Occasion occasion, Formula text) {}
}

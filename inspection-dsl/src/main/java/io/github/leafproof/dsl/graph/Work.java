package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Something worth doing next. */
public sealed interface Work {

    /** The verdict for whose sake it is worth doing. */
    Verdict verdict();

    /** Something failed, or stays open, or is contradicted, or is tolerated only: the check's advice says what to do. */
    record Attend(Verdict verdict) implements Work {}

    /** Something that the card or the sheet does not say has to be found out and written down. */
    record FindOut(Verdict verdict, Value.Lack lack) implements Work {}

    /**
     * Something is to be observed.
     *
     * @param lack why it is not known yet: nobody entered it, or it could not be observed so far
     */
    record Observe(Verdict verdict, Node.Observation observation, Value.Lack lack) implements Work {}

    /** What a judgement leaves to do, the most pressing first. */
    static List<Work> after(Judgement judgement) {
        Set<Outcome> pressing = EnumSet.of(Outcome.FAILS, Outcome.OPEN, Outcome.CONTRADICTED, Outcome.TOLERATED);
        List<Work> work = new ArrayList<>();
        judgement.verdicts().stream()
                .filter(verdict -> pressing.contains(verdict.outcome()))
                .forEach(verdict -> work.add(new Attend(verdict)));
        Set<String> asked = new HashSet<>();
        for (Verdict verdict : judgement.verdicts()) {
            if (verdict.outcome() == Outcome.UNTESTED) {
                verdict.lacks().stream()
                        .filter(lack -> asked.add(lack.subject()))
                        .forEach(lack -> supply(judgement.graph(), verdict, lack, work));
            }
        }
        return List.copyOf(work);
    }

    private static void supply(CheckGraph graph, Verdict verdict, Value.Lack lack, List<Work> work) {
        boolean observable = lack.kind() == Value.Lack.Kind.NOT_ENTERED || lack.kind() == Value.Lack.Kind.CANNOT;
        if (lack.kind() == Value.Lack.Kind.NOT_ON_CARD) {
            work.add(new FindOut(verdict, lack));
        } else if (observable && graph.node(lack.subject()).orElse(null) instanceof Node.Observation observation) {
            work.add(new Observe(verdict, observation, lack));
        }
    }
}

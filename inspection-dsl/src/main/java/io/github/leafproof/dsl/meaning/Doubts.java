package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Constant;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import java.util.HashMap;
import java.util.Map;

/** Whether a check can stay open, and whether what it rests on can all be left out: told from what its values come from. */
final class Doubts {

    private enum Source {
        /** Known to the last digit: counted, chosen, stated. */
        NONE,
        /** A number with an uncertainty. */
        NUMBER,
        /** A gap, which may not be pinned down at all. */
        GAP
    }

    private final CheckGraph graph;
    private final Sites sites;
    private final Map<Integer, Source> bySlot = new HashMap<>();
    private final Map<Integer, Boolean> leftOut = new HashMap<>();

    Doubts(CheckGraph graph, Sites sites) {
        this.graph = graph;
        this.sites = sites;
        for (Node.Observation each : graph.observations()) {
            bySlot.put(each.slot(), source(each));
            leftOut.put(each.slot(), each.optional() || each.when() != null);
        }
        graph.derived().forEach(each -> {
            bySlot.put(each.slot(), source(each.formula()));
            leftOut.put(each.slot(), canBeLeftOut(each.formula()));
        });
    }

    private static Source source(Node.Observation observation) {
        if (observation.type() instanceof Type.Gap) {
            return Source.GAP;
        }
        boolean read = observation.gauge() != null && observation.type() instanceof Type.Measure;
        return read || observation.type() instanceof Type.Series ? Source.NUMBER : Source.NONE;
    }

    private Source source(Formula formula) {
        Source most = sites.uncertain.contains(formula) ? Source.NUMBER : Source.NONE;
        if (formula instanceof Slot slot) {
            return bySlot.getOrDefault(slot.number(), most);
        }
        if (formula instanceof Constant constant
                && constant.value() instanceof Value.Amount amount
                && !amount.estimate().isExact()) {
            return Source.NUMBER;
        }
        for (Formula part : formula.parts()) {
            Source of = source(part);
            most = of.compareTo(most) > 0 ? of : most;
        }
        return most;
    }

    /**
     * Whether a check can come out as open. Simple acceptance leaves no number open: one half of the odds is always the better
     * one.
     */
    boolean canStayOpen(Node.Check check) {
        Source most = source(check.requirement());
        if (check.when() != null && source(check.when()).compareTo(most) > 0) {
            most = source(check.when());
        }
        boolean shared = check.rule().confidence() == 0.5 && graph.rule().confidence() == 0.5;
        return most == Source.GAP || (most == Source.NUMBER && !shared);
    }

    /**
     * Whether nothing may be there to judge a condition by, and rightly so: of a row it takes all, of anything else one part.
     */
    boolean canBeLeftOut(Formula formula) {
        if (formula instanceof Slot slot) {
            return leftOut.getOrDefault(slot.number(), false);
        }
        if (formula instanceof Joined joined) {
            return joined.parts().stream().allMatch(this::canBeLeftOut);
        }
        return formula.parts().stream().anyMatch(this::canBeLeftOut);
    }
}

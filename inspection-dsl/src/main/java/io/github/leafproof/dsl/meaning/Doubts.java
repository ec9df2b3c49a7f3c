package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Constant;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.IfElse;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.formula.OfReadings;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Statistic;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

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
    private final Map<Integer, Node> asked = new HashMap<>();

    Doubts(CheckGraph graph, Sites sites) {
        this.graph = graph;
        this.sites = sites;
        for (Node.Observation each : graph.observations()) {
            bySlot.put(each.slot(), source(each));
            asked.put(each.slot(), each);
        }
        graph.derived().forEach(each -> {
            bySlot.put(each.slot(), source(each.formula()));
            asked.put(each.slot(), each);
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
        if (formula instanceof OfReadings of && of.statistic() == Statistic.COUNT) {
            return Source.NONE;
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

    /** Whether trials of leaves or pins decide about a check: nothing else contradicts itself. */
    boolean canContradict(Node.Check check) {
        return source(check.requirement()) == Source.GAP;
    }

    /**
     * Whether nothing may be there to judge a condition by, and rightly so: of a row it takes all, of anything else one part.
     * What is asked for only in a case is there in that case.
     */
    boolean canBeLeftOut(Formula formula, Possibilities so) {
        if (formula instanceof Slot slot) {
            Node node = asked.get(slot.number());
            return node instanceof Node.Observation observation
                    ? observation.optional() || isLeftOut(observation.when(), so)
                    : node instanceof Node.Derived derived && canBeLeftOut(derived.formula(), so);
        }
        if (formula instanceof Joined joined) {
            return joined.parts().stream().allMatch(part -> canBeLeftOut(part, so));
        }
        if (formula instanceof IfElse either) {
            return canBeLeftOut(either.condition(), so)
                    || so.where(either.condition())
                            .filter(then -> canBeLeftOut(either.then(), then))
                            .isPresent()
                    || so.whereNot(either.condition())
                            .filter(otherwise -> canBeLeftOut(either.otherwise(), otherwise))
                            .isPresent();
        }
        return formula.parts().stream().anyMatch(part -> canBeLeftOut(part, so));
    }

    private boolean isLeftOut(@Nullable Formula when, Possibilities so) {
        return when != null && (so.canFail(when) || canBeLeftOut(when, so));
    }
}

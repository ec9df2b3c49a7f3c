package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Computed;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.MonteCarlo;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.SecondOpinion;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A second opinion, by Monte Carlo (JCGM 101), on every computed number that a verdict leans on. The judge itself
 * propagates to first order, which is quick; this is for whoever writes a report.
 *
 * <p>Procedures come from strangers, so that the work is bounded: so many formulas are computed for all numbers together,
 * in the order of the checks. A number beyond that has no second opinion, which is counted.
 */
public final class Propagation {

    /** The work of a few seconds: formulas computed, over all trials. */
    static final long MOST_WORK = 20_000_000;

    private final Judgement judgement;
    private final Value[] slots;
    /** What trials write their values into: one for all numbers, since a graph may have very many slots. */
    private final Value[] drawn;

    private final Map<Integer, Integer> places = new HashMap<>();
    private final Map<Integer, Optional<Doubt>> known = new HashMap<>();
    private final IdentityHashMap<Formula, Long> sizes = new IdentityHashMap<>();
    private long work;
    private long steps;
    private final Map<String, Doubt> knownBetter = new LinkedHashMap<>();
    private int unchecked;

    /**
     * A number for which first order and the trials differ.
     *
     * @param number its name, or how it is written
     * @param estimate what first order says
     */
    public record Doubt(String number, Estimate estimate, SecondOpinion opinion) {}

    private Propagation(Judgement judgement, long mostWork) {
        this.judgement = judgement;
        this.work = mostWork;
        this.steps = mostWork;
        this.slots = judgement.slots();
        this.drawn = slots.clone();
        List<Node.Derived> derived = judgement.graph().derived();
        for (int i = 0; i < derived.size(); i++) {
            places.put(derived.get(i).slot(), i);
        }
    }

    /** The opinions on the numbers of a judgement; each is formed when it is asked for. */
    public static Propagation of(Judgement judgement) {
        return of(judgement, MOST_WORK);
    }

    /** The same, with so much work allowed in all. */
    static Propagation of(Judgement judgement, long mostWork) {
        return new Propagation(judgement, mostWork);
    }

    /** How many numbers were too much work for a second opinion, so far. */
    public int unchecked() {
        return unchecked;
    }

    /** Numbers that are known better than first order says, so far: no verdict claims too much by them. */
    public List<Doubt> knownBetter() {
        return List.copyOf(knownBetter.values());
    }

    /** The computed numbers that a check leans on of which first order claims to know more than is known. */
    public List<Doubt> doubts(Node.Check check) {
        JudgedNumbers judged = JudgedNumbers.of(check.requirement(), judgement.frame(check), this::derivedIn, steps);
        steps -= judged.steps();
        if (judged.numbers().isEmpty()) {
            unchecked++;
        }
        Map<String, Doubt> doubts = new TreeMap<>();
        List<Doubt> found = new ArrayList<>();
        for (Formula number : judged.numbers().orElse(List.of())) {
            leanedOn(number, check.rule()).stream()
                    .filter(doubt -> doubts.put(doubt.number(), doubt) == null)
                    .forEach(found::add);
        }
        return found;
    }

    private Optional<Node.Derived> derivedIn(int slot) {
        return Optional.ofNullable(places.get(slot)).map(judgement.graph().derived()::get);
    }

    /** The derived values on the way to a number, and at last the number itself. */
    private List<Doubt> leanedOn(Formula number, DecisionRule rule) {
        Optional<List<Node.Derived>> before = before(number);
        if (before.isEmpty()) {
            unchecked++;
            return List.of();
        }
        List<Doubt> doubts = new ArrayList<>();
        for (Node.Derived value : before.get()) {
            Optional<Doubt> doubt = known.get(value.slot());
            if (doubt == null) {
                Slot slot = new Slot(value.slot(), value.name());
                doubt = isNumber(value.type()) ? opinion(slot, judgement.graph().rule()) : Optional.empty();
                known.put(value.slot(), doubt);
            }
            doubt.ifPresent(doubts::add);
        }
        if (!(number instanceof Slot)) {
            opinion(number, rule).ifPresent(doubts::add);
        }
        return doubts;
    }

    private static boolean isNumber(Type type) {
        return type instanceof Type.Measure || type instanceof Type.Count;
    }

    private Optional<Doubt> opinion(Formula number, DecisionRule rule) {
        Frame frame = Frame.of(slots, rule, judgement.units());
        Optional<List<Node.Derived>> before = before(number);
        if (before.isEmpty()) {
            unchecked++;
            return Optional.empty();
        }
        if (!(Computed.number(number, frame) instanceof Value.Amount value)) {
            return Optional.empty();
        }
        MonteCarlo.Model model =
                new TrialModel(number, before.get(), drawn, judgement.graph().rule(), rule);
        long each = before.get().stream().mapToLong(one -> size(one.formula())).sum() + size(number);
        work -= each;
        if (work > 0 && !MonteCarlo.isUncertain(model)) {
            return Optional.empty();
        }
        long most = Math.min(MonteCarlo.ENOUGH, work / each);
        if (most < MonteCarlo.BATCH) {
            unchecked++;
            return Optional.empty();
        }
        SecondOpinion opinion = SecondOpinion.on(value.estimate(), model, (int) most);
        work -= each * opinion.trials();
        Doubt doubt = new Doubt(number.words(), value.estimate(), opinion);
        boolean grave = opinion.reachesFurther() || opinion.lacksValues();
        if (!grave && !opinion.agrees()) {
            knownBetter.putIfAbsent(doubt.number(), doubt);
        }
        return grave ? Optional.of(doubt) : Optional.empty();
    }

    /** The derived values that a number rests on, in their order; empty where they are too many for the work left. */
    private Optional<List<Node.Derived>> before(Formula number) {
        Map<Integer, Node.Derived> found = new TreeMap<>();
        Deque<Formula> open = new ArrayDeque<>(List.of(number));
        while (!open.isEmpty() && work > 0) {
            Formula formula = open.remove();
            work -= size(formula);
            if (work > 0) {
                formula.slots(slot -> derivedIn(slot)
                        .filter(value -> found.put(places.get(slot), value) == null)
                        .ifPresent(value -> open.add(value.formula())));
            }
        }
        return work > 0 ? Optional.of(List.copyOf(found.values())) : Optional.empty();
    }

    /** How many formulas are computed for one. Bodies of functions are shared, so each is counted once. */
    private long size(Formula formula) {
        Long size = sizes.get(formula);
        if (size == null) {
            size = Math.min(
                    MOST_WORK,
                    1 + formula.parts().stream().mapToLong(this::size).sum());
            sizes.put(formula, size);
        }
        return size;
    }
}

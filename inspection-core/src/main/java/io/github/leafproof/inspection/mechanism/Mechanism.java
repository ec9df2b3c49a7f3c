package io.github.leafproof.inspection.mechanism;

import io.github.leafproof.inspection.mechanism.Answer.Known;
import io.github.leafproof.inspection.mechanism.Answer.Refusal;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Slate;
import io.github.leafproof.inspection.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * One calculation of the trade, with everything that a reader may ask about it.
 *
 * <p>Values go in and come out in coherent SI units, whatever unit anybody wrote them in. How uncertain the answer is
 * follows from how uncertain the inputs are; the formula itself is taken as right, and what it leaves out is among the
 * {@link #assumptions()}.
 */
public final class Mechanism {
    private final String name;
    private final String meaning;
    private final List<Input> inputs;
    private final List<Bound> bounds;
    private final List<String> assumptions;
    private final String source;
    private final List<Quantity> example;
    private final Unit unit;
    private final String formula;
    private final ToDoubleFunction<double[]> model;

    private Mechanism(Draft draft, Unit unit, String formula, ToDoubleFunction<double[]> model) {
        this.name = draft.name;
        this.meaning = draft.meaning;
        this.inputs = List.copyOf(draft.inputs);
        this.bounds = List.copyOf(draft.bounds);
        this.assumptions = List.copyOf(draft.assumptions);
        this.source = draft.source;
        this.example = List.copyOf(draft.example);
        this.unit = unit;
        this.formula = formula;
        this.model = model;
    }

    /** Begins a calculation: what it is called in procedures, and what it tells. */
    static Draft called(String name, String meaning) {
        return new Draft(name, meaning);
    }

    /** A calculation being described. */
    static final class Draft {
        private final String name;
        private final String meaning;
        private List<Input> inputs = List.of();
        private final List<Bound> bounds = new ArrayList<>();
        private final List<String> assumptions = new ArrayList<>();
        private String source = "";
        private List<Quantity> example = List.of();

        private Draft(String name, String meaning) {
            this.name = name;
            this.meaning = meaning;
        }

        Draft takes(Input... all) {
            inputs = List.of(all);
            return this;
        }

        Draft where(Input input, Bound.Side side, String words, ToDoubleFunction<double[]> limit, String otherwise) {
            bounds.add(new Bound(input, side, words, limit, otherwise));
            return this;
        }

        Draft assuming(String... assumption) {
            assumptions.addAll(List.of(assumption));
            return this;
        }

        Draft source(String words) {
            source = words;
            return this;
        }

        Draft example(String... amounts) {
            example = List.of(amounts).stream().map(Quantity::parse).toList();
            return this;
        }

        /** Ends the description: the unit people speak of the result in, the formula in words and as a function. */
        Mechanism gives(String unit, String formula, ToDoubleFunction<double[]> model) {
            return new Mechanism(this, Unit.parse(unit), formula, model);
        }
    }

    /** What it is called in procedures: trade words joined by underscores. */
    public String name() {
        return name;
    }

    /** What it tells. */
    public String meaning() {
        return meaning;
    }

    /** What it takes, in order. */
    public List<Input> inputs() {
        return inputs;
    }

    /** What its inputs must be compared with each other, such as "rod must be above half the stroke". */
    public List<String> limits() {
        return bounds.stream().map(Bound::condition).toList();
    }

    /** What it leaves out; each belongs into the explanation of whatever rests on the answer. */
    public List<String> assumptions() {
        return assumptions;
    }

    /** Where the formula comes from. */
    public String source() {
        return source;
    }

    /** A worked example: one amount for each input. */
    public List<Quantity> example() {
        return example;
    }

    /** The unit in which people speak of the answer. */
    public Unit unit() {
        return unit;
    }

    /** What the answer is an amount of. */
    public Dimension result() {
        return unit.dimension();
    }

    /** The formula in writing. */
    public String formula() {
        return formula;
    }

    /** The answer for these amounts, one for each input, in order. */
    public Answer of(Estimate... given) {
        return of(List.of(given));
    }

    /**
     * The answer for these amounts, one for each input, in order.
     *
     * @throws IllegalArgumentException when there are more or fewer, or one is an amount of something else
     */
    public Answer of(List<Estimate> given) {
        demandKinds(given.stream().map(Estimate::dimension).toList());
        double[] values = given.stream().mapToDouble(Estimate::value).toArray();
        Optional<Refusal> refusal = refusal(values);
        if (refusal.isPresent()) {
            return refusal.get();
        }
        if (!Double.isFinite(model.applyAsDouble(values))) {
            return new Refusal(name, "", "the formula has no answer for these amounts");
        }
        return new Known(Estimate.through(model, result(), given));
    }

    /**
     * The answer for amounts on a slate, where nobody asks for the reason if there is none.
     *
     * @param into the line for the answer
     * @param given the lines of the amounts, one for each input, in order, each of them the kind of amount that is asked for
     * @param spare one more line to calculate on
     * @return whether there is an answer
     */
    public boolean on(Slate slate, int into, int[] given, int spare) {
        double[] values = slate.values(given);
        return takes(values)
                && Double.isFinite(model.applyAsDouble(values))
                && slate.through(into, model, given, spare);
    }

    private boolean takes(double[] values) {
        for (int i = 0; i < values.length; i++) {
            if (inputs.get(i).refused(values[i]).isPresent()) {
                return false;
            }
        }
        for (int i = 0; i < bounds.size(); i++) {
            Bound bound = bounds.get(i);
            if (bound.refused(values, inputs.indexOf(bound.input())).isPresent()) {
                return false;
            }
        }
        return true;
    }

    private void demandKinds(List<Dimension> given) {
        List<Dimension> wanted = inputs.stream().map(Input::dimension).toList();
        if (!wanted.equals(given)) {
            throw new IllegalArgumentException(name + " takes " + wanted + ", not " + given);
        }
    }

    private Optional<Refusal> refusal(double[] values) {
        for (int i = 0; i < values.length; i++) {
            Input input = inputs.get(i);
            Optional<String> words = input.refused(values[i]);
            if (words.isPresent()) {
                return words.map(why -> new Refusal(name, input.name(), why));
            }
        }
        return bounds.stream()
                .flatMap(bound -> bound.refused(values, inputs.indexOf(bound.input())).stream()
                        .map(why -> new Refusal(name, bound.input().name(), why)))
                .findFirst();
    }

    /** The name. */
    @Override
    public String toString() {
        return name;
    }
}

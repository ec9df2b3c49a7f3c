package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Chosen;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.IfElse;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.Shown;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Goes down into a condition to the part that made it come out as it did, and notes which cases counted on the way. */
final class Descent {

    private final Judgement judgement;
    private final String check;
    private final Outcome expected;
    private final List<Parting.Link> turns = new ArrayList<>();
    private Formula formula;
    private Frame frame;

    private Descent(Judgement judgement, String check, Outcome expected, Formula formula, Frame frame) {
        this.judgement = judgement;
        this.check = check;
        this.expected = expected;
        this.formula = formula;
        this.frame = frame;
    }

    /** From a condition of a check down to the part that tells. */
    static Descent from(Judgement judgement, String check, Outcome expected, Formula formula, Frame frame) {
        Descent descent = new Descent(judgement, check, expected, formula, frame);
        while (descent.goesDown()) {
            // Each step is one formula further in.
        }
        return descent;
    }

    /** The values and cases that were gone through; one of them may be where the ways part. */
    List<Parting.Link> turns() {
        return turns;
    }

    /** The part that tells. */
    Formula formula() {
        return formula;
    }

    /** What it is evaluated in. */
    Frame frame() {
        return frame;
    }

    private boolean goesDown() {
        if (formula instanceof Joined joined) {
            return joined.telling(frame).map(this::into).orElse(false);
        }
        if (formula instanceof LimitsHeld held) {
            limit(held.lower(), held::withLower);
            limit(held.upper(), held::withUpper);
            return false;
        }
        if (formula instanceof IfElse || formula instanceof Chosen) {
            return choice(formula)
                    .map(choice -> turn(choice, UnaryOperator.identity()))
                    .map(this::into)
                    .orElseGet(() -> formula instanceof IfElse either && into(either.condition()));
        }
        return derived(formula).map(this::intoValue).orElse(false);
    }

    private boolean into(Formula part) {
        formula = part;
        return true;
    }

    private boolean intoValue(Node.Derived derived) {
        turns.add(Parting.Link.of(
                Parting.Kind.VALUE,
                check,
                derived.name() + " = " + derived.formula().words(),
                Shown.measured(formula.value(frame), frame.units())));
        frame = judgement.frame();
        return into(derived.formula());
    }

    private Optional<Node.Derived> derived(Formula name) {
        return name instanceof Slot slot && judgement.graph().readBy(slot).get(0) instanceof Node.Derived derived
                ? Optional.of(derived)
                : Optional.empty();
    }

    /**
     * One of several cases.
     *
     * @param what what tells which
     * @param counts the one that counts
     * @param others the ones that do not
     */
    private record Choice(String what, Formula counts, List<Formula> others) {}

    private Optional<Choice> choice(Formula of) {
        if (of instanceof IfElse either && either.condition().value(frame) instanceof Value.Judged judged) {
            String condition = either.condition().words();
            if (judged.holds()) {
                return Optional.of(new Choice(condition + " holds", either.then(), List.of(either.otherwise())));
            }
            return judged.outcome() == Outcome.FAILS
                    ? Optional.of(new Choice(condition + " does not hold", either.otherwise(), List.of(either.then())))
                    : Optional.empty();
        }
        if (of instanceof Chosen chosen && chosen.subject().value(frame) instanceof Value.Pick pick) {
            Formula arm = chosen.arm(frame);
            return Optional.of(new Choice(
                    chosen.subject().words() + " is " + pick.word(),
                    arm,
                    chosen.arms().stream().filter(other -> other != arm).toList()));
        }
        return Optional.empty();
    }

    /** A limit may be one of several, and another of them may have been meant. */
    private void limit(@Nullable Formula limit, UnaryOperator<Formula> withOther) {
        Optional<Formula> named = Optional.ofNullable(limit);
        while (named.flatMap(this::derived).isPresent()) {
            named = named.flatMap(this::derived).map(Node.Derived::formula);
        }
        named.flatMap(this::choice).ifPresent(choice -> turn(choice, withOther));
    }

    /** Notes which case counted; if another would have come out as expected, this is where the ways part. */
    private Formula turn(Choice choice, UnaryOperator<Formula> whole) {
        List<String> would = choice.others().stream()
                .filter(other ->
                        whole.apply(other).value(frame) instanceof Value.Judged judged && judged.outcome() == expected)
                .findFirst()
                .map(other -> List.of("with " + other.words() + " instead it would have come out as expected"))
                .orElse(List.of());
        Parting.Link link = Parting.Link.of(
                        Parting.Kind.ARM, check, choice.what(), choice.counts().words() + " counts")
                .with(would);
        boolean first = turns.stream().noneMatch(Parting.Link::parts);
        turns.add(would.isEmpty() || !first ? link : link.parting());
        return choice.counts();
    }
}

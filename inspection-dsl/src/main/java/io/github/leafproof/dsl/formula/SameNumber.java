package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import java.util.List;

/**
 * Whether a number is, or is not, exactly another. What was counted or stated is or is not; of what was measured nobody can
 * tell, to the last digit, so that it stays open.
 *
 * @param same whether they must be the same, or must not
 */
public record SameNumber(Formula subject, Formula other, boolean same) implements Formula {

    private static final Value.Judged CANNOT_BE_TOLD = new Value.Judged(Outcome.OPEN, Conformity.unknown(), Side.NONE);

    @Override
    public Value value(Frame frame) {
        Value number = Computed.number(subject, frame);
        Value with = Computed.number(other, frame);
        if (!(number instanceof Value.Amount one && with instanceof Value.Amount two)) {
            return Value.Missing.of(List.of(number, with));
        }
        Estimate limit = two.estimate();
        return one.estimate().minus(limit).isExact()
                ? Value.Judged.certain(isAt(one.estimate(), limit) == same)
                : CANNOT_BE_TOLD;
    }

    /** To the last bits of a calculation. */
    private static boolean isAt(Estimate number, Estimate limit) {
        Estimate bare = Estimate.exact(number.value(), number.dimension());
        return Conformity.ofReading(bare, LimitsHeld.exactly(limit, limit)).low() == 1;
    }

    private String relation() {
        return same ? " is " : " is not ";
    }

    @Override
    public String words() {
        return subject.words() + relation() + other.words();
    }

    @Override
    public List<Formula> parts() {
        return List.of(subject, other);
    }

    @Override
    public void account(Frame frame, Account account) {
        account.requires(subject.words() + relation() + Shown.limit(other, frame));
        account.measures(subject, frame);
        if (value(frame) instanceof Value.Judged judged && judged.outcome() == Outcome.OPEN) {
            account.says(subject.words() + " is " + Shown.measured(Computed.number(subject, frame), frame.units())
                    + ": of a measured number nobody can tell whether it is exactly " + Shown.limit(other, frame));
        }
    }
}

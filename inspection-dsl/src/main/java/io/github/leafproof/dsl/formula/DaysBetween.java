package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Unit;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** The time from one day to another, in whole days of 24 hours: {@code due - made}. */
public record DaysBetween(Formula later, Formula earlier) implements Formula {

    private static final Unit DAY = Unit.parse("d");

    @Override
    public Value value(Frame frame) {
        Value to = later.value(frame);
        Value from = earlier.value(frame);
        if (!(to instanceof Value.Day end && from instanceof Value.Day start)) {
            return Value.Missing.of(List.of(to, from));
        }
        long days = ChronoUnit.DAYS.between(start.day(), end.day());
        return new Value.Amount(Value.Amount.stated(Quantity.of(days, DAY)).estimate(), DAY);
    }

    @Override
    public String words() {
        return later.words() + " - " + earlier.words();
    }

    @Override
    public List<Formula> parts() {
        return List.of(later, earlier);
    }
}

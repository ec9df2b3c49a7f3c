package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Series;
import java.util.List;

/** A statistic of repeated readings: {@code mean(rpm)}. Too few readings are a reason to take more. */
public record OfReadings(Statistic statistic, Formula readings) implements Formula {

    @Override
    public Value value(Frame frame) {
        Value value = readings.value(frame);
        if (!(value instanceof Value.Readings given)) {
            return value;
        }
        Estimate found = given.statistics().get(statistic);
        return found == null ? tooFew(given.series()) : Value.Amount.of(found);
    }

    private Value tooFew(Series series) {
        String had = series.count() == 1 ? "one reading" : series.count() + " readings";
        return Value.Missing.of(
                Value.Lack.Kind.NOT_ENTERED,
                readings.words(),
                "has " + had + ", and its " + statistic.word() + " takes " + statistic.fewest() + " at least");
    }

    @Override
    public String words() {
        return statistic.word() + "(" + readings.words() + ")";
    }

    @Override
    public List<Formula> parts() {
        return List.of(readings);
    }
}

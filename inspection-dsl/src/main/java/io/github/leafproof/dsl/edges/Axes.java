package io.github.leafproof.dsl.edges;

import io.github.leafproof.dsl.formula.Statistic;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.GaugeNeed;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.syntax.Declaration.Entered;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.gauge.ReadingInstrument;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.QuantityException;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.record.Given;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The axes along which an entry can be varied. A number goes by the steps that its gauge shows, or where that is not known by
 * units of its last digit; a count by one; a day by a day; a grade by the next one. Readings of a series are moved together,
 * and there may be more or fewer of them.
 */
final class Axes {

    private static final int MOST_READINGS = 200;

    private Axes() {}

    /**
     * The axes of an entry.
     *
     * @param used what is computed of the readings of a series, so that they are varied in what counts
     */
    static List<Axis> of(Node.Observation observation, Entered entered, GaugeTray tray, Set<Statistic> used) {
        if (entered instanceof Entered.Amount amount && observation.type() instanceof Type.Count) {
            return List.of(new Counted(new BigDecimal(amount.number()).longValue()));
        } else if (entered instanceof Entered.Amount amount) {
            BigDecimal number = new BigDecimal(amount.number());
            BigDecimal step = step(observation, tray, amount.unit()).orElse(number.ulp());
            return List.of(
                    new Measured(number.divide(step, 0, RoundingMode.HALF_EVEN).longValue(), step, amount.unit()));
        } else if (entered instanceof Entered.Quoted quoted && observation.type() instanceof Type.Date) {
            return day(quoted.text().plain());
        } else if (observation.type() instanceof Type.Choice choice && choice.graded()) {
            return List.of(new Graded(choice.options(), choice.options().indexOf(Alternatives.chosen(entered))));
        } else if (entered instanceof Entered.Readings readings) {
            return ofReadings(observation, readings, tray, used);
        }
        return List.of();
    }

    /** What the gauge shows as its smallest step, in the unit that is entered. */
    private static Optional<BigDecimal> step(Node.Observation observation, GaugeTray tray, String unit) {
        GaugeNeed need = observation.gauge();
        Quantity resolution =
                need != null && tray.gauge(need.name()).orElse(null) instanceof ReadingInstrument instrument
                        ? instrument.resolution()
                        : null;
        if (resolution == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    new BigDecimal(resolution.in(Unit.parse(unit).difference()).number()));
        } catch (QuantityException | NumberFormatException noDecimal) {
            // A step of a third of the unit that is entered: nobody reads that off as a decimal.
            return Optional.empty();
        }
    }

    private static List<Axis> day(String written) {
        try {
            return List.of(new Days(LocalDate.parse(written).toEpochDay()));
        } catch (DateTimeException none) {
            return List.of();
        }
    }

    private static List<Axis> ofReadings(
            Node.Observation observation, Entered.Readings entered, GaugeTray tray, Set<Statistic> used) {
        List<Expression.Amount> readings = entered.readings();
        String unit = readings.get(0).unit();
        if (!readings.stream().allMatch(reading -> reading.unit().equals(unit))) {
            return List.of();
        }
        List<BigDecimal> numbers = readings.stream()
                .map(reading -> new BigDecimal(reading.number()))
                .toList();
        BigDecimal step = observation.type() instanceof Type.Series series && series.of() instanceof Type.Count
                ? BigDecimal.ONE
                : step(observation, tray, unit).orElse(numbers.get(0).ulp());
        return used.stream()
                .sorted()
                .<Axis>map(statistic -> statistic == Statistic.COUNT
                        ? new HowMany(numbers, unit)
                        : new Moved(numbers, step, unit, statistic))
                .toList();
    }

    private static String text(BigDecimal number, String unit) {
        return unit.isEmpty() ? number.toPlainString() : number.toPlainString() + " " + unit;
    }

    private record Counted(long start) implements Axis {
        @Override
        public @Nullable Change at(long step) {
            return step < 0 ? null : Change.of(new Given.Count(BigDecimal.valueOf(step)), String.valueOf(step));
        }
    }

    private record Measured(long start, BigDecimal by, String unit) implements Axis {
        @Override
        public Change at(long step) {
            BigDecimal number = by.multiply(BigDecimal.valueOf(step));
            String text = text(number, unit);
            return Change.of(unit.isEmpty() ? new Given.Count(number) : new Given.Words(text), text);
        }
    }

    private record Days(long start) implements Axis {
        @Override
        public @Nullable Change at(long step) {
            if (Math.abs(step) > 1_000_000) {
                return null;
            }
            String day = LocalDate.ofEpochDay(step).toString();
            return Change.of(new Given.Words(day), "\"" + day + "\"");
        }
    }

    private record Graded(List<String> grades, long start) implements Axis {
        @Override
        public @Nullable Change at(long step) {
            return step < 0 || step >= grades.size() ? null : Alternatives.option(grades.get((int) step));
        }
    }

    /** All readings moved: by as much for their mean, each further than the one before for their slope, to and fro for their spread. */
    private record Moved(List<BigDecimal> numbers, BigDecimal by, String unit, Statistic statistic) implements Axis {
        @Override
        public long start() {
            return 0;
        }

        @Override
        public Change at(long step) {
            List<BigDecimal> moved = new ArrayList<>();
            for (int i = 0; i < numbers.size(); i++) {
                int times = statistic == Statistic.SLOPE ? i : statistic == Statistic.SPREAD && i % 2 == 1 ? -1 : 1;
                moved.add(
                        numbers.get(i).add(by.multiply(BigDecimal.valueOf(step).multiply(BigDecimal.valueOf(times)))));
            }
            BigDecimal last = moved.get(moved.size() - 1);
            return series(moved, unit, "from " + text(moved.get(0), unit) + " to " + text(last, unit));
        }
    }

    /** So many of the readings, from the first on; more of them go round again. */
    private record HowMany(List<BigDecimal> numbers, String unit) implements Axis {
        @Override
        public long start() {
            return numbers.size();
        }

        @Override
        public @Nullable Change at(long step) {
            if (step < 1 || step > MOST_READINGS) {
                return null;
            }
            List<BigDecimal> some = new ArrayList<>();
            for (int i = 0; i < step; i++) {
                some.add(numbers.get(i % numbers.size()));
            }
            return series(some, unit, step == 1 ? "of one reading" : "of " + step + " readings");
        }
    }

    private static Change series(List<BigDecimal> numbers, String unit, String name) {
        List<String> texts = numbers.stream().map(number -> text(number, unit)).toList();
        return new Change(new Given.Series(texts), "series " + String.join(", ", texts), name);
    }
}

package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.clearance.FeelTrial;
import io.github.leafproof.inspection.clearance.GapEvidence;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Feeler;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.gauge.ReadingInstrument;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.QuantityException;
import io.github.leafproof.inspection.quantity.Series;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.record.TrialGiven;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What an entry means: its text or number, taken for the type of its observation and the gauge it was made with. */
final class EntryReader {

    private final SheetProblems problems;
    private final Function<String, @Nullable Gauge> gauges;

    EntryReader(SheetProblems problems, Function<String, @Nullable Gauge> gauges) {
        this.problems = problems;
        this.gauges = gauges;
    }

    /** The value of an entry, or null after saying why it makes none. */
    @Nullable
    Value value(Node.Observation observation, Entry entry) {
        Given given = entry.given();
        Type type = observation.type();
        if (given instanceof Given.Cannot cannot) {
            return Value.Missing.of(
                    Value.Lack.Kind.CANNOT, observation.name(), "could not be observed: " + cannot.why());
        }
        if (type instanceof Type.Gap && given instanceof Given.Trials trials) {
            return felt(observation, trials);
        }
        if (type instanceof Type.YesNo && given instanceof Given.Flag flag) {
            return Value.Judged.certain(flag.yes());
        }
        if (type instanceof Type.Items && given instanceof Given.Items items) {
            return new Value.Things(items.items());
        }
        if (type instanceof Type.Text && given instanceof Given.Words words) {
            return new Value.Words(words.text());
        }
        if (type instanceof Type.Date && given instanceof Given.Words words) {
            return day(words.text(), entry);
        }
        if (type instanceof Type.Choice choice && given instanceof Given.Words words) {
            return pick(choice, words.text(), entry);
        }
        if (type instanceof Type.Count && given instanceof Given.Count count) {
            return count(count.number(), entry);
        }
        if (type instanceof Type.Series series && given instanceof Given.Series readings) {
            return series(observation, series.of(), readings, entry);
        }
        if (type instanceof Type.Measure measure) {
            return measured(observation, measure.dimension(), entry);
        }
        problems.otherKind(entry, observation);
        return null;
    }

    private @Nullable Value pick(Type.Choice choice, String word, Entry entry) {
        int option = choice.options().indexOf(word);
        if (option < 0) {
            problems.noOption(entry, word, choice.options());
            return null;
        }
        return new Value.Pick(option, word);
    }

    private @Nullable Value day(String text, Entry entry) {
        try {
            return new Value.Day(LocalDate.parse(text));
        } catch (DateTimeException noDay) {
            problems.noDay(entry, text);
            return null;
        }
    }

    private @Nullable Value count(BigDecimal number, Entry entry) {
        boolean whole = number.signum() >= 0 && number.stripTrailingZeros().scale() <= 0;
        if (!whole || number.compareTo(BigDecimal.valueOf(1_000_000_000)) > 0) {
            problems.noCount(entry, number.toPlainString());
            return null;
        }
        return Value.Amount.stated(Quantity.of(number.longValueExact(), Unit.ONE));
    }

    private @Nullable Value measured(Node.Observation observation, Dimension dimension, Entry entry) {
        Quantity shown = quantity(observation, entry);
        if (shown == null) {
            return null;
        }
        if (!shown.dimension().equals(dimension)) {
            problems.otherDimension(entry, shown, dimension);
            return null;
        }
        return gauge(observation) instanceof ReadingInstrument instrument
                ? Value.Amount.of(instrument.read(shown, observation.name()))
                : Value.Amount.stated(shown);
    }

    /** Readings as they were taken; everything that is wrong with one of them is said. */
    private @Nullable Value series(Node.Observation observation, Type of, Given.Series given, Entry entry) {
        List<Quantity> readings = new ArrayList<>();
        for (String text : given.readings()) {
            Quantity reading = parsed(text, entry);
            if (reading != null && isOf(of, reading, entry)) {
                readings.add(reading);
            }
        }
        if (readings.size() < given.readings().size()) {
            return null;
        }
        return new Value.Readings(
                gauge(observation) instanceof ReadingInstrument instrument
                        ? instrument.read(readings, observation.name())
                        : Series.of(observation.name(), readings));
    }

    private boolean isOf(Type of, Quantity reading, Entry entry) {
        Dimension dimension = of.inArithmetic().orElseThrow();
        if (!reading.dimension().equals(dimension)) {
            problems.otherDimension(entry, reading, dimension);
            return false;
        }
        boolean counted = reading.base() >= 0 && reading.base() == Math.rint(reading.base());
        if (of instanceof Type.Count && !counted) {
            problems.noCount(entry, reading.toString());
            return false;
        }
        return true;
    }

    private @Nullable Gauge gauge(Node.Observation observation) {
        return observation.gauge() == null
                ? null
                : gauges.apply(observation.gauge().name());
    }

    private @Nullable Quantity parsed(String text, Entry entry) {
        try {
            return Quantity.parse(text);
        } catch (QuantityException wrong) {
            problems.noQuantity(entry, wrong);
            return null;
        }
    }

    private @Nullable Quantity quantity(Node.Observation observation, Entry entry) {
        if (entry.given() instanceof Given.Words words) {
            return parsed(words.text(), entry);
        }
        if (entry.given() instanceof Given.Count count) {
            return parsed(count.number().toString(), entry);
        }
        problems.otherKind(entry, observation);
        return null;
    }

    private @Nullable Value felt(Node.Observation observation, Given.Trials trials) {
        GaugeNeed need = observation.gauge();
        if (need == null || !(gauges.apply(need.name()) instanceof FeelSet set)) {
            return null;
        }
        List<FeelTrial> read = new ArrayList<>();
        for (TrialGiven trial : trials.trials()) {
            Feeler feeler = feeler(set, trial);
            if (feeler != null) {
                read.add(FeelTrial.of(feeler, trial.result(), set));
            }
        }
        boolean allRead = read.size() == trials.trials().size();
        return allRead ? new Value.Felt(observation.name(), new GapEvidence(read), set) : null;
    }

    private @Nullable Feeler feeler(FeelSet set, TrialGiven trial) {
        List<Quantity> markings = new ArrayList<>();
        for (String text : trial.leaves()) {
            Quantity marking = marking(set, text, trial);
            if (marking == null) {
                return null;
            }
            markings.add(marking);
        }
        Optional<Feeler> feeler = set.feeler(markings);
        if (feeler.isEmpty()) {
            problems.noFeeler(trial, set);
        }
        return feeler.orElse(null);
    }

    /** A marking; without a unit it is meant in the unit that the set is marked in. */
    private @Nullable Quantity marking(FeelSet set, String text, TrialGiven trial) {
        try {
            Quantity marking = Quantity.parse(text);
            return marking.dimension().isRatio()
                    ? Quantity.of(marking.number(), set.leaves().get(0).marked().unit())
                    : marking;
        } catch (QuantityException wrong) {
            problems.noMarking(trial, text, wrong);
            return null;
        }
    }
}

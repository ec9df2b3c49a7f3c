package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.formula.Value.Lack;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.Given;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads all entries for one observation: what each of them says, and what they say together. */
final class StatementsReader {

    private final SheetProblems problems;
    private final EntryReader reader;

    /**
     * Reads with the gauges of a tray.
     *
     * @param gauges the gauge of a name; null where there is none that the procedure can do with
     */
    StatementsReader(SheetProblems problems, Function<String, @Nullable Gauge> gauges) {
        this.problems = problems;
        this.reader = new EntryReader(problems, gauges);
    }

    /** Entries in order; an adjustment parts what was found from what was left, and a correction unsays the one before. */
    Entered.Said said(Node.Observation observation, List<Entry> entries) {
        List<Value> found = null;
        List<Value> current = new ArrayList<>();
        List<Evidence.Statement> said = new ArrayList<>();
        boolean readable = true;
        for (Entry entry : entries) {
            if (entry.given() instanceof Given.Adjusted) {
                found = found == null ? current : found;
                current = new ArrayList<>();
                said.add(new Evidence.Statement(entry, new Value.Words("adjusted"), false));
                continue;
            }
            if (entry.corrects() && readable) {
                unsayLast(said, current, entry);
            } else if (!current.isEmpty() && !isAddedTo(observation.type())) {
                problems.observedTwice(entry);
            }
            Value value = reader.value(observation, entry);
            readable = value != null;
            if (value != null) {
                current.add(value);
                said.add(new Evidence.Statement(entry, value, false));
            }
        }
        Value left = together(observation, current, found != null);
        Value before = found == null ? left : together(observation, found, false);
        if (isFarTooMuch(left) || isFarTooMuch(before)) {
            problems.farTooMuch(entries.get(entries.size() - 1));
        }
        return new Entered.Said(said, before, left);
    }

    /** Whether what is entered later adds to what was entered before. */
    private static boolean isAddedTo(Type type) {
        return type instanceof Type.Gap || type instanceof Type.Series;
    }

    private void unsayLast(List<Evidence.Statement> said, List<Value> current, Entry entry) {
        if (current.isEmpty()) {
            problems.correctsNothing(entry);
            return;
        }
        current.remove(current.size() - 1);
        Evidence.Statement last = said.get(said.size() - 1);
        said.set(said.size() - 1, new Evidence.Statement(last.entry(), last.value(), true));
    }

    /** What several entries say together: trials of a gap and readings of a series add up, anything else is said once. */
    private static Value together(Node.Observation observation, List<Value> values, boolean afterAdjustment) {
        if (values.isEmpty()) {
            if (afterAdjustment) {
                return Value.Missing.of(
                        Lack.Kind.NOT_ENTERED, observation.name(), "was adjusted and not observed again");
            }
            return observation.optional()
                    ? Value.Missing.of(Lack.Kind.NOT_ASKED, observation.name(), "was left out, as it may be")
                    : Value.Missing.of(Lack.Kind.NOT_ENTERED, observation.name(), "was not entered");
        }
        if (values.size() == 1) {
            return values.get(0);
        }
        // That a leaf could not be offered any more takes nothing from what was felt before.
        return Value.Felt.together(values)
                .or(() -> Value.Readings.together(values))
                .orElse(values.get(values.size() - 1));
    }

    /** Each check that reads a value goes through all of it, so that what nobody enters by hand is refused. */
    private static boolean isFarTooMuch(Value value) {
        return (value instanceof Value.Felt felt && felt.evidence().trials().size() > SheetProblems.MOST_TRIALS)
                || (value instanceof Value.Readings readings
                        && readings.series().count() > SheetProblems.MOST_READINGS)
                || (value instanceof Value.Things things && things.items().size() > SheetProblems.MOST_ITEMS);
    }
}

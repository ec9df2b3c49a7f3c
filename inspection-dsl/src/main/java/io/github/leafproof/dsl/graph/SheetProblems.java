package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.gauge.PinSet;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.QuantityException;
import io.github.leafproof.inspection.quantity.Spelling;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.TrialGiven;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What in a sheet, a tray or a card does not go together with the procedure. The codes, 66x and 67x of the files', stand
 * in docs/formats.md with those that a file shows by itself.
 */
final class SheetProblems {

    static final int MOST_TRIALS = 200;
    static final int MOST_READINGS = 10_000;
    static final int MOST_ITEMS = 1_000;

    /** Whoever has so many to mend needs no more of them. */
    private static final int MOST_PROBLEMS = 500;

    private final Evidence.Sources sources;
    private final String sheet;
    private final List<Problem> found = new ArrayList<>();

    SheetProblems(Evidence.Sources sources) {
        this.sources = sources;
        this.sheet = sources.sheet().name();
    }

    boolean any() {
        return !found.isEmpty();
    }

    /** Whether there are as many as are told. */
    boolean areMany() {
        return found.size() >= MOST_PROBLEMS;
    }

    /** The first ones; where there may be more, the last says so. */
    List<Problem> all() {
        List<Problem> told = new ArrayList<>(found);
        if (areMany()) {
            told.add(new Problem(
                    "LP609",
                    sheet,
                    "",
                    "there may be more problems than the " + MOST_PROBLEMS + " shown",
                    "mend these first"));
        }
        return List.copyOf(told);
    }

    private void add(String code, String file, String place, String message, @Nullable String help) {
        if (!areMany()) {
            found.add(new Problem(code, file, place, message, help));
        }
    }

    void otherProcedure(String given, String wanted) {
        add(
                "LP671",
                sheet,
                sources.sheet().place("$.procedure"),
                "the sheet is for the procedure " + given + ", not for " + wanted,
                "judge it with " + given + ", or begin a sheet for " + wanted);
    }

    void otherRevision(String name, int given, int wanted) {
        add(
                "LP672",
                sheet,
                sources.sheet().place("$.revision"),
                "the sheet is for revision " + given + " of " + name + ", and this is revision " + wanted,
                "judge it with the revision it was made for; after looking through what changed, set its revision to "
                        + wanted);
    }

    void otherFact(String card, String place, String message, String remedy) {
        add("LP668", card, place, message, remedy);
    }

    void doesNotApply(String card, String procedure, String condition) {
        add(
                "LP669",
                card,
                "",
                procedure + " is not for this engine: it applies when " + condition,
                "take the procedure that is for it");
    }

    void mayNotApply(String card, String procedure, String lacking) {
        add(
                "LP670",
                card,
                "",
                "it cannot be told whether " + procedure + " is for this engine: " + lacking,
                "state it, or take another procedure");
    }

    void noGauge(GaugeNeed need, List<String> known) {
        add(
                "LP673",
                sources.tray().name(),
                sources.tray().place("$.gauges"),
                "the tray has no gauge called " + need.name() + ", which must be " + need.words(),
                nearest(need.name(), known, "add it to the tray"));
    }

    void otherGauge(GaugeNeed need, Gauge gauge) {
        add(
                "LP674",
                sources.tray().name(),
                sources.tray().place("$.gauges"),
                need.name() + " must be " + need.words() + ", and the tray's is "
                        + GaugeNeed.metBy(gauge).words(),
                "name another gauge in the procedure, or correct the tray");
    }

    void noVariant(String variant, String model, Collection<String> known) {
        String all = known.isEmpty() ? "the card has none" : "the card has " + String.join(", ", known);
        add(
                "LP675",
                sheet,
                sources.sheet().place("$.engine.variant"),
                "the card of " + model + " has no variant " + variant,
                nearest(variant, known, all + "; unknown is an answer too"));
    }

    void noObservation(Entry entry, Optional<String> nearest) {
        if (!areMany()) {
            found.add(noObservation(sheet, entry, nearest));
        }
    }

    static Problem noObservation(String sheet, Entry entry, Optional<String> nearest) {
        return new Problem(
                "LP676",
                sheet,
                entry.place(),
                "the procedure observes nothing called " + entry.observe(),
                nearest.map(near -> "did you mean " + near + "?").orElse(null));
    }

    void observedTwice(Entry entry) {
        add(
                "LP677",
                sheet,
                entry.place(),
                entry.observe() + " is entered twice",
                "mark this entry as a correction (\"corrects\": true), or enter between them what was adjusted");
    }

    void correctsNothing(Entry entry) {
        add("LP653", sheet, entry.place(), "there is no entry of " + entry.observe() + " before it to correct", null);
    }

    void farTooMuch(Entry entry) {
        add(
                "LP667",
                sheet,
                entry.place(),
                "with this entry more is given for " + entry.observe() + " than anybody enters",
                "an observation takes " + MOST_TRIALS + " trials, " + MOST_READINGS + " readings or " + MOST_ITEMS
                        + " items at most; enter what settles it");
    }

    void otherKind(Entry entry, Node.Observation observation) {
        add(
                "LP678",
                sheet,
                entry.place(),
                entry.observe() + " asks for " + wanted(observation.type()) + ", and the entry gives "
                        + given(entry.given()),
                "enter it as " + example(observation.type()));
    }

    private static String wanted(Type type) {
        if (type instanceof Type.Measure measure) {
            return measure.dimension().isRatio()
                    ? "a number"
                    : measure.dimension().phrase();
        }
        if (type instanceof Type.Choice choice) {
            return "one of " + String.join(", ", choice.options());
        }
        if (type instanceof Type.Gap) {
            return "trials of leaves or pins";
        }
        if (type instanceof Type.Items) {
            return "a list of things";
        }
        if (type instanceof Type.Series || type instanceof Type.Date) {
            return "a " + type.words();
        }
        return type instanceof Type.YesNo ? "yes or no" : type instanceof Type.Count ? "a whole number" : "words";
    }

    private static String given(Given given) {
        if (given instanceof Given.Words words) {
            return "\"" + words.text() + "\"";
        }
        if (given instanceof Given.Flag flag) {
            return flag.yes() ? "yes (true)" : "no (false)";
        }
        if (given instanceof Given.Count count) {
            return "the bare number " + count.number();
        }
        if (given instanceof Given.Trials) {
            return "trials of leaves or pins";
        }
        return given instanceof Given.Items ? "a list of things" : "a series of readings";
    }

    private static String example(Type type) {
        if (type instanceof Type.Gap) {
            return "\"trials\": [ { \"leaf\": \"0.05 mm\", \"result\": \"passes\" } ]";
        }
        if (type instanceof Type.YesNo) {
            return "\"value\": true";
        }
        if (type instanceof Type.Items) {
            return "\"items\": [ \"engine\" ]";
        }
        if (type instanceof Type.Date) {
            return "\"value\": \"2026-03-04\"";
        }
        if (type instanceof Type.Series series) {
            return series.of().inArithmetic().orElseThrow().isRatio()
                    ? "\"series\": [ 3, 4 ]"
                    : "\"series\": [ \"…\", \"…\" ], each a number and its unit";
        }
        if (type instanceof Type.Count) {
            return "\"value\": 3";
        }
        if (type instanceof Type.Choice choice) {
            return "\"value\": \"" + choice.options().get(0) + "\"";
        }
        return type instanceof Type.Measure ? "\"value\": \"…\", a number and its unit" : "\"value\": \"…\"";
    }

    void noOption(Entry entry, String word, List<String> options) {
        add(
                "LP679",
                sheet,
                entry.place(),
                entry.observe() + " cannot be " + word,
                nearest(word, options, "it is one of " + String.join(", ", options)));
    }

    void noCount(Entry entry, String number) {
        add(
                "LP624",
                sheet,
                entry.place(),
                number + " is no count; " + entry.observe() + " is a whole number from 0",
                null);
    }

    void noDay(Entry entry, String text) {
        add(
                "LP625",
                sheet,
                entry.place(),
                entry.observe() + " is a date, and \"" + text + "\" is none",
                "write year, month and day, such as 2026-03-04");
    }

    void otherDimension(Entry entry, Quantity shown, Dimension wanted) {
        add(
                "LP622",
                sheet,
                entry.place(),
                entry.observe() + " is " + named(wanted) + ", and " + shown + " is " + named(shown.dimension()),
                shown.dimension().isRatio() ? "write the unit behind the number" : "enter " + named(wanted));
    }

    private static String named(Dimension dimension) {
        return dimension.isRatio() ? "a plain number" : dimension.phrase();
    }

    void noQuantity(Entry entry, QuantityException wrong) {
        add("LP621", sheet, entry.place(), wrong.problem(), wrong.remedy());
    }

    void noMarking(TrialGiven trial, String text, QuantityException wrong) {
        add("LP621", sheet, trial.place(), "\"" + text + "\" is no marking: " + wrong.problem(), wrong.remedy());
    }

    void noFeeler(TrialGiven trial, FeelSet set) {
        String offered = String.join(" + ", trial.leaves());
        String marked = String.join(", ", set.leaves().stream().map(Leaf::label).toList());
        add(
                "LP680",
                sheet,
                trial.place(),
                set.name() + " cannot offer " + offered,
                "it holds " + marked
                        + (set instanceof PinSet
                                ? "; pins are offered one at a time"
                                : "; leaves can be stacked, each of them once"));
    }

    private static String nearest(String word, Collection<String> known, String otherwise) {
        return Spelling.nearest(word, known)
                .map(near -> "did you mean " + near + "?")
                .orElse(otherwise);
    }
}

package io.github.leafproof.dsl.guide;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.session.NextStep;
import io.github.leafproof.dsl.session.Standing;
import io.github.leafproof.inspection.clearance.NextLeaf;
import io.github.leafproof.inspection.engine.Fact;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Feeler;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.gauge.ReadingInstrument;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What an answer has to fit.
 *
 * @param observation what is to be observed
 * @param gauge the gauge that it is made with, or null
 * @param offer the leaf or stack that was advised, which {@code passes} alone speaks of; null where none was
 * @param things what the card lists, where things are to be listed
 * @param today the sheet's day
 */
record Asked(
        Node.Observation observation,
        @Nullable Gauge gauge,
        @Nullable Feeler offer,
        List<String> things,
        LocalDate today,
        UnitSystem units) {

    static Asked of(NextStep step, Standing standing) {
        boolean begun = step.reason() == NextStep.Reason.MORE;
        Feeler offer = begun && step.leaf() instanceof NextLeaf.Try advised ? advised.feeler() : null;
        String variant = standing.heading().engine().variant();
        Optional<Fact> box = standing.basis().card().content().fact("box", variant);
        return new Asked(
                step.observation(),
                step.gauge(),
                offer,
                box.map(fact -> fact instanceof Fact.Words words ? words.words() : List.<String>of())
                        .orElse(List.of()),
                standing.heading().date(),
                standing.inspector().units());
    }

    /** In a line, what to type. */
    String hint() {
        Type type = observation.type();
        if (type instanceof Type.YesNo) {
            return "yes or no";
        }
        if (type instanceof Type.Choice choice) {
            String between = choice.graded() ? " < " : ", ";
            return IntStream.range(0, choice.options().size())
                    .mapToObj(option -> (option + 1) + " " + choice.options().get(option))
                    .collect(Collectors.joining(between, "the word or its number: ", ""));
        }
        if (type instanceof Type.Gap) {
            return gapHint();
        }
        if (type instanceof Type.Series series) {
            return "readings in order, with a comma between: " + example(series.of()) + ", " + example(series.of());
        }
        if (type instanceof Type.Items) {
            return things.isEmpty()
                    ? "what is there, with commas between, or nothing"
                    : "all, nothing, all but \u2026, or what is there with commas between; the card lists "
                            + String.join(", ", things);
        }
        if (type instanceof Type.Date) {
            return "a day: " + today + ", or today";
        }
        return type instanceof Type.Text ? "a few words" : example(type);
    }

    /** The unit that the gauge shows, which comes to mind first; null where it has none of this kind. */
    @Nullable
    Unit shown() {
        Type type = observation.type() instanceof Type.Series series ? series.of() : observation.type();
        Quantity step = gauge instanceof ReadingInstrument instrument ? instrument.resolution() : null;
        return step != null
                        && type.inArithmetic().filter(step.dimension()::equals).isPresent()
                ? step.unit()
                : null;
    }

    private String gapHint() {
        String some = set().map(set -> bare(set.leaves().get(0))).orElse("");
        return offer == null
                ? "what each did: " + some + " passes, " + some + " refuses or " + some + " drags"
                : "passes, refuses or drags, of " + marking(offer) + "; or what another did, as " + some + " passes";
    }

    private String example(Type type) {
        if (type instanceof Type.Count) {
            return "a whole number, such as 2";
        }
        List<String> usual = new AmountReading(units, type.inArithmetic().orElseThrow(), shown()).usualUnits();
        return usual.isEmpty()
                ? "a number"
                : "a number and its unit, such as " + Display.amount("2", Unit.parse(usual.get(0)));
    }

    Optional<FeelSet> set() {
        return gauge instanceof FeelSet set ? Optional.of(set) : Optional.empty();
    }

    /** A marking as it is spoken of at the bench: without its unit. */
    static String bare(Leaf leaf) {
        return leaf.label().replace(" " + leaf.marked().unit().symbol(), "");
    }

    /** {@code 0.05 + 0.04}. */
    static String marking(Feeler feeler) {
        return feeler.leaves().stream().map(Asked::bare).collect(Collectors.joining(" + "));
    }

    /** The markings of a set in their order, with the unit behind them. */
    static String markings(FeelSet set) {
        List<Leaf> leaves = set.leaves();
        Quantity last = leaves.get(leaves.size() - 1).marked();
        return leaves.stream().map(Asked::bare).collect(Collectors.joining(", ")) + " "
                + last.unit().symbol();
    }
}

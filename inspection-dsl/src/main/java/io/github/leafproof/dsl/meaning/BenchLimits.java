package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.IfElse;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.Range;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.message.BenchDiagnostics;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.inspection.clearance.LeafAdvisor;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.gauge.ReadingInstrument;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Finding;
import io.github.leafproof.inspection.verdict.Limits;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The limits that a card gives, against the gauges that a tray holds: whether anything can be shown to lie within them. */
final class BenchLimits {

    private final Problems problems;
    private final Sites sites;
    private final Possibilities known;
    private final EngineCard card;
    private final GaugeTray tray;
    private final Map<Integer, Node.Observation> observed = new HashMap<>();

    BenchLimits(Problems problems, Sites sites, Possibilities known, EngineCard card, GaugeTray tray) {
        this.problems = problems;
        this.sites = sites;
        this.known = known;
        this.card = card;
        this.tray = tray;
    }

    void look(List<Node.Check> checks, List<Node.Observation> observations) {
        observations.forEach(each -> observed.put(each.slot(), each));
        for (Sites.Limits site : sites.limits) {
            Held held = new Held(known, site.held());
            if (held.isUpsideDown()) {
                problems.add(BenchDiagnostics.upsideDownOnCard(site.low(), card.model()));
            }
        }
        for (Node.Check check : checks) {
            boolean concerns = check.when() == null || known.canHold(check.when());
            if (concerns) {
                walk(check, check.requirement());
            }
        }
    }

    /** What must hold together; of what may hold one way or the other, another way may still be shown. */
    private void walk(Node.Check check, Formula condition) {
        if (condition instanceof LimitsHeld held) {
            Span span = sites.compared.get(held);
            if (span != null && held.subject() instanceof Slot slot) {
                look(check, held, slot.number(), span);
            }
        } else if (condition instanceof Joined joined && joined.and()) {
            joined.parts().forEach(part -> walk(check, part));
        } else if (condition instanceof IfElse either
                && known.canHold(either.condition()) != known.canFail(either.condition())) {
            walk(check, known.canHold(either.condition()) ? either.then() : either.otherwise());
        } else if (condition instanceof Slot slot) {
            known.ground().derived(slot.number()).ifPresent(derived -> walk(check, derived.formula()));
        }
    }

    private void look(Node.Check check, LimitsHeld held, int slot, Span span) {
        Node.Observation observation = observed.get(slot);
        if (observation == null || observation.gauge() == null) {
            return;
        }
        boolean asked = observation.when() == null || known.canHold(observation.when());
        Optional<Limits> limits = limits(held);
        Optional<Gauge> gauge = tray.gauge(observation.gauge().name());
        if (!asked
                || limits.isEmpty()
                || gauge.isEmpty()
                || !observation.gauge().isMetBy(gauge.get())) {
            return;
        }
        if (gauge.get() instanceof FeelSet set) {
            if (!LeafAdvisor.canShowInside(limits.get(), check.rule(), set)) {
                problems.add(BenchDiagnostics.neverProven(
                        span,
                        check.name(),
                        observation.gauge().name(),
                        "nothing in it, alone or stacked, proves that",
                        "a set whose sizes lie closer to these limits, or are measured better"));
            }
        } else if (gauge.get() instanceof ReadingInstrument instrument) {
            reading(check, limits.get(), instrument, span);
        }
    }

    /** The window as numbers, where the card settles it; the wider one where something beyond is tolerated. */
    private Optional<Limits> limits(LimitsHeld held) {
        double low = exact(held.lower(), Double.NEGATIVE_INFINITY);
        double high = exact(held.upper(), Double.POSITIVE_INFINITY);
        for (Formula margin : held.tolerated()) {
            double tolerated = exact(margin, 0);
            low = held.lower() != null ? Math.min(low, tolerated) : low;
            high = held.upper() != null ? Math.max(high, tolerated) : high;
        }
        return low <= high ? Optional.of(Limits.between(low, high)) : Optional.empty();
    }

    /** A limit that is one number on this card; NaN, with which nothing compares, where it is not. */
    private double exact(@Nullable Formula limit, double otherwise) {
        if (limit == null) {
            return otherwise;
        }
        Range range = known.range(limit);
        return range.low() == range.high() ? range.low() : Double.NaN;
    }

    /** An instrument is as sure anywhere; a value in the middle of two limits has the best chance. */
    private void reading(Node.Check check, Limits limits, ReadingInstrument instrument, Span span) {
        double half = (limits.upper() - limits.lower()) / 2;
        Unit shown = UnitSystem.METRIC.unitFor(instrument.of(), 1);
        Estimate read = instrument.read(Quantity.of("20", shown), check.name());
        if (Double.isInfinite(half) || read.isExact()) {
            return;
        }
        Conformity best = Conformity.ofReading(read, Limits.between(read.value() - half, read.value() + half));
        DecisionRule rule = check.rule();
        double expandedBase = 2 * read.standardUncertainty();
        String expanded = words(expandedBase, instrument);
        if (rule.decide(best) != Finding.PASSES) {
            problems.add(BenchDiagnostics.neverProven(
                    span,
                    check.name(),
                    instrument.name(),
                    "it knows only ± " + expanded + " (k = 2)",
                    "a better instrument"));
        } else if (half < expandedBase) {
            problems.add(
                    BenchDiagnostics.toleranceTooSmall(span, instrument.name(), words(half, instrument), expanded));
        }
    }

    /** An amount of what the instrument reads, to two digits. */
    private static String words(double base, ReadingInstrument instrument) {
        Dimension difference = instrument.of().difference();
        return Display.of(base, difference, base, UnitSystem.METRIC.unitFor(difference, base));
    }
}

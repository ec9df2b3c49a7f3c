package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.formula.Value.Lack;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.Spelling;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.SheetChange;
import io.github.leafproof.inspection.record.SheetEngine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Reads a sheet for a graph: finds the observations it names, and what its entries mean with the gauges of the tray. */
final class EvidenceReader {

    private static final int MOST_LOOKED_FOR = 20;

    private final CheckGraph graph;
    private final Evidence.Sources sources;
    private final JobSheet heading;
    private final SheetProblems problems;

    EvidenceReader(CheckGraph graph, Evidence.Sources sources) {
        this.graph = graph;
        this.sources = sources;
        this.heading = sources.sheet().heading();
        this.problems = new SheetProblems(sources);
    }

    /** Goes on from what was known with the same card and tray, and reads again the observations that are entered otherwise. */
    Read<Evidence> readAfter(Evidence before, SheetChange change, List<Node.Observation> changed) {
        List<Evidence.Unknown> unknown = before.unknown();
        if (!unknown.isEmpty()) {
            unknown = unknown.stream()
                    .filter(known -> !change.takenBack().contains(known.entry()))
                    .toList();
        }
        complainOfUnknown(change.added());
        Entered.Draft entered = before.entered().draft();
        GaugeTray tray = sources.tray().content();
        StatementsReader reader =
                new StatementsReader(problems, name -> tray.gauge(name).orElse(null));
        for (Node.Observation observation : changed) {
            List<Entry> known = new ArrayList<>();
            before.statements(observation).forEach(statement -> known.add(statement.entry()));
            List<Entry> entries = change.of(observation.name(), known);
            entered.set(observation.slot(), reader.said(observation, entries));
        }
        return done(entered, unknown);
    }

    Read<Evidence> read() {
        return read(isForThisProcedure() && isOfThisRevision(), true);
    }

    Read<Evidence> readAnyRevision() {
        return read(isForThisProcedure(), false);
    }

    /**
     * Reads it all.
     *
     * @param isMeant whether it was written for this at all
     * @param strict whether entries for what is not observed are mistakes
     */
    private Read<Evidence> read(boolean isMeant, boolean strict) {
        if (!isMeant) {
            // Whatever else is wrong is only that it was written for something else.
            return new Read.Refused<>(problems.all());
        }
        Entered.Draft entered = Entered.blank(graph);
        Map<String, Gauge> gauges = gauges();
        takeFacts(entered);
        appliesToThisEngine(entered);
        List<Entry> all = sources.sheet().entries();
        Map<String, List<Entry>> entries = entriesByObservation(all);
        List<Evidence.Unknown> unknown = new ArrayList<>();
        if (strict) {
            complainOfUnknown(all);
        } else {
            layAsideUnknown(all, unknown);
        }
        StatementsReader reader = new StatementsReader(problems, gauges::get);
        for (Node.Observation observation : graph.observations()) {
            entered.set(
                    observation.slot(), reader.said(observation, entries.getOrDefault(observation.name(), List.of())));
        }
        return done(entered, unknown);
    }

    private Read<Evidence> done(Entered.Draft entered, List<Evidence.Unknown> unknown) {
        if (problems.any()) {
            return new Read.Refused<>(problems.all());
        }
        return new Read.Done<>(new Evidence(graph, sources, entered.entered(), unknown), List.of());
    }

    private boolean isForThisProcedure() {
        String named = heading.procedure();
        String name = graph.identity().name();
        if (!named.equals(name)) {
            problems.otherProcedure(named, name);
        }
        return named.equals(name);
    }

    private boolean isOfThisRevision() {
        int named = heading.revision();
        CheckGraph.Identity identity = graph.identity();
        if (named != identity.revision()) {
            problems.otherRevision(identity.name(), named, identity.revision());
        }
        return named == identity.revision();
    }

    private Map<String, Gauge> gauges() {
        Map<String, Gauge> gauges = new HashMap<>();
        GaugeTray tray = sources.tray().content();
        for (GaugeNeed need : graph.gauges()) {
            Optional<Gauge> gauge = tray.gauge(need.name());
            if (gauge.isEmpty()) {
                problems.noGauge(need, tray.gauges().stream().map(Gauge::name).toList());
            } else if (!need.isMetBy(gauge.get())) {
                problems.otherGauge(need, gauge.get());
            } else {
                gauges.put(need.name(), gauge.get());
            }
        }
        return gauges;
    }

    private void takeFacts(Entered.Draft entered) {
        EngineCard card = sources.card().content();
        SheetEngine engine = heading.engine();
        if (engine.variant() != null && !card.knowsVariant(engine.variant())) {
            problems.noVariant(engine.variant(), card.model(), card.variants().keySet());
            engine = new SheetEngine(engine.serial(), engine.condition(), engine.owner(), null);
        }
        for (Node.Fact fact : graph.facts()) {
            Value value = ShopFact.of(fact, card, engine.variant())
                    .map(this::own)
                    .orElse(EngineFactValue.of(fact, card, engine));
            entered.set(fact.slot(), new Entered.Said(List.of(), value, value));
        }
    }

    /** What the card says of a fact that the shop added; nothing where that is not what the procedure declares. */
    private Value own(ShopFact fact) {
        Value value = fact.value(
                (wrong, message, remedy) -> problems.otherFact(sources.card().name(), wrong.place(), message, remedy));
        return value != null
                ? value
                : Value.Missing.of(Lack.Kind.NOT_ON_CARD, fact.declared().name(), "is not what the procedure declares");
    }

    /** A procedure for other engines is refused at the start, not half-way. */
    private void appliesToThisEngine(Entered.Draft entered) {
        Formula applies = graph.applies().orElse(null);
        if (applies == null) {
            return;
        }
        Value value = applies.value(
                Frame.of(slot -> Objects.requireNonNull(entered.get(slot)).left(), graph.rule(), UnitSystem.METRIC));
        if (value instanceof Value.Missing missing) {
            problems.mayNotApply(sources.card().name(), graph.identity().name(), missing.words());
        } else if (!((Value.Judged) value).holds()) {
            problems.doesNotApply(sources.card().name(), graph.identity().name(), applies.words());
        }
    }

    private Map<String, List<Entry>> entriesByObservation(List<Entry> entered) {
        Map<String, List<Entry>> entries = new LinkedHashMap<>();
        for (Entry entry : entered) {
            if (isObserved(entry)) {
                entries.computeIfAbsent(entry.observe(), name -> new ArrayList<>())
                        .add(entry);
            }
        }
        return entries;
    }

    private boolean isObserved(Entry entry) {
        return graph.node(entry.observe()).orElse(null) instanceof Node.Observation;
    }

    private void complainOfUnknown(List<Entry> entered) {
        for (Entry entry : entered) {
            if (!isObserved(entry) && !problems.areMany()) {
                problems.noObservation(entry, nearest(entry));
            }
        }
    }

    private void layAsideUnknown(List<Entry> entered, List<Evidence.Unknown> unknown) {
        for (Entry entry : entered) {
            if (!isObserved(entry)) {
                // Where there are very many, nobody looks for what each of them may have meant.
                Optional<String> nearest = unknown.size() < MOST_LOOKED_FOR ? nearest(entry) : Optional.empty();
                unknown.add(new Evidence.Unknown(
                        entry, SheetProblems.noObservation(sources.sheet().name(), entry, nearest)));
            }
        }
    }

    private Optional<String> nearest(Entry entry) {
        List<String> known =
                graph.observations().stream().map(Node.Observation::name).toList();
        return Spelling.nearest(entry.observe(), known);
    }
}

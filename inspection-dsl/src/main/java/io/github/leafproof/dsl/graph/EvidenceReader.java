package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.formula.Value.Lack;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.Spelling;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.SheetEngine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads a sheet for a graph: finds the observations it names, and what its entries mean with the gauges of the tray. */
final class EvidenceReader {

    private static final int MOST_LOOKED_FOR = 20;

    private final CheckGraph graph;
    private final Evidence.Files files;
    private final SheetProblems problems;
    private final Map<String, Gauge> gauges = new HashMap<>();
    private final Value[] asFound;
    private final Value[] asLeft;
    private final Set<Integer> adjusted = new HashSet<>();
    private final Map<String, List<Evidence.Statement>> statements = new HashMap<>();
    private final List<Evidence.Unknown> unknown = new ArrayList<>();

    EvidenceReader(CheckGraph graph, Evidence.Files files) {
        this.graph = graph;
        this.files = files;
        this.problems = new SheetProblems(files);
        this.asFound = new Value[graph.slots()];
        this.asLeft = new Value[graph.slots()];
    }

    /** Goes on from what was read of the sheet before its end changed, with the same card and tray. */
    EvidenceReader(Evidence before, Evidence.Files files) {
        this.graph = before.graph();
        this.files = files;
        this.problems = new SheetProblems(files);
        this.asFound = before.asFound();
        this.asLeft = before.asLeft();
        this.adjusted.addAll(before.adjusted());
        this.statements.putAll(before.statements());
        this.unknown.addAll(before.unknown());
    }

    /** Reads the observations that are entered otherwise than before, each from its first entry on. */
    Read<Evidence> readAfter(SheetChange change) {
        takeGauges();
        unknown.removeIf(known -> change.takenBack().contains(known.entry()));
        complainOfUnknown(change.added());
        Set<String> names = change.names();
        Map<String, List<Entry>> entries = entriesByObservation(files.sheet().content().entries().stream()
                .filter(entry -> names.contains(entry.observe()))
                .toList());
        EntryReader entryReader = new EntryReader(problems, gauges);
        graph.observationsNamed(names)
                .forEach(observation ->
                        take(observation, entries.getOrDefault(observation.name(), List.of()), entryReader));
        return done();
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
        takeGauges();
        takeFacts();
        appliesToThisEngine();
        List<Entry> entered = files.sheet().content().entries();
        Map<String, List<Entry>> entries = entriesByObservation(entered);
        if (strict) {
            complainOfUnknown(entered);
        } else {
            layAsideUnknown(entered);
        }
        EntryReader entryReader = new EntryReader(problems, gauges);
        for (Node.Observation observation : graph.observations()) {
            take(observation, entries.getOrDefault(observation.name(), List.of()), entryReader);
        }
        return done();
    }

    private Read<Evidence> done() {
        if (problems.any()) {
            return new Read.Refused<>(problems.all());
        }
        return new Read.Done<>(new Evidence(graph, files, asFound, asLeft, adjusted, statements, unknown), List.of());
    }

    private boolean isForThisProcedure() {
        String named = files.sheet().content().procedure();
        String name = graph.identity().name();
        if (!named.equals(name)) {
            problems.otherProcedure(named, name);
        }
        return named.equals(name);
    }

    private boolean isOfThisRevision() {
        int named = files.sheet().content().revision();
        CheckGraph.Identity identity = graph.identity();
        if (named != identity.revision()) {
            problems.otherRevision(identity.name(), named, identity.revision());
        }
        return named == identity.revision();
    }

    private void takeGauges() {
        GaugeTray tray = files.tray().content();
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
    }

    private void takeFacts() {
        EngineCard card = files.card().content();
        SheetEngine engine = files.sheet().content().engine();
        if (engine.variant() != null && !card.knowsVariant(engine.variant())) {
            problems.noVariant(engine.variant(), card.model(), card.variants().keySet());
            engine = new SheetEngine(engine.serial(), engine.condition(), engine.owner(), null);
        }
        for (Node.Fact fact : graph.facts()) {
            Value value = ShopFact.of(fact, card, engine.variant())
                    .map(this::own)
                    .orElse(EngineFactValue.of(fact, card, engine));
            asFound[fact.slot()] = value;
            asLeft[fact.slot()] = value;
        }
    }

    /** What the card says of a fact that the shop added; nothing where that is not what the procedure declares. */
    private Value own(ShopFact fact) {
        Value value = fact.value(
                (wrong, message, remedy) -> problems.otherFact(files.card().name(), wrong.place(), message, remedy));
        return value != null
                ? value
                : Value.Missing.of(Lack.Kind.NOT_ON_CARD, fact.declared().name(), "is not what the procedure declares");
    }

    /** A procedure for other engines is refused at the start, not half-way. */
    private void appliesToThisEngine() {
        Formula applies = graph.applies().orElse(null);
        if (applies == null) {
            return;
        }
        Value value = applies.value(Frame.of(asLeft, graph.rule(), UnitSystem.METRIC));
        if (value instanceof Value.Missing missing) {
            problems.mayNotApply(files.card().name(), graph.identity().name(), missing.words());
        } else if (!((Value.Judged) value).holds()) {
            problems.doesNotApply(files.card().name(), graph.identity().name(), applies.words());
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

    private void layAsideUnknown(List<Entry> entered) {
        for (Entry entry : entered) {
            if (!isObserved(entry)) {
                // Where there are very many, nobody looks for what each of them may have meant.
                Optional<String> nearest = unknown.size() < MOST_LOOKED_FOR ? nearest(entry) : Optional.empty();
                unknown.add(new Evidence.Unknown(
                        entry, SheetProblems.noObservation(files.sheet().name(), entry, nearest)));
            }
        }
    }

    private Optional<String> nearest(Entry entry) {
        List<String> known =
                graph.observations().stream().map(Node.Observation::name).toList();
        return Spelling.nearest(entry.observe(), known);
    }

    /** Entries in order; an adjustment parts what was found from what was left, and a correction unsays the one before. */
    private void take(Node.Observation observation, List<Entry> entries, EntryReader reader) {
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
        asLeft[observation.slot()] = left;
        asFound[observation.slot()] = found == null ? left : together(observation, found, false);
        if (isFarTooMuch(left) || isFarTooMuch(asFound[observation.slot()])) {
            problems.farTooMuch(entries.get(entries.size() - 1));
        }
        if (found != null) {
            adjusted.add(observation.slot());
        } else {
            adjusted.remove(observation.slot());
        }
        statements.put(observation.name(), List.copyOf(said));
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

package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is known of one engine, typed for a graph: the facts of its card and what its job sheet says, measured with the
 * gauges of a tray.
 */
public final class Evidence {

    private final CheckGraph graph;
    private final Files files;
    private final Value[] asFound;
    private final Value[] asLeft;
    private final Set<Integer> adjusted;
    private final Map<String, List<Statement>> statements;
    private final List<Unknown> unknown;

    Evidence(
            CheckGraph graph,
            Files files,
            Value[] asFound,
            Value[] asLeft,
            Set<Integer> adjusted,
            Map<String, List<Statement>> statements,
            List<Unknown> unknown) {
        this.graph = graph;
        this.files = files;
        this.asFound = asFound;
        this.asLeft = asLeft;
        this.adjusted = Set.copyOf(adjusted);
        this.statements = Map.copyOf(statements);
        this.unknown = List.copyOf(unknown);
    }

    /** The files that a judgement rests on. */
    public record Files(Document<EngineCard> card, Document<GaugeTray> tray, Document<JobSheet> sheet) {}

    /**
     * One entry, as it was understood.
     *
     * @param value what it says; nothing for an adjustment
     * @param corrected whether a later entry says that this one was a slip of the pen
     */
    public record Statement(Entry entry, Value value, boolean corrected) {}

    /**
     * An entry for something that the procedure does not observe.
     *
     * @param problem what there is to say of it where it is no matter of the revision
     */
    public record Unknown(Entry entry, Problem problem) {}

    /**
     * What a sheet says, read for a graph.
     *
     * @return the evidence, or everything in the three files that does not go together with the procedure
     */
    public static Read<Evidence> of(
            CheckGraph graph, Document<EngineCard> card, Document<GaugeTray> tray, Document<JobSheet> sheet) {
        return new EvidenceReader(graph, new Files(card, tray, sheet)).read();
    }

    /**
     * What a sheet of any revision of the procedure says to this one: the question what another revision would have made of
     * the same work. Entries for what this revision does not observe are laid aside, see {@link #unknown()}.
     *
     * @return the evidence, or everything in the three files that does not go together with the procedure
     */
    public static Read<Evidence> ofAnyRevision(
            CheckGraph graph, Document<EngineCard> card, Document<GaugeTray> tray, Document<JobSheet> sheet) {
        return new EvidenceReader(graph, new Files(card, tray, sheet)).readAnyRevision();
    }

    /**
     * What the same sheet says once its end has changed. Only the observations that are entered otherwise are read again.
     *
     * @param sheet the sheet as it is now
     */
    Read<Evidence> after(SheetChange change, Document<JobSheet> sheet) {
        return new EvidenceReader(this, new Files(files.card(), files.tray(), sheet)).readAfter(change);
    }

    public CheckGraph graph() {
        return graph;
    }

    public Files files() {
        return files;
    }

    /** The entries that were laid aside; none where the sheet was read as one of this very revision. */
    public List<Unknown> unknown() {
        return unknown;
    }

    /** All entries for an observation, in the order of the sheet. */
    public List<Statement> statements(Node.Observation observation) {
        return statements.getOrDefault(observation.name(), List.of());
    }

    /** Whether anything was adjusted. */
    public boolean isAdjusted() {
        return !adjusted.isEmpty();
    }

    /** Whether this was adjusted, so that it has a value as found and another as left. */
    public boolean isAdjusted(Node.Observation observation) {
        return adjusted.contains(observation.slot());
    }

    /** The value of an observation as the engine was left. */
    public Value value(Node.Observation observation) {
        return asLeft[observation.slot()];
    }

    /** All entries, by the observation. */
    Map<String, List<Statement>> statements() {
        return statements;
    }

    Set<Integer> adjusted() {
        return adjusted;
    }

    /** A fresh copy of the slots before any adjustment; derived values still to be computed. */
    Value[] asFound() {
        return asFound.clone();
    }

    /** A fresh copy of the slots as the engine was left; what is computed is still null. */
    public Value[] asLeft() {
        return asLeft.clone();
    }
}

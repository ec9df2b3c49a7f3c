package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.OpenSheet;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.SheetChange;
import java.util.List;
import java.util.Objects;

/**
 * What is known of one engine, typed for a graph: the facts of its card and what its job sheet says, measured with the
 * gauges of a tray.
 */
public final class Evidence {

    private final CheckGraph graph;
    private final Sources sources;
    private final Entered entered;
    private final List<Unknown> unknown;

    Evidence(CheckGraph graph, Sources sources, Entered entered, List<Unknown> unknown) {
        this.graph = graph;
        this.sources = sources;
        this.entered = entered;
        this.unknown = List.copyOf(unknown);
    }

    /** What a judgement rests on: card, tray, and the sheet as far as it is filled in. */
    record Sources(Document<EngineCard> card, Document<GaugeTray> tray, OpenSheet sheet) {}

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
        return new EvidenceReader(graph, new Sources(card, tray, OpenSheet.of(sheet))).read();
    }

    /**
     * What a sheet of any revision of the procedure says to this one: the question what another revision would have made of
     * the same work. Entries for what this revision does not observe are laid aside, see {@link #unknown()}.
     *
     * @return the evidence, or everything in the three files that does not go together with the procedure
     */
    public static Read<Evidence> ofAnyRevision(
            CheckGraph graph, Document<EngineCard> card, Document<GaugeTray> tray, Document<JobSheet> sheet) {
        return new EvidenceReader(graph, new Sources(card, tray, OpenSheet.of(sheet))).readAnyRevision();
    }

    /**
     * What the same sheet says once its end has changed. Only the observations that are entered otherwise are read again.
     *
     * @param changed these observations
     * @param sheet the sheet as it is now
     */
    Read<Evidence> after(SheetChange change, List<Node.Observation> changed, OpenSheet sheet) {
        return new EvidenceReader(graph, new Sources(card(), tray(), sheet)).readAfter(this, change, changed);
    }

    public CheckGraph graph() {
        return graph;
    }

    /** The files that it rests on. Of a sheet that was filled in entry by entry the file is made when this is asked. */
    public Files files() {
        return new Files(card(), tray(), sheet().document());
    }

    public Document<EngineCard> card() {
        return sources.card();
    }

    public Document<GaugeTray> tray() {
        return sources.tray();
    }

    /** The sheet, to go on with. */
    public OpenSheet sheet() {
        return sources.sheet();
    }

    /** The entries that were laid aside; none where the sheet was read as one of this very revision. */
    public List<Unknown> unknown() {
        return unknown;
    }

    /** All entries for an observation, in the order of the sheet. */
    public List<Statement> statements(Node.Observation observation) {
        return said(observation).statements();
    }

    /** Whether anything was adjusted. */
    public boolean isAdjusted() {
        return entered.adjusted() > 0;
    }

    /** Whether this was adjusted, so that it has a value as found and another as left. */
    public boolean isAdjusted(Node.Observation observation) {
        return said(observation).isAdjusted();
    }

    /** Whether some leaf that was offered is known by its marking only. */
    boolean restsOnMarkings() {
        return entered.markedOnly() > 0;
    }

    /** The value of an observation as the engine was left. */
    public Value value(Node.Observation observation) {
        return said(observation).left();
    }

    private Entered.Said said(Node.Observation observation) {
        return Objects.requireNonNull(entered.said().get(observation.slot()));
    }

    Entered entered() {
        return entered;
    }

    /** A fresh copy of the slots as the engine was left; what is computed is still null. */
    public Value[] asLeft() {
        Value[] slots = new Value[graph.slots()];
        for (int slot = 0; slot < slots.length; slot++) {
            Entered.Said said = entered.said().get(slot);
            if (said != null) {
                slots[slot] = said.left();
            }
        }
        return slots;
    }
}

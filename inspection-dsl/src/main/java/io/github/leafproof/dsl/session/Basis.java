package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.record.Document;

/** What an inspection is done by: a procedure, the card of the engine and the tray of gauges. */
public record Basis(Procedure procedure, Document<EngineCard> card, Document<GaugeTray> tray) {

    CheckGraph graph() {
        return procedure.graph();
    }
}

package io.github.leafproof.inspection.clearance;

import io.github.leafproof.inspection.gauge.Feeler;

/** Where a trial would lead, before anybody has made it. */
public sealed interface AfterTrial permits AfterTrial.Offer, NextLeaf.Settled, NextLeaf.Repeat, NextLeaf.CannotSettle {

    /** Still open; this feeler would be the next to offer. */
    record Offer(Feeler feeler) implements AfterTrial {}
}

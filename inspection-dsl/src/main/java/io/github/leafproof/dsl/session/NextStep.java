package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.clearance.NextLeaf;
import io.github.leafproof.inspection.gauge.Gauge;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The next thing to do at the bench.
 *
 * @param observation what is to be observed
 * @param reason why it is asked for
 * @param setup how the bench is brought to where it has to be, in this order, from where it is
 * @param ask what to do or to look at, with the facts of this engine
 * @param gauge the gauge of the tray to take; null where none is needed
 * @param leaf which leaf or stack to offer, where the procedure has advice on that; null otherwise
 * @param cautions to be read before it is done; those of the changes stand with them
 */
public record NextStep(
        Node.Observation observation,
        Reason reason,
        List<Setup> setup,
        String ask,
        @Nullable Gauge gauge,
        @Nullable NextLeaf leaf,
        List<String> cautions) {

    /** Why something is asked for. */
    public enum Reason {
        /** It is not known yet. */
        FIRST,
        /** It was entered, and another trial would settle what is open or contradicted. */
        MORE,
        /** Somebody went back to it. */
        AGAIN
    }

    public NextStep {
        setup = List.copyOf(setup);
        cautions = List.copyOf(cautions);
    }
}

package io.github.leafproof.inspection.clearance;

import io.github.leafproof.inspection.gauge.Feeler;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import java.util.List;

/** What to do next about a gap, as {@link LeafAdvisor} finds it. */
public sealed interface NextLeaf {

    /** The advice as a sentence or two for the bench. */
    default String words(UnitSystem system) {
        return new NextLeafWords(system).of(this);
    }

    /**
     * Nothing more to try: the trials made have settled the matter.
     *
     * @param outcome passes, tolerated or fails
     * @param side where the gap lies when it is not inside
     */
    record Settled(Outcome outcome, Side side) implements NextLeaf, AfterTrial {}

    /** Two trials contradict each other: both are to be made again before anything else. */
    record Repeat(Contradiction contradiction) implements NextLeaf, AfterTrial {}

    /**
     * Offer this feeler.
     *
     * @param feeler the leaf, pin or stack
     * @param ifPasses where it leads when it enters
     * @param ifRefuses where it leads when it does not
     * @param expectedTrials how many trials it will take on average, this one included, until the matter is settled or the
     *     tray can settle no more; for planning, every place left is taken as equally likely
     * @param shareSettled the share of the places left for which the tray can settle the matter, from 0 to 1
     */
    record Try(Feeler feeler, AfterTrial ifPasses, AfterTrial ifRefuses, double expectedTrials, double shareSettled)
            implements NextLeaf {}

    /**
     * No leaf or stack of the set can settle the matter.
     *
     * @param wanted leaves that could, if somebody made or bought them
     * @param u in metres: the standard uncertainty to which they would have to be measured
     * @param neverMeasured the leaves whose thickness rests on their marking; measuring them may be all it takes
     */
    record CannotSettle(List<LeafWanted> wanted, double u, List<Leaf> neverMeasured) implements NextLeaf, AfterTrial {

        /** Keeps the order given. */
        public CannotSettle {
            wanted = List.copyOf(wanted);
            neverMeasured = List.copyOf(neverMeasured);
        }
    }
}

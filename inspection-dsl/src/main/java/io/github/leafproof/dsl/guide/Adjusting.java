package io.github.leafproof.dsl.guide;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.report.Lines;
import io.github.leafproof.dsl.session.NextStep;
import io.github.leafproof.dsl.session.Standing;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.QuantityException;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What {@code adjust} is about: an observation that has an entry, named or the last one that can be adjusted, and by how much
 * its adjuster was turned.
 *
 * @param problem why it makes no sense; null where it does
 */
record Adjusting(
        String observation,
        @Nullable Quantity turn,
        @Nullable String problem,
        String remedy) {

    static Adjusting of(String rest, Standing standing) {
        String[] words = rest.split("\\s+", 2);
        boolean named = standing.judgement().graph().node(words[0]).orElse(null) instanceof Node.Observation;
        Optional<String> observation = named ? Optional.of(words[0]) : lastAdjustable(standing);
        String amount = named ? (words.length > 1 ? words[1] : "") : rest;
        if (observation.isEmpty()) {
            return wrong("nothing was measured yet that could have been adjusted", "measure first how it was found");
        }
        if (amount.isBlank()) {
            return new Adjusting(observation.get(), null, null, "");
        }
        try {
            Quantity turn = Quantity.parse(amount);
            return turn.dimension().equals(Dimension.ANGLE)
                    ? new Adjusting(observation.get(), turn, null, "")
                    : wrong(
                            amount + " is no angle",
                            "write how far the screw was turned: adjust 45 deg, or adjust 1/8 turn");
        } catch (QuantityException unread) {
            return wrong(unread.problem(), "write how far the screw was turned: adjust 45 deg, or adjust 1/8 turn");
        }
    }

    /** Where a gap was found outside its limits: how to say that it was adjusted. */
    static String hint(String observation, Standing standing, Look look) {
        boolean isGap = standing.judgement().graph().node(observation).orElse(null) instanceof Node.Observation known
                && known.type() instanceof Type.Gap;
        boolean fails =
                isGap && standing.bearingOn(observation).stream().anyMatch(check -> check.outcome() == Outcome.FAILS);
        Lines lines = look.lines();
        if (fails) {
            lines.block(
                    "     ",
                    "When it is done, say so: adjust " + observation
                            + ", with the angle behind it. What was found stays on the sheet as found.");
        }
        return lines.toString();
    }

    private static Adjusting wrong(String problem, String remedy) {
        return new Adjusting("", null, problem, remedy);
    }

    /** What is asked for, where it has an entry; or else the last measured entry. */
    private static Optional<String> lastAdjustable(Standing standing) {
        Optional<String> here = standing.next()
                .map(NextStep::observation)
                .map(Node.Observation::name)
                .filter(name -> !standing.entries(name).isEmpty());
        if (here.isPresent()) {
            return here;
        }
        List<Entry> entries = standing.judgement().evidence().sheet().entries();
        for (int at = entries.size() - 1; at >= 0; at--) {
            Entry entry = entries.get(at);
            boolean measured =
                    standing.judgement().graph().node(entry.observe()).orElse(null)
                                    instanceof Node.Observation observation
                            && (observation.type() instanceof Type.Gap || observation.type() instanceof Type.Measure);
            if (measured && !(entry.given() instanceof Given.Adjusted)) {
                return Optional.of(entry.observe());
            }
        }
        return Optional.empty();
    }
}

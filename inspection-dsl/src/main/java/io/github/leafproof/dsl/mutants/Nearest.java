package io.github.leafproof.dsl.mutants;

import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.dsl.rehearsal.Played;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.verdict.Conformity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where a mutant that survives makes the most difference.
 *
 * @param title the rehearsal
 * @param place its file, line and column
 * @param of the check that comes out otherwise, or nearly does; or {@code release}
 * @param was what it comes to
 * @param becomes what it would come to with the mutant: another outcome, which the rehearsal does not expect anything of, or
 *     the same with another probability
 * @param isOtherwise whether the outcome is another one
 * @param by how far the probability moves, both bounds together
 */
public record Nearest(
        String title, String place, String of, String was, String becomes, boolean isOtherwise, double by) {

    /** A move of the bounds that is no more than the last bits of a calculation. */
    private static final double NOTHING = 1e-9;

    /** The first that comes out otherwise; where none does, the one whose probability moves furthest. */
    static Optional<Nearest> of(List<Nearest> all) {
        return all.stream()
                .filter(Nearest::isOtherwise)
                .findFirst()
                .or(() -> all.stream().filter(each -> each.by > NOTHING).max(Comparator.comparingDouble(Nearest::by)));
    }

    /** What a mutant makes of one case. */
    static List<Nearest> between(Played played, Judgement was, Judgement becomes) {
        List<Nearest> found = new ArrayList<>();
        for (int i = 0; i < was.verdicts().size(); i++) {
            Verdict one = was.verdicts().get(i);
            Verdict other = becomes.verdicts().get(i);
            boolean otherwise = one.outcome() != other.outcome();
            double by = distance(one, other);
            if (otherwise || by > NOTHING) {
                found.add(new Nearest(
                        played.title(),
                        played.place(),
                        one.check().name(),
                        words(one, otherwise),
                        words(other, otherwise),
                        otherwise,
                        by));
            }
        }
        String release = was.release().release().word();
        String instead = becomes.release().release().word();
        if (!release.equals(instead)) {
            found.add(new Nearest(played.title(), played.place(), "release", release, instead, true, 0));
        }
        return found;
    }

    private static double distance(Verdict one, Verdict other) {
        Conformity a = one.conformity();
        Conformity b = other.conformity();
        return a == null || b == null ? 0 : Math.abs(a.low() - b.low()) + Math.abs(a.high() - b.high());
    }

    private static String words(Verdict verdict, boolean outcomeOnly) {
        Conformity bounds = verdict.conformity();
        String outcome = verdict.outcome().word();
        if (outcomeOnly || bounds == null) {
            return outcome;
        }
        String low = Display.percent(bounds.low());
        String high = Display.percent(bounds.high());
        return outcome + " at " + (low.equals(high) ? low : low + " to " + high);
    }
}

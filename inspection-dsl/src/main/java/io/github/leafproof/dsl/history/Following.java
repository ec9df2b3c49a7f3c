package io.github.leafproof.dsl.history;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.history.Followed.Adjusting;
import io.github.leafproof.dsl.history.Followed.Change;
import io.github.leafproof.dsl.history.Followed.NextCheck;
import io.github.leafproof.dsl.history.Followed.Pace;
import io.github.leafproof.dsl.history.Followed.Point;
import io.github.leafproof.dsl.history.Followed.Sight;
import io.github.leafproof.inspection.mechanism.Answer;
import io.github.leafproof.inspection.mechanism.Trend;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Series;
import io.github.leafproof.inspection.verdict.Outlook;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Follows one thing over all looks: its changes, its rates, and when it comes to a limit. */
final class Following {

    /** No model engine runs longer; what does not come to a limit by then, does not come to it. */
    private static final double LONGEST = 10_000.0 * 3600;

    private final String name;
    private final Map<Sighting, Node> nodes;
    private final Map<Integer, Sighting> sightings = new TreeMap<>();
    private final List<Sight> sights = new ArrayList<>();

    private Following(String name, Map<Sighting, Node> nodes) {
        this.name = name;
        this.nodes = nodes;
        nodes.forEach((sighting, node) -> sighting.of(node).ifPresent(sight -> {
            sights.add(sight);
            sightings.put(sight.look(), sighting);
        }));
    }

    /**
     * What became of it.
     *
     * @param nodes what has this name at each look, the earliest first
     */
    static Followed of(String name, Map<Sighting, Node> nodes) {
        return new Following(name, nodes).followed();
    }

    private Followed followed() {
        boolean comparable = isOfOneKind();
        List<Change> changes = comparable ? changes() : List.of();
        List<Change> rates =
                changes.stream().filter(change -> change.rate() != null).toList();
        return new Followed(
                name,
                nodes.entrySet().stream().anyMatch(each -> each.getKey().left(each.getValue()) instanceof Value.Felt),
                sights,
                changes,
                comparable ? adjustings() : List.of(),
                comparable ? slope() : null,
                comparable ? perReading() : null,
                pace(rates),
                rates.isEmpty() ? null : nextCheck(rates.get(rates.size() - 1)));
    }

    /** Two procedures may give one name to different things. */
    private boolean isOfOneKind() {
        return sights.stream()
                        .flatMap(sight -> Stream.of(
                                sight.asFound().number(), sight.asLeft().number()))
                        .filter(Objects::nonNull)
                        .map(Estimate::dimension)
                        .distinct()
                        .count()
                == 1;
    }

    /** From as left at one look to as found at the next at which it counts. */
    private List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        Sight before = null;
        for (Sight sight : sights) {
            Estimate found = sight.asFound().counts();
            Estimate left = before == null ? null : before.asLeft().counts();
            if (before != null && left != null && found != null) {
                changes.add(change(before, left, sight, found));
            }
            // A look that established nothing breaks no chain; an adjustment that nobody measured does.
            before = sight.asLeft().counts() != null || sight.adjusted() ? sight : before;
        }
        return changes;
    }

    private static Change change(Sight before, Estimate left, Sight after, Estimate found) {
        Estimate amount = found.minus(left);
        Estimate hours = hours(before.asLeft().runningTime(), after.asFound().runningTime());
        Estimate rate = hours == null || hours.value() <= 0 ? null : amount.dividedBy(hours);
        return new Change(before.look(), after.look(), amount, hours, rate, History.isTold(amount));
    }

    private static @Nullable Estimate hours(@Nullable Quantity from, @Nullable Quantity to) {
        return from == null || to == null ? null : Estimate.exact(to.base() - from.base(), Dimension.TIME);
    }

    /** From as found to as left where both count. */
    private List<Adjusting> adjustings() {
        List<Adjusting> adjustings = new ArrayList<>();
        for (Sight sight : sights) {
            Estimate found = sight.asFound().counts();
            Estimate left = sight.asLeft().counts();
            Sighting sighting = sightings.get(sight.look());
            Node node = sighting == null ? null : nodes.get(sighting);
            if (sight.adjusted() && found != null && left != null && sighting != null && node != null) {
                Estimate moved = left.minus(found);
                Quantity turn = sighting.turn(node).orElse(null);
                adjustings.add(new Adjusting(sight.look(), moved, turn, perTurn(moved, turn)));
            }
        }
        return adjustings;
    }

    private static @Nullable Estimate perTurn(Estimate moved, @Nullable Quantity turn) {
        return turn == null || turn.base() == 0
                ? null
                : moved.absolute().dividedBy(Estimate.exact(turn).absolute());
    }

    /** The straight line since the last adjustment. */
    private @Nullable Estimate slope() {
        List<Estimate> hours = new ArrayList<>();
        List<Estimate> numbers = new ArrayList<>();
        for (Sight sight : sights) {
            if (sight.adjusted()) {
                hours.clear();
                numbers.clear();
            }
            Point point = sight.asLeft();
            if (point.counts() != null && point.runningTime() != null) {
                hours.add(Estimate.exact(point.runningTime().base(), Dimension.TIME));
                numbers.add(point.counts());
            }
        }
        Answer slope = numbers.isEmpty()
                ? new Answer.Refusal("slope", "", "nothing is known")
                : Trend.slopeOfMeasured(hours, numbers, "scatter of " + name + " over the looks");
        return slope instanceof Answer.Known known ? known.amount() : null;
    }

    /** How repeated readings rise from each to the next, over all looks: peak speed from run to run. */
    private @Nullable Estimate perReading() {
        List<Series> all = new ArrayList<>();
        String tray = null;
        for (Sight sight : sights) {
            Sighting sighting = sightings.get(sight.look());
            Node node = sighting == null ? null : nodes.get(sighting);
            if (sighting == null || node == null || !(sighting.left(node) instanceof Value.Readings readings)) {
                return null;
            }
            String here = sighting.tray();
            boolean otherGauge = tray != null && !tray.equals(here);
            if (otherGauge || sight.adjusted() || sight.asLeft().unfit() != null) {
                return null;
            }
            tray = here;
            all.add(readings.series());
        }
        return Series.together(all).flatMap(Series::slope).orElse(null);
    }

    private static Pace pace(List<Change> rates) {
        if (rates.size() < 2) {
            return Pace.UNKNOWN;
        }
        Estimate last = rates.get(rates.size() - 1).rate();
        Estimate before = rates.get(rates.size() - 2).rate();
        if (last == null || before == null) {
            return Pace.UNKNOWN;
        }
        Estimate more = last.minus(before);
        if (!History.isTold(more)) {
            return Pace.NOT_TOLD;
        }
        boolean faster = rates.get(rates.size() - 1).told() && Math.signum(more.value()) == Math.signum(last.value());
        return faster ? Pace.FASTER : Pace.SLOWER;
    }

    /** When it comes to the limit that it reaches first, if it goes on as it did between the last two looks. */
    private @Nullable NextCheck nextCheck(Change latest) {
        Sight last = lastThatCounts();
        Estimate now = last == null ? null : last.asLeft().counts();
        Sighting sighting = last == null ? null : sightings.get(last.look());
        Node node = sighting == null ? null : nodes.get(sighting);
        Estimate rate = latest.rate();
        if (last == null || now == null || rate == null || sighting == null || node == null) {
            return null;
        }
        NextCheck first = null;
        for (HeldLimits.Limit limit : sighting.limits(node, now)) {
            NextCheck next = nextCheck(last, latest, limit, now, rate);
            first = first == null || next.sure() < first.sure() ? next : first;
        }
        return first;
    }

    /** The latest that is to be relied on; none where it was adjusted since. */
    private @Nullable Sight lastThatCounts() {
        Sight last = null;
        for (Sight sight : sights) {
            last = sight.asLeft().counts() != null || sight.adjusted() ? sight : last;
        }
        return last;
    }

    private static NextCheck nextCheck(Sight last, Change latest, HeldLimits.Limit limit, Estimate now, Estimate rate) {
        Estimate distance = limit.distanceOf(now);
        Estimate closing = limit.upper() ? rate : rate.negated();
        double sure = Outlook.surelyShortFor(distance, closing, History.CONFIDENCE, LONGEST);
        NextCheck.State state;
        if (sure == 0) {
            state = NextCheck.State.DUE_NOW;
        } else if (sure == LONGEST) {
            state = NextCheck.State.MOVES_AWAY;
        } else {
            state = latest.told() && closing.value() > 0 ? NextCheck.State.DUE : NextCheck.State.OPEN;
        }
        Estimate margin = Estimate.exact(now.standardUncertainty(), distance.dimension());
        Estimate left = state == NextCheck.State.DUE ? distance.minus(margin).dividedBy(closing) : null;
        return new NextCheck(
                limit.words(), last.look(), rate, left, sure, last.asLeft().runningTime(), state);
    }
}

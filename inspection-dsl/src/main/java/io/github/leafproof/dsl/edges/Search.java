package io.github.leafproof.dsl.edges;

import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Looks along an axis for the places where a check comes out otherwise: with strides that double until it does, then by
 * halving the stride that it happened in until the two sides are one step apart. The judge says what comes of each entry, so
 * that gauge, resolution, confidence and all formulas on the way are in it.
 */
final class Search {

    /** No entry is further away than so many steps: nobody enters that, and nothing is found there. */
    private static final long FURTHEST = 1L << 40;

    /** A limit has two of them, one tolerated beyond it four, so that more come from elsewhere. */
    private static final int MOST_ONE_WAY = 6;

    /** What says something about the limit; beyond a gate that shuts or a calculation that ends there is nothing to find. */
    static final Set<Outcome> SETTLED = EnumSet.complementOf(EnumSet.of(Outcome.BLOCKED, Outcome.UNTESTED));

    private final Base base;
    private final Node.Check check;
    private final Node.Observation observation;
    private final Axis axis;
    private final Map<Long, Optional<Point>> seen = new HashMap<>();

    Search(Base base, Node.Check check, Node.Observation observation, Axis axis) {
        this.base = base;
        this.check = check;
        this.observation = observation;
        this.axis = axis;
    }

    /** What comes of an entry. */
    record Point(long step, Change change, Judgement judgement, Outcome outcome) {}

    /** A place where the outcome changes: the last entry before it, seen from the case, and the first behind it. */
    record Flip(Point before, Point behind) {}

    /** All that are found, those towards less first. */
    List<Flip> flips() {
        List<Flip> flips = new ArrayList<>(oneWay(-1));
        flips.addAll(oneWay(1));
        return flips;
    }

    private List<Flip> oneWay(int way) {
        List<Flip> flips = new ArrayList<>();
        Optional<Point> from = point(axis.start());
        while (from.isPresent() && flips.size() < MOST_ONE_WAY) {
            Optional<Flip> next = next(from.get(), way);
            next.ifPresent(flips::add);
            from = next.map(Flip::behind).filter(behind -> SETTLED.contains(behind.outcome));
        }
        return flips;
    }

    /** The next change of the outcome behind a point; empty where nothing further away changes it. */
    private Optional<Flip> next(Point from, int way) {
        Point near = from;
        for (long stride = 1; stride <= FURTHEST; stride *= 2) {
            Optional<Point> far = point(near.step + way * stride);
            if (far.isEmpty()) {
                return beforeTheEnd(near, near.step + way * stride);
            }
            if (far.get().outcome != near.outcome) {
                return Optional.of(between(near, far.get()));
            }
            near = far.get();
        }
        return Optional.empty();
    }

    /** The same up to a step at which nothing can be entered any more. */
    private Optional<Flip> beforeTheEnd(Point near, long beyond) {
        long possible = near.step;
        long impossible = beyond;
        while (Math.abs(impossible - possible) > 1) {
            long middle = possible + (impossible - possible) / 2;
            Optional<Point> point = point(middle);
            if (point.isEmpty()) {
                impossible = middle;
            } else if (point.get().outcome != near.outcome) {
                return Optional.of(between(near, point.get()));
            } else {
                possible = middle;
            }
        }
        return Optional.empty();
    }

    /** One step from another, the outcome that of the near side up to there. */
    private Flip between(Point near, Point far) {
        Point last = near;
        Point first = far;
        while (Math.abs(first.step - last.step) > 1) {
            Point middle = point(last.step + (first.step - last.step) / 2).orElseThrow();
            if (middle.outcome == near.outcome) {
                last = middle;
            } else {
                first = middle;
            }
        }
        return new Flip(last, first);
    }

    private Optional<Point> point(long step) {
        return seen.computeIfAbsent(step, this::look);
    }

    private Optional<Point> look(long step) {
        Change change = axis.at(step);
        return change == null
                ? Optional.empty()
                : base.with(observation, change)
                        .map(judgement -> new Point(
                                step,
                                change,
                                judgement,
                                judgement.verdicts().get(check.number()).outcome()));
    }
}

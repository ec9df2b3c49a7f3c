package io.github.leafproof.dsl.draw;

import io.github.leafproof.dsl.draw.Picture.Box;
import io.github.leafproof.dsl.draw.Picture.Kind;
import io.github.leafproof.dsl.draw.Picture.Tie;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.PriorityQueue;

/**
 * Where everything stands on the sheet. Stages are bands from the top down; in a band observations stand on the left, values
 * behind them, checks on the right, each as near to what it reads as those above it allow. Every box is looked at once, so
 * that a large procedure is quick.
 */
final class PictureLayout {

    static final int MARGIN = 24;

    private static final int HEAD = 78;
    private static final int LANE_HEAD = 34;
    static final int LANE_GAP = 14;
    private static final int BOX_GAP = 14;
    private static final int LEFT_ROOM = 46;
    private static final int OBSERVATION_WIDTH = 250;
    private static final int VALUE_WIDTH = 200;
    private static final int CHECK_WIDTH = 330;
    static final int COLUMN_GAP = 84;
    private static final int RAIL_GAP = 12;

    /** More columns of values than this make the picture wider, not clearer. */
    private static final int MOST_VALUE_COLUMNS = 4;

    /** Of more readers than this none tells better where a value should stand. */
    private static final int MOST_READERS = 8;

    private final Picture picture;
    private final int valueColumns;
    private final Map<String, Placed> placed = new LinkedHashMap<>();
    private final Map<String, Integer> laneOf = new HashMap<>();
    private final Map<String, List<String>> sources = new HashMap<>();
    private final Map<String, List<String>> readers = new HashMap<>();
    private final List<Band> bands = new ArrayList<>();
    private final List<Rail> rails = new ArrayList<>();
    private int bottom = HEAD;

    /** A stage from one side of the sheet to the other. */
    record Band(String title, int y, int height) {}

    /** The line of one gate, on the right of all checks: down from the gate, and to each check that waits for it. */
    record Rail(Placed gate, List<Arrival> arrivals, int x) {
        Rail {
            arrivals = List.copyOf(arrivals);
        }
    }

    /** Where a gate's line comes to a check that waits. */
    record Arrival(Placed waiting, int y) {}

    private PictureLayout(Picture picture) {
        this.picture = picture;
        this.valueColumns = Math.min(
                MOST_VALUE_COLUMNS,
                picture.boxes().stream().mapToInt(Box::depth).max().orElse(0));
        for (Picture.Link link : picture.links()) {
            if (link.tie() != Tie.GATES) {
                sources.computeIfAbsent(link.to(), to -> new ArrayList<>()).add(link.from());
                readers.computeIfAbsent(link.from(), from -> new ArrayList<>()).add(link.to());
            }
        }
        for (int lane = 0; lane < picture.lanes().size(); lane++) {
            place(picture.lanes().get(lane), lane);
        }
        layRails();
    }

    static PictureLayout of(Picture picture) {
        return new PictureLayout(picture);
    }

    Picture picture() {
        return picture;
    }

    List<Band> bands() {
        return bands;
    }

    List<Rail> rails() {
        return rails;
    }

    Iterable<Placed> boxes() {
        return placed.values();
    }

    Placed box(String id) {
        return Objects.requireNonNull(placed.get(id));
    }

    int lane(String id) {
        return Objects.requireNonNull(laneOf.get(id));
    }

    /** The right end of the bands. */
    int right() {
        int last = rails.stream().mapToInt(Rail::x).max().orElse(checksX() + CHECK_WIDTH);
        return last + MARGIN;
    }

    /** The lower end of the bands. */
    int bottom() {
        return bottom;
    }

    private int column(Box box) {
        if (box.kind().isJudgement()) {
            return valueColumns + 1;
        }
        return Math.min(box.depth(), valueColumns);
    }

    private int x(int column) {
        int first = MARGIN + LEFT_ROOM;
        if (column == 0) {
            return first;
        }
        return first + OBSERVATION_WIDTH + COLUMN_GAP + (column - 1) * (VALUE_WIDTH + COLUMN_GAP);
    }

    private int checksX() {
        return x(valueColumns + 1);
    }

    private int width(Box box) {
        return switch (box.kind()) {
            case OBSERVATION -> OBSERVATION_WIDTH;
            case VALUE -> VALUE_WIDTH;
            case CHECK, GATE -> CHECK_WIDTH;
        };
    }

    private void place(Picture.Lane lane, int number) {
        lane.boxes().forEach(box -> laneOf.put(box.id(), number));
        int top = bottom;
        int first = top + (lane.title().isEmpty() ? BOX_GAP : LANE_HEAD);
        int entered = first;
        for (Box box : inRows(lane)) {
            entered = put(box, entered);
        }
        int judged = first;
        for (Box box : lane.boxes()) {
            if (box.kind().isJudgement()) {
                judged = put(box, Math.max(judged, wanted(box)));
            }
        }
        int lowest = Math.max(entered, judged);
        bands.add(new Band(lane.title(), top, lowest - top));
        bottom = lowest + LANE_GAP;
    }

    private int put(Box box, int y) {
        Placed there = Placed.of(box, x(column(box)), width(box)).at(y);
        placed.put(box.id(), there);
        return there.bottom() + BOX_GAP;
    }

    /**
     * What is observed and what is computed, in rows of their own, so that no line runs behind a box: a value below the last
     * that it is computed from, or that is read together with it.
     */
    private List<Box> inRows(Picture.Lane lane) {
        List<String> observed = new ArrayList<>();
        Map<String, Integer> turns = new HashMap<>();
        Map<Integer, List<Box>> below = new HashMap<>();
        for (Box box : lane.boxes()) {
            if (box.kind() == Kind.OBSERVATION) {
                turns.put(box.id(), observed.size());
                observed.add(box.id());
            } else if (box.kind() == Kind.VALUE) {
                int turn = lastOf(box, turns);
                turns.put(box.id(), turn);
                below.computeIfAbsent(turn, none -> new ArrayList<>()).add(box);
            }
        }
        List<Box> rows = new ArrayList<>(below.getOrDefault(-1, List.of()));
        for (Box box : lane.boxes()) {
            if (box.kind() == Kind.OBSERVATION) {
                rows.add(box);
                rows.addAll(below.getOrDefault(turns.get(box.id()), List.of()));
            }
        }
        return rows;
    }

    /** The turn of the last that a value is computed from, or else of what is read together with it; -1 where there is none. */
    private int lastOf(Box value, Map<String, Integer> turns) {
        List<String> from = sources.getOrDefault(value.id(), List.of());
        int last = last(from, turns);
        if (last >= 0) {
            return last;
        }
        return readers.getOrDefault(value.id(), List.of()).stream()
                .limit(MOST_READERS)
                .mapToInt(reader -> last(sources.getOrDefault(reader, List.of()), turns))
                .max()
                .orElse(-1);
    }

    private static int last(List<String> ids, Map<String, Integer> turns) {
        return ids.stream().mapToInt(id -> turns.getOrDefault(id, -1)).max().orElse(-1);
    }

    /** Level with the middle of what it reads in its own lane. */
    private int wanted(Box check) {
        List<Integer> middles = sources.getOrDefault(check.id(), List.of()).stream()
                .filter(id -> Objects.equals(laneOf.get(id), laneOf.get(check.id())))
                .map(id -> box(id).middle())
                .sorted()
                .toList();
        return middles.isEmpty()
                ? 0
                : (middles.get(0) + middles.get(middles.size() - 1)) / 2
                        - Placed.of(check, 0, CHECK_WIDTH).height() / 2;
    }

    /** The rails from the left, each as far down as its gate and what waits for it; two share one where neither is in the way. */
    private void layRails() {
        Map<String, List<Placed>> waiting = new LinkedHashMap<>();
        Map<String, Integer> arrivals = new HashMap<>();
        for (Picture.Link link : picture.links()) {
            if (link.tie() == Tie.GATES) {
                waiting.computeIfAbsent(link.from(), gate -> new ArrayList<>()).add(box(link.to()));
                arrivals.merge(link.to(), 1, Integer::sum);
            }
        }
        List<Map.Entry<String, List<Placed>>> gates = new ArrayList<>(waiting.entrySet());
        gates.sort(Comparator.comparingInt(gate -> top(box(gate.getKey()), gate.getValue())));
        PriorityQueue<int[]> taken = new PriorityQueue<>(Comparator.comparingInt((int[] rail) -> rail[1]));
        Map<String, Integer> arrived = new HashMap<>();
        int rails = 0;
        for (Map.Entry<String, List<Placed>> gate : gates) {
            Placed from = box(gate.getKey());
            int[] free = taken.peek();
            int rail = free != null && free[1] < top(from, gate.getValue()) ? taken.remove()[0] : rails++;
            taken.add(new int[] {rail, end(from, gate.getValue())});
            List<Arrival> arriving = new ArrayList<>();
            for (Placed check : gate.getValue()) {
                String id = check.box().id();
                int port = arrived.merge(id, 1, Integer::sum) - 1;
                arriving.add(new Arrival(check, check.port(port, arrivals.getOrDefault(id, 1))));
            }
            this.rails.add(new Rail(from, arriving, checksX() + CHECK_WIDTH + 26 + rail * RAIL_GAP));
        }
    }

    private static int top(Placed gate, List<Placed> waiting) {
        return Math.min(gate.y(), waiting.stream().mapToInt(Placed::y).min().orElse(gate.y()));
    }

    private static int end(Placed gate, List<Placed> waiting) {
        return Math.max(
                gate.bottom(), waiting.stream().mapToInt(Placed::bottom).max().orElse(0));
    }
}

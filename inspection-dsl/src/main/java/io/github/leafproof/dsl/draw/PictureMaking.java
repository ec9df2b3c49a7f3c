package io.github.leafproof.dsl.draw;

import io.github.leafproof.dsl.draw.Picture.Box;
import io.github.leafproof.dsl.draw.Picture.Kind;
import io.github.leafproof.dsl.draw.Picture.Lane;
import io.github.leafproof.dsl.draw.Picture.Link;
import io.github.leafproof.dsl.draw.Picture.Tie;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Shown;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.record.JobSheet;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** From a graph to its picture: which boxes there are, in which lane, and what ties them. */
final class PictureMaking {

    private final CheckGraph graph;
    private final @Nullable Judgement judgement;
    private final Map<String, List<Box>> lanes = new LinkedHashMap<>();
    private final List<Link> links = new ArrayList<>();
    private final Map<String, String> laneOf = new HashMap<>();
    private final Map<String, Integer> depths = new HashMap<>();
    private final Set<String> drawn = new HashSet<>();

    PictureMaking(CheckGraph graph, @Nullable Judgement judgement) {
        this.graph = graph;
        this.judgement = judgement;
    }

    Picture picture() {
        stages().forEach(stage -> lanes.put(stage, new ArrayList<>()));
        graph.observations().forEach(observation -> {
            place(observation(observation), observation.stage());
            laneOf.put(observation.name(), observation.stage());
        });
        values();
        graph.checks().forEach(check -> place(check(check), check.stage()));
        graph.observations().forEach(observation -> link(observation.when(), id(observation), Tie.DECIDES));
        graph.checks().forEach(this::link);
        CheckGraph.Identity identity = graph.identity();
        return new Picture(
                identity.title(),
                identity.name() + ", revision " + identity.revision() + engine(),
                lanes.entrySet().stream()
                        .filter(lane -> !lane.getValue().isEmpty())
                        .map(lane -> new Lane(lane.getKey(), lane.getValue()))
                        .toList(),
                links);
    }

    private String engine() {
        if (judgement == null) {
            return "";
        }
        JobSheet sheet = judgement.evidence().sheet().heading();
        String serial = sheet.engine().serial();
        return ", " + judgement.evidence().card().content().model()
                + (serial == null ? "" : " " + serial) + ", sheet " + sheet.sheet() + " of " + sheet.date() + ": "
                + judgement.release().release().word().toUpperCase(Locale.ROOT);
    }

    /** The stages in the order of the procedure; one that holds checks only stands where its first check does. */
    private Set<String> stages() {
        List<String> observing = graph.observations().stream()
                .map(Node.Observation::stage)
                .distinct()
                .toList();
        Set<String> stages = new LinkedHashSet<>();
        for (Node.Check check : graph.checks()) {
            int before = observing.indexOf(check.stage());
            observing.subList(0, Math.max(0, before)).forEach(stages::add);
            stages.add(check.stage());
        }
        stages.addAll(observing);
        return stages;
    }

    private void place(Box box, String stage) {
        lanes.computeIfAbsent(stage, title -> new ArrayList<>()).add(box);
        drawn.add(box.id());
    }

    /** Values on the way to a verdict, or to whether something applies; what is only told in advice is left out. */
    private void values() {
        Set<Node> read = new HashSet<>();
        Deque<Formula> open = new ArrayDeque<>();
        Map<Node, String> wanted = new HashMap<>();
        for (Node.Check check : graph.checks()) {
            open.add(check.requirement());
            if (check.when() != null) {
                open.add(check.when());
            }
            follow(open, read, wanted, check.stage());
        }
        for (Node.Observation observation : graph.observations()) {
            if (observation.when() != null) {
                open.add(observation.when());
                follow(open, read, wanted, observation.stage());
            }
        }
        for (Node.Derived derived : graph.derived()) {
            if (read.contains(derived)) {
                value(derived, String.valueOf(wanted.get(derived)));
            }
        }
    }

    private void follow(Deque<Formula> open, Set<Node> read, Map<Node, String> wanted, String stage) {
        while (!open.isEmpty()) {
            for (Node node : graph.readBy(open.remove())) {
                if (node instanceof Node.Derived derived && read.add(node)) {
                    wanted.put(node, stage);
                    open.add(derived.formula());
                }
            }
        }
    }

    /** A value stands in the lane of the last observation that it is computed from, or where it is wanted first. */
    private void value(Node.Derived derived, String wantedIn) {
        int depth = 1;
        List<String> order = List.copyOf(lanes.keySet());
        List<Node> read = graph.readBy(derived.formula());
        // Values of the card alone stand where they are wanted, all others no later than what they rest on.
        String lane = read.stream().noneMatch(node -> laneOf.containsKey(node.name())) ? wantedIn : order.get(0);
        for (Node node : read) {
            depth = Math.max(depth, 1 + depths.getOrDefault(node.name(), 0));
            String its = laneOf.get(node.name());
            if (its != null && order.indexOf(its) > order.indexOf(lane)) {
                lane = its;
            }
        }
        depths.put(derived.name(), depth);
        laneOf.put(derived.name(), lane);
        List<String> notes = new ArrayList<>(List.of("= " + derived.formula().words()));
        if (judgement != null) {
            notes.add("= " + said(judgement.frame().slot(derived.slot())));
            // Without an engine the formula has said their names.
            ofTheEngine(notes, derived.formula());
        }
        place(new Box(id(derived), Kind.VALUE, depth, derived.name(), notes, null, ""), lane);
        link(derived.formula(), id(derived), Tie.FEEDS);
    }

    private Box observation(Node.Observation observation) {
        List<String> notes = new ArrayList<>();
        String gauge = observation.gauge() == null
                ? ""
                : ", with " + observation.gauge().name();
        notes.add(observation.type().words() + gauge + (observation.optional() ? ", optional" : ""));
        if (!observation.needs().isEmpty()) {
            notes.add(observation.needs().stream()
                    .map(need -> need.name() + " " + need.state())
                    .collect(Collectors.joining(", ", "bench: ", "")));
        }
        if (judgement != null) {
            notes.add("= " + said(judgement.frame().slot(observation.slot())));
        }
        ofTheEngine(notes, observation.when());
        Value ask = judgement == null ? null : observation.ask().value(judgement.frame());
        String hint = ask instanceof Value.Words words
                ? words.text()
                : observation.ask().words().replaceAll("^\"|\"$", "");
        return new Box(id(observation), Kind.OBSERVATION, 0, observation.name(), notes, null, hint);
    }

    /**
     * Which facts of the engine are read here. They stand in the boxes and not in boxes of their own, since lines from a few
     * limits to half of all checks would cover the picture.
     */
    private void ofTheEngine(List<String> notes, @Nullable Formula... formulas) {
        Set<String> facts = new LinkedHashSet<>();
        for (Formula formula : formulas) {
            for (Node node : formula == null ? List.<Node>of() : graph.readBy(formula)) {
                if (node instanceof Node.Fact fact) {
                    facts.add(fact.name()
                            + (judgement == null
                                    ? ""
                                    : " " + said(judgement.frame().slot(fact.slot()))));
                }
            }
        }
        if (!facts.isEmpty()) {
            notes.add("reads " + String.join(", ", facts));
        }
    }

    private String said(Value value) {
        if (value instanceof Value.Missing missing) {
            return missing.lacks().size() == 1 ? missing.lacks().get(0).words() : "not known";
        }
        return judgement == null ? "" : Shown.measured(value, judgement.units());
    }

    private Box check(Node.Check check) {
        List<String> notes = new ArrayList<>();
        notes.add(check.name() + ", " + check.severity().word() + (check.gate() ? ", gate" : ""));
        if (!check.after().isEmpty()) {
            notes.add(check.after().stream()
                    .map(gate -> graph.checks().get(gate).name())
                    .collect(Collectors.joining(", ", "waits for ", "")));
        }
        ofTheEngine(notes, check.when(), check.requirement());
        return new Box(
                id(check),
                check.gate() ? Kind.GATE : Kind.CHECK,
                0,
                check.title(),
                notes,
                judgement == null
                        ? null
                        : judgement.verdicts().get(check.number()).outcome(),
                check.requirement().words());
    }

    private void link(Node.Check check) {
        link(check.requirement(), id(check), Tie.FEEDS);
        link(check.when(), id(check), Tie.DECIDES);
        check.after().forEach(gate -> links.add(new Link("c" + gate, id(check), Tie.GATES)));
    }

    private void link(@Nullable Formula formula, String to, Tie tie) {
        if (formula == null) {
            return;
        }
        for (Node node : graph.readBy(formula)) {
            String from = id(node);
            if (drawn.contains(from) && !from.equals(to)) {
                links.add(new Link(from, to, tie));
            }
        }
    }

    private static String id(Node node) {
        if (node instanceof Node.Check check) {
            return "c" + check.number();
        }
        if (node instanceof Node.Observation observation) {
            return "o" + observation.slot();
        }
        return node instanceof Node.Derived derived ? "v" + derived.slot() : "f" + ((Node.Fact) node).slot();
    }
}

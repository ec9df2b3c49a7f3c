package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A procedure compiled. Facts, observations and derived values live in numbered slots; checks are numbered in the order
 * of the procedure. Edges are what formulas read and what gates stand before a check; nobody writes them by hand.
 */
public final class CheckGraph {

    private final Identity identity;
    private final Parts parts;
    private final Map<String, Node> byName;
    private final Node[] bySlot;
    private final List<Integer> checkOrder;
    private final SettlingOrder settlingOrder;
    private volatile @Nullable Readers readers;
    private volatile @Nullable Ties ties;

    CheckGraph(Identity identity, Parts parts) {
        this.identity = identity;
        this.parts = parts;
        this.byName = index(parts);
        this.bySlot = indexBySlot(parts);
        this.checkOrder = gatesFirst(parts.checks());
        this.settlingOrder = SettlingOrder.of(parts.derived(), parts.observations());
    }

    /** A procedure's name, title, revision, the SHA-256 of its own file, and the files that it uses. */
    public record Identity(String name, String title, int revision, String sha256, List<Part> parts) {
        public Identity {
            parts = List.copyOf(parts);
        }
    }

    /** A file that a procedure uses: its name as seen from the procedures' folder, and the SHA-256 of it. */
    public record Part(String name, String sha256) {}

    /**
     * What a graph is made of. Derived values stand in an order in which each comes after all that it reads.
     *
     * @param applies for which engines the procedure is meant, or null for any
     * @param rule the confidence with which derived conditions are decided
     */
    public record Parts(
            List<BenchState> states,
            List<GaugeNeed> gauges,
            List<Node.Fact> facts,
            List<Node.Observation> observations,
            List<Node.Derived> derived,
            List<Node.Check> checks,
            @Nullable Formula applies,
            DecisionRule rule,
            ReleaseRule release) {
        public Parts {
            states = List.copyOf(states);
            gauges = List.copyOf(gauges);
            facts = List.copyOf(facts);
            observations = List.copyOf(observations);
            derived = List.copyOf(derived);
            checks = List.copyOf(checks);
        }
    }

    /**
     * A graph of these parts.
     *
     * @throws IllegalArgumentException if two nodes share a name, or if gates, or values and observations, wait for each
     *     other in a circle
     */
    public static CheckGraph of(Identity identity, Parts parts) {
        return new CheckGraph(identity, parts);
    }

    private static Map<String, Node> index(Parts parts) {
        List<Node> nodes = new ArrayList<>(parts.facts());
        nodes.addAll(parts.observations());
        nodes.addAll(parts.derived());
        nodes.addAll(parts.checks());
        Map<String, Node> index = new HashMap<>(2 * nodes.size());
        for (Node node : nodes) {
            if (index.put(node.name(), node) != null) {
                throw new IllegalArgumentException("two nodes are named " + node.name());
            }
        }
        return index;
    }

    private static Node[] indexBySlot(Parts parts) {
        Node[] index = new Node[slots(parts)];
        parts.facts().forEach(fact -> index[fact.slot()] = fact);
        parts.observations().forEach(observation -> index[observation.slot()] = observation);
        parts.derived().forEach(derived -> index[derived.slot()] = derived);
        return index;
    }

    private static List<Integer> gatesFirst(List<Node.Check> checks) {
        int[] waiting = new int[checks.size()];
        List<List<Integer>> followers = new ArrayList<>(Collections.nCopies(checks.size(), List.of()));
        for (Node.Check check : checks) {
            waiting[check.number()] = check.after().size();
            for (int gate : check.after()) {
                if (followers.get(gate).isEmpty()) {
                    followers.set(gate, new ArrayList<>());
                }
                followers.get(gate).add(check.number());
            }
        }
        List<Integer> order = new ArrayList<>(checks.size());
        checks.stream()
                .map(Node.Check::number)
                .filter(number -> waiting[number] == 0)
                .forEach(order::add);
        for (int next = 0; next < order.size(); next++) {
            for (int follower : followers.get(order.get(next))) {
                if (--waiting[follower] == 0) {
                    order.add(follower);
                }
            }
        }
        if (order.size() < checks.size()) {
            throw new IllegalArgumentException("gates wait for each other in a circle");
        }
        return List.copyOf(order);
    }

    public Identity identity() {
        return identity;
    }

    public List<BenchState> states() {
        return parts.states();
    }

    public List<GaugeNeed> gauges() {
        return parts.gauges();
    }

    public List<Node.Fact> facts() {
        return parts.facts();
    }

    public List<Node.Observation> observations() {
        return parts.observations();
    }

    /** Derived values, each after all that it reads. */
    public List<Node.Derived> derived() {
        return parts.derived();
    }

    /** Checks in the order of the procedure. */
    public List<Node.Check> checks() {
        return parts.checks();
    }

    public Optional<Formula> applies() {
        return Optional.ofNullable(parts.applies());
    }

    public DecisionRule rule() {
        return parts.rule();
    }

    public ReleaseRule release() {
        return parts.release();
    }

    /** The node of that name, loops written out: {@code lash[intake]}. */
    public Optional<Node> node(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** How many slots an evaluation needs. */
    public int slots() {
        return bySlot.length;
    }

    private static int slots(Parts parts) {
        return parts.facts().size()
                + parts.observations().size()
                + parts.derived().size();
    }

    /** Checks by number, each after the gates it waits for. */
    public List<Integer> checkOrder() {
        return checkOrder;
    }

    /** Derived values, and the observations that may turn out not to apply, each after all that it reads. */
    public List<Node> settlingOrder() {
        return settlingOrder.nodes();
    }

    /** Those of them that lie in some of the slots. */
    List<Node> settlingOrderIn(Collection<Integer> slots) {
        return settlingOrder.in(slots);
    }

    /** What a check's verdict rests on: facts, observations, values, gauges, states of the bench, gates. */
    public Needs needsOf(Node.Check check) {
        return Questions.needs(this, check);
    }

    /** The observations that decide whether one is asked for; none where it always is. */
    public List<Node.Observation> decidingOn(Node.Observation observation) {
        return ties().deciding(observation);
    }

    /** What an observation bears on: values, checks, advice, and what waits for these. */
    public Affected affectedBy(Node.Observation observation) {
        return Questions.affected(this, observation);
    }

    /** The nodes that a formula reads itself, each once, in the order of their slots. */
    public List<Node> readBy(Formula formula) {
        Set<Integer> slots = new TreeSet<>();
        formula.slots(slots::add);
        return slots.stream().map(this::inSlot).toList();
    }

    /**
     * All that is to be observed, in an order that changes the bench least: see {@link StepOrder}. Nothing is known of an
     * engine yet, so what may turn out not to apply to it is in the order, too.
     */
    public StepOrder stepOrder() {
        return StepOrder.of(this, parts.observations(), Map.of());
    }

    /**
     * Some observations in an order that changes the bench least from where it is: what is left of an inspection that was
     * begun. What is not among them counts as looked at, and lets go on what waits for it.
     *
     * @param observations in the order of the procedure
     * @param stands how the states of the bench stand, by their names; a state that is not named stands as it starts
     */
    public StepOrder stepOrder(List<Node.Observation> observations, Map<String, String> stands) {
        return StepOrder.of(this, observations, stands);
    }

    /**
     * The changes that bring the bench to where an observation needs it: what ends a hazard first, what begins one last.
     *
     * @param stands how the states of the bench stand, by their names; a state that is not named stands as it starts
     */
    public List<StepOrder.Change> setup(Node.Observation observation, Map<String, String> stands) {
        return StepOrder.setup(this, observation, stands);
    }

    /** The state of that name. */
    public BenchState state(String name) {
        return parts.states().stream()
                .filter(state -> state.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The observations of these names, in the order of the procedure. */
    List<Node.Observation> observationsNamed(Set<String> names) {
        List<Node.Observation> found = new ArrayList<>();
        for (String name : names) {
            if (byName.get(name) instanceof Node.Observation observation) {
                found.add(observation);
            }
        }
        found.sort(Comparator.comparingInt(observation -> readers().placeOf(observation.slot())));
        return found;
    }

    /** The fact, observation or derived value of a slot. */
    Node inSlot(int slot) {
        return bySlot[slot];
    }

    /** Made when it is first asked for: whoever only judges whole sheets does without. */
    Readers readers() {
        Readers known = readers;
        if (known == null) {
            known = Readers.of(this);
            readers = known;
        }
        return known;
    }

    /** What hangs on what; worked out when it is first asked for. */
    public Ties ties() {
        Ties known = ties;
        if (known == null) {
            known = Ties.of(this);
            ties = known;
        }
        return known;
    }

    /** The observations that a check's verdict rests on, through derived values, in the order of the procedure. */
    public List<Node.Observation> observationsOf(Node.Check check) {
        // A work list and not a sweep over the whole graph: every check asks this, and there may be 100 000 of them.
        Set<Integer> read = new TreeSet<>();
        Deque<Integer> open = new ArrayDeque<>();
        IntConsumer reader = slot -> {
            if (read.add(slot)) {
                open.add(slot);
            }
        };
        check.requirement().slots(reader);
        if (check.when() != null) {
            check.when().slots(reader);
        }
        while (!open.isEmpty()) {
            if (bySlot[open.remove()] instanceof Node.Derived derived) {
                derived.formula().slots(reader);
            }
        }
        return read.stream()
                .map(this::inSlot)
                .flatMap(node -> node instanceof Node.Observation observation ? Stream.of(observation) : Stream.of())
                .toList();
    }
}

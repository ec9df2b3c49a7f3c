package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.meaning.Saying.Kind;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The places of a procedure while they are being found: each round of a loop adds the ways that it makes possible. */
final class SayingDrafts {

    /** A place: two of a kind may begin together, as the lines of a release that nobody wrote down do. */
    record Key(Kind kind, Span span, String name) {}

    private record Draft(Set<Way> ways, List<String> restsOn) {}

    private final CheckGraph graph;
    private final Map<Integer, Node> nodes = new HashMap<>();
    private final Map<Key, Draft> drafts = new LinkedHashMap<>();

    SayingDrafts(CheckGraph graph) {
        this.graph = graph;
        graph.facts().forEach(each -> nodes.put(each.slot(), each));
        graph.observations().forEach(each -> nodes.put(each.slot(), each));
        graph.derived().forEach(each -> nodes.put(each.slot(), each));
    }

    CheckGraph graph() {
        return graph;
    }

    /** A place, its name as it is written there. */
    static Key at(Kind kind, Span span) {
        return new Key(kind, span, written(span));
    }

    /** What is written there, in one line. */
    static String written(Span span) {
        return span.source().of(span).replaceAll("\\s+", " ");
    }

    void add(Key key, Set<Way> ways, Formula readBy) {
        Draft draft = drafts.get(key);
        if (draft == null) {
            draft = new Draft(EnumSet.noneOf(Way.class), restsOn(readBy));
            drafts.put(key, draft);
        }
        draft.ways.addAll(ways);
    }

    void add(Key key, Set<Way> ways) {
        drafts.computeIfAbsent(key, same -> new Draft(EnumSet.noneOf(Way.class), List.of()))
                .ways
                .addAll(ways);
    }

    /** The observations and facts that a formula reads, through values; facts only where there is nothing else. */
    private List<String> restsOn(Formula formula) {
        Set<Integer> read = new TreeSet<>();
        Deque<Integer> open = new ArrayDeque<>();
        formula.slots(open::add);
        while (!open.isEmpty()) {
            int slot = open.remove();
            if (read.add(slot) && nodes.get(slot) instanceof Node.Derived derived) {
                derived.formula().slots(open::add);
            }
        }
        List<Node> leaves = read.stream()
                .map(nodes::get)
                .filter(node -> !(node instanceof Node.Derived))
                .toList();
        boolean observed = leaves.stream().anyMatch(Node.Observation.class::isInstance);
        return leaves.stream()
                .filter(node -> !observed || node instanceof Node.Observation)
                .map(Node::name)
                .toList();
    }

    /** All places, in the order of the files and of each file. */
    Map<Key, Saying> inOrder(List<SourceText> files) {
        return drafts.entrySet().stream()
                .sorted(Comparator.comparingInt((Map.Entry<Key, Draft> each) ->
                                files.indexOf(each.getKey().span().source()))
                        .thenComparingInt(each -> each.getKey().span().start())
                        .thenComparing(each -> each.getKey().kind()))
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        each -> saying(each.getKey(), each.getValue()),
                        (one, same) -> one,
                        LinkedHashMap::new));
    }

    private static Saying saying(Key key, Draft draft) {
        Set<Way> never = key.kind().conceivable();
        never.removeAll(draft.ways);
        boolean sided = draft.ways.contains(Way.FAILS_LOW);
        never.remove(sided ? Way.FAILS : Way.FAILS_LOW);
        if (!sided) {
            never.remove(Way.FAILS_HIGH);
        }
        return new Saying(key.kind(), key.name(), key.span(), draft.ways, never, draft.restsOn);
    }
}

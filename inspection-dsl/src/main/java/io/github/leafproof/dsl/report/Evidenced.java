package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.report.Parting.Kind;
import io.github.leafproof.dsl.report.Parting.Link;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What was stated, entered and computed for a part of a check, as links of the way to its verdict. */
final class Evidenced {

    /** A series may have hundreds of entries, and nobody reads them all. */
    private static final int MOST_ENTRIES = 12;

    private final Judgement judgement;
    private final Node.Check check;
    private final Explanation explanation;

    Evidenced(Judgement judgement, Node.Check check) {
        this.judgement = judgement;
        this.check = check;
        this.explanation = Explaining.of(judgement, check);
    }

    /** How sure one has to be. */
    String decision() {
        return explanation.decision();
    }

    /** All that a formula rests on, near or far: facts, then entries, then values. */
    List<Link> of(Formula formula) {
        return links(read(formula));
    }

    /** The same without what is lacking. */
    List<Link> knownOf(Formula formula) {
        Set<String> known = read(formula);
        known.removeIf(name -> isLacking(name));
        return links(known);
    }

    /** Whether nothing is lacking of all that a formula rests on. */
    boolean lacksNothing(Formula formula) {
        return read(formula).stream().noneMatch(this::isLacking);
    }

    /** Something that is lacking, as a link. */
    Link lack(Value.Lack lack) {
        Kind kind = judgement
                .graph()
                .node(lack.subject())
                .map(Evidenced::kind)
                .orElse(lack.kind() == Value.Lack.Kind.NOT_ON_CARD ? Kind.FACT : Kind.VALUE);
        return Link.of(kind, check.name(), lack.toString(), null);
    }

    private static Kind kind(Node node) {
        if (node instanceof Node.Observation) {
            return Kind.ENTRY;
        }
        return node instanceof Node.Fact ? Kind.FACT : node instanceof Node.Check ? Kind.CONDITION : Kind.VALUE;
    }

    private List<Link> links(Set<String> names) {
        List<Link> links = new ArrayList<>();
        explanation.facts().stream()
                .filter(fact -> names.contains(fact.name()))
                .forEach(fact -> links.add(Link.of(
                        Kind.FACT,
                        check.name(),
                        fact.name(),
                        fact.value() + (fact.source() == null ? "" : ", stated by " + fact.source()))));
        explanation.observations().stream()
                .filter(observed -> names.contains(observed.name()))
                .forEach(observed -> links.addAll(entries(observed)));
        explanation.values().stream()
                .filter(value -> names.contains(value.name()))
                .forEach(value -> links.add(
                        Link.of(Kind.VALUE, check.name(), value.name() + " = " + value.formula(), value.value())));
        return links;
    }

    private List<Link> entries(Explanation.Observed observed) {
        if (observed.entries().isEmpty()) {
            return List.of(Link.of(Kind.ENTRY, check.name(), observed.name(), observed.value()));
        }
        List<Link> entries = new ArrayList<>(observed.entries().stream()
                .limit(MOST_ENTRIES)
                .map(entry -> Link.of(Kind.ENTRY, check.name(), entry, null))
                .toList());
        int more = observed.entries().size() - MOST_ENTRIES;
        if (more > 0) {
            entries.add(Link.of(Kind.ENTRY, check.name(), "and " + more + " more of " + observed.name(), null));
        }
        return entries;
    }

    private boolean isLacking(String name) {
        return judgement
                .graph()
                .node(name)
                .map(Evidenced::slot)
                .filter(slot -> slot >= 0 && judgement.frame().slot(slot) instanceof Value.Missing)
                .isPresent();
    }

    private static int slot(Node node) {
        if (node instanceof Node.Observation observation) {
            return observation.slot();
        }
        return node instanceof Node.Fact fact
                ? fact.slot()
                : node instanceof Node.Derived derived ? derived.slot() : -1;
    }

    private Set<String> read(Formula formula) {
        Set<String> names = new TreeSet<>();
        Deque<Formula> open = new ArrayDeque<>(List.of(formula));
        while (!open.isEmpty()) {
            for (Node node : judgement.graph().readBy(open.remove())) {
                if (names.add(node.name()) && node instanceof Node.Derived derived) {
                    open.add(derived.formula());
                }
            }
        }
        return names;
    }
}

package io.github.leafproof.dsl.edges;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.Statistic;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.dsl.syntax.Declaration.Entered;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Finds the entries on the edges of a procedure. Each is one of the procedure's own cases in which the check is decided, with
 * a single entry changed, so that the rest of it makes sense to people of the trade.
 */
public final class Edges {

    /** From what a case is best made: where the check passes, a single entry can make it fail. */
    private static final List<Outcome> BEST_FIRST = List.of(
            Outcome.PASSES,
            Outcome.TOLERATED,
            Outcome.OPEN,
            Outcome.FAILS,
            Outcome.CONTRADICTED,
            Outcome.NOT_APPLICABLE);

    /** So many cases are tried for a condition. */
    private static final int MOST_CASES = 6;

    private final CheckGraph graph;
    private final List<Base> cases;

    private Edges(CheckGraph graph, List<Base> cases) {
        this.graph = graph;
        this.cases = List.copyOf(cases);
    }

    /**
     * The edges of all checks.
     *
     * @param cases the procedure's own cases, in the order of the file; none of them surprises
     */
    public static EdgeReport of(CheckGraph graph, List<Base> cases) {
        Edges edges = new Edges(graph, cases);
        List<EdgeReport> found = graph.checks().parallelStream().map(edges::of).toList();
        Map<String, Edge> byTitle = new LinkedHashMap<>();
        found.stream().flatMap(each -> each.edges().stream()).forEach(edge -> byTitle.putIfAbsent(edge.title(), edge));
        Set<String> taken =
                cases.stream().map(each -> each.written().title().plain()).collect(Collectors.toSet());
        return new EdgeReport(
                byTitle.values().stream()
                        .filter(edge -> !taken.contains(edge.title()))
                        .toList(),
                found.stream()
                        .flatMap(each -> each.notReached().stream())
                        .distinct()
                        .toList());
    }

    private EdgeReport of(Node.Check check) {
        List<Base> deciding = cases.stream()
                .filter(each -> BEST_FIRST.contains(each.verdict(check).outcome()))
                .sorted(Comparator.comparingInt(
                        each -> BEST_FIRST.indexOf(each.verdict(check).outcome())))
                .toList();
        List<Edge> edges = new ArrayList<>();
        List<NotReached> notReached = new ArrayList<>();
        for (Formula condition : Conditions.of(check)) {
            List<Node.Observation> observations = Conditions.observations(graph, condition);
            if (observations.isEmpty()) {
                continue;
            }
            List<Edge> found = deciding.isEmpty() ? List.of() : edges(check, condition, observations, deciding);
            edges.addAll(found);
            if (found.isEmpty()) {
                notReached.add(new NotReached(check.name(), condition.words(), whyNone(check, observations, deciding)));
            } else if (condition == check.requirement()
                    && condition instanceof LimitsHeld
                    && !passes(check, found, deciding)) {
                notReached.add(new NotReached(
                        check.name(),
                        condition.words(),
                        "nothing that is entered for " + found.get(0).observation()
                                + " lets it pass: with this gauge and" + " these limits it stays open at best"));
            }
        }
        return new EdgeReport(edges, notReached);
    }

    private static boolean passes(Node.Check check, List<Edge> found, List<Base> deciding) {
        return deciding.get(0).verdict(check).outcome() == Outcome.PASSES
                || found.stream().anyMatch(edge -> edge.outcome() == Outcome.PASSES);
    }

    /** By the first observation, in the first case, that makes a difference. */
    private List<Edge> edges(
            Node.Check check, Formula condition, List<Node.Observation> observations, List<Base> deciding) {
        for (Node.Observation observation : observations) {
            List<Base> entering = deciding.stream()
                    .filter(each -> each.entered(observation).isPresent())
                    .limit(MOST_CASES)
                    .toList();
            for (Base base : entering) {
                List<Edge> found =
                        edges(check, observation, base, Conditions.statistics(graph, condition, observation));
                if (!found.isEmpty()) {
                    return found;
                }
            }
        }
        return List.of();
    }

    private static List<Edge> edges(Node.Check check, Node.Observation observation, Base base, Set<Statistic> used) {
        Entered entered = base.entered(observation).orElseThrow();
        GaugeTray tray = base.judgement().evidence().tray().content();
        Writing writing = new Writing(base, check, observation);
        List<Edge> edges = new ArrayList<>();
        for (Axis axis : Axes.of(observation, entered, tray, used)) {
            for (Search.Flip flip : new Search(base, check, observation, axis).flips()) {
                edges.addAll(writing.of(flip, axis.start()));
            }
        }
        if (observation.type() instanceof Type.Gap
                && observation.gauge() != null
                && tray.gauge(observation.gauge().name()).orElse(null) instanceof FeelSet set) {
            new Leaves(base, check, observation, set)
                    .edges()
                    .forEach(pair -> writing.of(pair).ifPresent(edges::add));
        }
        Set<Outcome> shown = EnumSet.of(base.verdict(check).outcome());
        for (Change other : Alternatives.to(observation.type(), entered)) {
            // Every option that passes, and one of those that come to anything else.
            writing.of(other)
                    .filter(edge -> (edge.outcome() == Outcome.PASSES && observation.type() instanceof Type.Choice)
                            || shown.add(edge.outcome()))
                    .ifPresent(edges::add);
        }
        boolean makesADifference = edges.stream()
                .anyMatch(edge -> edge.outcome() != base.verdict(check).outcome());
        return makesADifference ? edges : List.of();
    }

    private String whyNone(Node.Check check, List<Node.Observation> observations, List<Base> deciding) {
        if (cases.isEmpty()) {
            return "there is no rehearsal to begin with";
        }
        String names = observations.stream().map(Node.Observation::name).collect(Collectors.joining(", "));
        boolean judged = deciding.stream().anyMatch(each -> each.verdict(check).outcome() != Outcome.NOT_APPLICABLE);
        if (!judged) {
            return "no rehearsal decides the check: in the first "
                    + undecided(cases.get(0).verdict(check));
        }
        boolean entered = deciding.stream()
                .anyMatch(each ->
                        observations.stream().anyMatch(one -> each.entered(one).isPresent()));
        return entered
                ? "the check comes to the same whatever else is entered for " + names
                : "no rehearsal that decides the check enters " + names;
    }

    private static String undecided(Verdict verdict) {
        if (!verdict.blockedBy().isEmpty()) {
            return "it is blocked by "
                    + verdict.blockedBy().stream().map(Node.Check::name).collect(Collectors.joining(", "));
        }
        return verdict.lacks().isEmpty()
                ? "it does not apply"
                : verdict.lacks().get(0).toString();
    }

    /** What an entry comes to, as edges are written. */
    private record Writing(Base base, Node.Check check, Node.Observation observation) {

        List<Edge> of(Search.Flip flip, long start) {
            Outcome before = flip.before().outcome();
            Outcome behind = flip.behind().outcome();
            if (!Search.SETTLED.contains(behind)) {
                return List.of();
            }
            List<Edge> edges = new ArrayList<>();
            // What lies in the middle between passing and failing is not on an edge of its own.
            if (before != Outcome.OPEN && flip.before().step() != start) {
                edges.add(edge(flip.before().change(), flip.before().judgement(), ", the last that "));
            }
            if (behind != Outcome.OPEN || before != Outcome.FAILS) {
                edges.add(edge(flip.behind().change(), flip.behind().judgement(), ", the first that "));
            }
            return edges;
        }

        Optional<Edge> of(Change change) {
            return base.with(observation, change)
                    .filter(judgement -> Search.SETTLED.contains(outcome(judgement)))
                    .map(judgement -> edge(change, judgement, ", which "));
        }

        private Outcome outcome(Judgement judgement) {
            return judgement.verdicts().get(check.number()).outcome();
        }

        private Edge edge(Change change, Judgement judgement, String how) {
            Outcome outcome = outcome(judgement);
            List<String> expected = new ArrayList<>();
            expected.add(check.name() + " " + outcome.word());
            for (Verdict verdict : judgement.verdicts()) {
                boolean otherwise =
                        verdict.outcome() != base.verdict(verdict.check()).outcome();
                if (otherwise && verdict.check().number() != check.number()) {
                    expected.add(
                            verdict.check().name() + " " + verdict.outcome().word());
                }
            }
            return new Edge(
                    check.name() + ": " + observation.name() + " " + change.name() + how + verb(outcome),
                    check.name(),
                    observation.name(),
                    change.text(),
                    outcome,
                    base,
                    expected,
                    judgement.release().release().word());
        }

        private static String verb(Outcome outcome) {
            return switch (outcome) {
                case PASSES -> "passes";
                case TOLERATED -> "is tolerated";
                case FAILS -> "fails";
                case OPEN -> "proves nothing";
                case CONTRADICTED -> "contradicts itself";
                case NOT_APPLICABLE -> "it is not asked of";
                case UNTESTED, BLOCKED -> throw new IllegalArgumentException("nothing is found there");
            };
        }
    }
}

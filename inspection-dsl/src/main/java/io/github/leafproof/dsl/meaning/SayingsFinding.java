package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Occasion;
import io.github.leafproof.dsl.meaning.Saying.Kind;
import io.github.leafproof.dsl.source.Damage;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Target;
import io.github.leafproof.inspection.verdict.Condition;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Finds everything that a procedure can say. */
final class SayingsFinding {

    private final Outline outline;
    private final Sites sites;
    private final CheckGraph graph;
    private final SayingDrafts drafts;
    private final Sides sides;
    private final Possibilities always;
    private final CheckReach reach;
    private final Doubts doubts;
    private final Map<Integer, Set<Way>> ways = new HashMap<>();
    private final Map<Integer, List<GateAt>> gates = new HashMap<>();
    private final Map<SayingDrafts.Key, List<Node.Check>> members = new LinkedHashMap<>();

    private record GateAt(Node.Check gate, SayingDrafts.Key key) {}

    private SayingsFinding(Outline outline, Sites sites, CheckGraph graph, List<SourceText> files) {
        this.outline = outline;
        this.sites = sites;
        this.graph = graph;
        this.drafts = new SayingDrafts(graph);
        this.sides = new Sides(sites, drafts);
        Ground ground = new Ground(
                graph.facts(),
                graph.observations(),
                graph.derived(),
                graph.checks().size());
        Possibilities any = new Possibilities(ground);
        this.always = graph.applies().flatMap(any::where).orElse(any);
        // What there is to complain of was said when the procedure was compiled.
        this.reach = new CheckReach(new Problems(List.of(), files, Damage.none()), outline, always);
        this.doubts = new Doubts(graph, sites);
    }

    /** @param files the texts of the procedure, in the order in which their places are told */
    static Sayings of(Outline outline, Sites sites, CheckGraph graph, List<SourceText> files) {
        return new SayingsFinding(outline, sites, graph, files).find(files);
    }

    private Sayings find(List<SourceText> files) {
        reach.look(graph.checks());
        graph.applies().ifPresent(applies -> sides.granted(applies, always));
        for (Node.Derived derived : graph.derived()) {
            if (sites.conditions.containsKey(derived.formula())) {
                sides.decision(derived.formula(), always);
            } else {
                sides.within(derived.formula(), always);
            }
        }
        for (Node.Observation observation : graph.observations()) {
            sides.within(observation.ask(), always);
            if (observation.when() != null) {
                sides.decision(observation.when(), always);
            }
        }
        graph.checks().forEach(this::gates);
        graph.checks().forEach(check -> ways.put(check.number(), ways(check)));
        graph.checks().forEach(this::check);
        List<SayingDrafts.Key> lines = lines();
        Map<SayingDrafts.Key, Saying> all = drafts.inOrder(files);
        Map<Integer, List<Sayings.Gated>> gated = new HashMap<>();
        gates.forEach((number, found) -> gated.put(
                number,
                found.stream()
                        .map(each -> new Sayings.Gated(each.gate(), Objects.requireNonNull(all.get(each.key()))))
                        .toList()));
        return new Sayings(outline, sites, all, gated, members, lines);
    }

    private void gates(Node.Check check) {
        Item<Declaration.Check> item = Objects.requireNonNull(outline.checks.get(check.name()));
        List<Target> waitedFor = new ArrayList<>(item.declaration().after());
        boolean isStageGate = item.stageGates().stream().map(item.env()::key).anyMatch(check.name()::equals);
        if (!isStageGate) {
            waitedFor.addAll(item.stageGates());
        }
        for (Target target : waitedFor) {
            SayingDrafts.Key key = SayingDrafts.at(Kind.GATE, target.span());
            Node.Check gate = (Node.Check) graph.node(item.env().key(target)).orElseThrow();
            gates.computeIfAbsent(check.number(), number -> new ArrayList<>()).add(new GateAt(gate, key));
            Set<Way> possible = EnumSet.noneOf(Way.class);
            for (Outcome outcome : reach.outcomes(gate.name())) {
                possible.add(outcome.letsThrough() ? Way.LETS_THROUGH : Way.HOLDS_BACK);
            }
            drafts.add(key, possible, gate.requirement());
        }
    }

    private Set<Way> ways(Node.Check check) {
        Set<Outcome> outcomes = reach.outcomes(check.name());
        Set<Way> possible = EnumSet.noneOf(Way.class);
        outcomes.forEach(outcome -> possible.add(Way.of(outcome)));
        if (!doubts.canStayOpen(check)) {
            possible.remove(Way.OPEN);
        }
        if (!doubts.canContradict(check)) {
            possible.remove(Way.CONTRADICTED);
        }
        if (check.when() == null && !doubts.canBeLeftOut(check.requirement(), always)) {
            possible.remove(Way.NOT_APPLICABLE);
        }
        boolean held = check.after().stream()
                .map(number -> graph.checks().get(number).name())
                .anyMatch(gate -> reach.outcomes(gate).stream().anyMatch(outcome -> !outcome.letsThrough()));
        if (!held) {
            possible.remove(Way.BLOCKED);
        }
        if (reach.occasions(check.name()).containsAll(EnumSet.of(Occasion.LOW, Occasion.HIGH))
                && possible.remove(Way.FAILS)) {
            possible.addAll(EnumSet.of(Way.FAILS_LOW, Way.FAILS_HIGH));
        }
        return possible;
    }

    private void check(Node.Check check) {
        Declaration.Check written =
                Objects.requireNonNull(outline.checks.get(check.name())).declaration();
        Set<Way> possible = Objects.requireNonNull(ways.get(check.number()));
        SayingDrafts.Key key = Sayings.key(written);
        drafts.add(key, possible, check.requirement());
        members.computeIfAbsent(key, same -> new ArrayList<>()).add(check);
        Optional<Possibilities> applies = Optional.of(always);
        if (check.when() != null) {
            sides.decision(check.when(), always);
            applies = always.where(check.when());
        }
        Optional<Possibilities> judged = applies.flatMap(from -> behindGates(check, from));
        judged.ifPresent(so -> requirement(check, written, so));
        for (int number = 0; number < check.advice().size(); number++) {
            Node.Advice advice = check.advice().get(number);
            SayingDrafts.Key at = Sayings.key(written, written.advice().get(number));
            boolean comes = comes(advice.occasion(), check, possible);
            drafts.add(at, comes ? EnumSet.of(Way.GIVEN) : EnumSet.noneOf(Way.class), check.requirement());
            members.computeIfAbsent(at, same -> new ArrayList<>()).add(check);
            if (comes) {
                sides.within(advice.text(), judged.orElse(always));
            }
        }
    }

    private Optional<Possibilities> behindGates(Node.Check check, Possibilities from) {
        Optional<Possibilities> so = Optional.of(from);
        for (int number : check.after()) {
            Node.Check gate = graph.checks().get(number);
            so = so.flatMap(known -> CheckReach.behind(gate, known, from));
        }
        return so;
    }

    /** A requirement that stands alone comes out as its check does; of several, each is asked for. */
    private void requirement(Node.Check check, Declaration.Check written, Possibilities so) {
        if (written.requirements().size() > 1 && check.requirement() instanceof Joined joined) {
            joined.parts().forEach(part -> sides.decision(part, so));
        } else {
            sides.within(check.requirement(), so);
        }
    }

    private boolean comes(Occasion occasion, Node.Check check, Set<Way> possible) {
        boolean fails = possible.contains(Way.FAILS) || possible.contains(Way.FAILS_LOW);
        return switch (occasion) {
            case FAILS -> fails;
            case HIGH, LOW -> fails && reach.occasions(check.name()).contains(occasion);
            default -> possible.contains(Way.valueOf(occasion.name()));
        };
    }

    private List<SayingDrafts.Key> lines() {
        List<ReleaseRule.Clause> clauses = graph.release().clauses();
        Declaration.Release written = outline.release;
        List<SayingDrafts.Key> lines = new ArrayList<>();
        for (int number = 0; number < clauses.size(); number++) {
            Span span = written == null
                    ? Objects.requireNonNull(outline.header).name().span()
                    : written.rules().get(number).span();
            ReleaseRule.Clause clause = clauses.get(number);
            SayingDrafts.Key key = new SayingDrafts.Key(
                    Kind.RELEASE,
                    span,
                    written == null
                            ? clause.result().word() + ", line " + (number + 1) + " of the usual release"
                            : SayingDrafts.written(span));
            drafts.add(key, canHold(clause.when()) ? EnumSet.of(Way.DECIDES) : EnumSet.noneOf(Way.class));
            lines.add(key);
        }
        return lines;
    }

    private boolean canHold(Condition condition) {
        if (condition instanceof Condition.AnyCheck any) {
            return graph.checks().stream()
                    .filter(check ->
                            any.severities().isEmpty() || any.severities().contains(check.severity()))
                    .anyMatch(check -> canBe(check, any.outcomes()));
        }
        if (condition instanceof Condition.OneCheck one) {
            return graph.checks().stream()
                    .anyMatch(check -> check.name().equals(one.name()) && canBe(check, one.outcomes()));
        }
        if (condition instanceof Condition.Both both) {
            return both.parts().stream().allMatch(this::canHold);
        }
        return !(condition instanceof Condition.Either either)
                || either.parts().stream().anyMatch(this::canHold);
    }

    private boolean canBe(Node.Check check, Set<Outcome> outcomes) {
        Set<Way> possible = Objects.requireNonNull(ways.get(check.number()));
        return outcomes.stream()
                .anyMatch(outcome -> possible.contains(Way.of(outcome))
                        || (outcome == Outcome.FAILS && possible.contains(Way.FAILS_LOW)));
    }
}

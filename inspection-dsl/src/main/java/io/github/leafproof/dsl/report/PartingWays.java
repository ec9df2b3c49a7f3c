package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Account;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.dsl.report.Parting.Kind;
import io.github.leafproof.dsl.report.Parting.Link;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds where the way to a verdict leaves the way to the one that was expected. The links are looked at in the order in
 * which a verdict comes about: whether the check applies; whether its gates let through; whether all that it rests on is
 * known; then its requirement, down to the part that tells.
 */
public final class PartingWays {

    private final Judgement judgement;
    private final Verdict verdict;
    private final Node.Check check;
    private final Outcome expected;
    private final Evidenced evidenced;
    private final List<Link> links = new ArrayList<>();
    private @Nullable String decision;

    private PartingWays(Judgement judgement, Node.Check check, Outcome expected) {
        this.judgement = judgement;
        this.check = check;
        this.verdict = judgement.verdicts().get(check.number());
        this.expected = expected;
        this.evidenced = new Evidenced(judgement, check);
    }

    /**
     * Where the verdict on a check parts from the outcome that was expected.
     *
     * @throws IllegalArgumentException if it came out as expected
     */
    public static Parting of(Judgement judgement, Node.Check check, Outcome expected) {
        PartingWays ways = new PartingWays(judgement, check, expected);
        if (ways.verdict.outcome() == expected) {
            throw new IllegalArgumentException(check.name() + " came out as expected");
        }
        if (!ways.partAtCondition() && !ways.partAtGates()) {
            ways.partAtRequirement();
        }
        return new Parting(ways.links, ways.decision);
    }

    /**
     * Where the release of an engine parts from the one that was expected.
     *
     * @throws IllegalArgumentException if it came out as expected
     */
    public static Parting of(Judgement judgement, Release expected) {
        return PartingRelease.of(judgement, expected);
    }

    private boolean partAtCondition() {
        Formula when = check.when();
        if (when == null) {
            return false;
        }
        Frame frame = judgement.frame(check);
        Value value = when.value(frame);
        boolean holds = value instanceof Value.Judged judged && judged.holds();
        Link link = Link.of(Kind.CONDITION, check.name(), "applies when " + when.words(), came(value));
        if (holds && expected != Outcome.NOT_APPLICABLE) {
            links.add(link);
            return false;
        }
        if (value instanceof Value.Missing missing) {
            lacking(missing.lacks(), when);
            links.add(link);
        } else {
            Outcome needed = expected == Outcome.NOT_APPLICABLE ? Outcome.FAILS : Outcome.PASSES;
            Descent descent = Descent.from(judgement, check.name(), needed, when, frame);
            links.addAll(evidenced.of(descent.formula()));
            links.addAll(descent.turns());
            links.add(marked(
                    link.with(Account.of(descent.formula(), descent.frame()).reasons())));
        }
        return true;
    }

    private boolean partAtGates() {
        List<Node.Check> gates =
                check.after().stream().map(judgement.graph().checks()::get).toList();
        if (verdict.outcome() == Outcome.BLOCKED) {
            behindShutGates();
            return true;
        }
        List<Link> open = gates.stream().map(this::gate).toList();
        links.addAll(open);
        if (expected == Outcome.BLOCKED && !open.isEmpty()) {
            links.set(links.size() - 1, marked(links.get(links.size() - 1)));
        }
        return expected == Outcome.BLOCKED && !open.isEmpty();
    }

    private Link gate(Node.Check gate) {
        Outcome came = judgement.verdicts().get(gate.number()).outcome();
        return Link.of(
                Kind.GATE,
                check.name(),
                "waits for " + gate.name(),
                "it " + ReleaseWords.said(came) + (came.letsThrough() ? ", and lets through" : ""));
    }

    /** The gate that all the waiting comes from, with what shut it, and then the gates that are waited for here. */
    private void behindShutGates() {
        Verdict shut = judgement.verdicts().get(verdict.blockedBy().get(0).number());
        int between = 0;
        // Gates stand in no circle, so this ends.
        while (shut.outcome() == Outcome.BLOCKED) {
            shut = judgement.verdicts().get(shut.blockedBy().get(0).number());
            between++;
        }
        Parting parting = of(judgement, shut.check(), Outcome.PASSES);
        links.addAll(parting.links());
        decision = parting.decision();
        List<String> wait = between == 0
                ? List.of()
                : List.of("it waits for " + shut.check().name() + ", near or far");
        links.add(gate(verdict.blockedBy().get(0)).with(wait));
        verdict.blockedBy().stream().skip(1).forEach(gate -> links.add(gate(gate)));
    }

    private void partAtRequirement() {
        Formula requirement = check.requirement();
        if (!verdict.lacks().isEmpty()) {
            lacking(verdict.lacks(), requirement);
            return;
        }
        Frame frame = judgement.frame(check);
        if (isToLack() && evidenced.lacksNothing(requirement)) {
            links.addAll(evidenced.of(requirement));
            links.add(marked(Link.of(Kind.ENTRY, check.name(), "all that it rests on was entered", null)));
            links.add(required(requirement, frame));
            return;
        }
        Descent descent = Descent.from(judgement, check.name(), expected, requirement, frame);
        links.addAll(evidenced.of(descent.formula()));
        links.addAll(descent.turns());
        links.add(marked(required(descent.formula(), descent.frame())));
        decide();
    }

    /** Whether the expected outcome is one that only a lack leads to. */
    private boolean isToLack() {
        return expected == Outcome.UNTESTED || expected == Outcome.NOT_APPLICABLE || expected == Outcome.BLOCKED;
    }

    /** What is known of all that a condition rests on, and then what is lacking; the first lack is where the ways part. */
    private void lacking(List<Value.Lack> lacks, Formula of) {
        links.addAll(evidenced.knownOf(of));
        lacks.forEach(lack -> links.add(marked(evidenced.lack(lack))));
    }

    private Link required(Formula formula, Frame frame) {
        Account account = Account.of(formula, frame);
        return Link.of(
                        Kind.REQUIREMENT,
                        check.name(),
                        "requires " + account.requirement(),
                        outcome(formula.value(frame)))
                .with(account.reasons());
    }

    private void decide() {
        Conformity sure = verdict.conformity();
        if (sure != null && sure.low() < 1 && sure.high() > 0 && verdict.outcome() != Outcome.CONTRADICTED) {
            decision = "the probability that it holds is " + Reporting.probabilityWords(sure.low(), sure.high()) + "; "
                    + evidenced.decision();
        }
    }

    /** Marks the first link that parts, and no later one. */
    private Link marked(Link link) {
        return links.stream().anyMatch(Link::parts) ? link : link.parting();
    }

    private static String came(Value value) {
        if (value instanceof Value.Judged judged) {
            return judged.holds() ? "yes" : judged.outcome() == Outcome.FAILS ? "no" : "it cannot be told";
        }
        return "it is not known";
    }

    private static String outcome(Value value) {
        return value instanceof Value.Judged judged ? judged.outcome().word().replace('_', ' ') : "not known";
    }
}

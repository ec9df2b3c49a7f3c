package io.github.leafproof.dsl.archive;

import io.github.leafproof.dsl.formula.Account;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Finds the checks that come out otherwise. Reasons cost far more than verdicts, and are made for these alone. */
final class ChecksCompared {

    /** A check as each revision has it; null where one has none of this name. */
    private record Pair(@Nullable Integer before, @Nullable Integer after) {}

    private final List<Pair> pairs;
    private final WhatChanged whatChanged;

    ChecksCompared(CheckGraph old, CheckGraph now) {
        this.pairs = pairs(old, now);
        this.whatChanged = new WhatChanged(old, now);
    }

    private static List<Pair> pairs(CheckGraph old, CheckGraph now) {
        Map<String, Integer> numbers = new HashMap<>();
        old.checks().forEach(check -> numbers.put(check.name(), check.number()));
        List<Pair> pairs = new ArrayList<>();
        now.checks().forEach(check -> pairs.add(new Pair(numbers.remove(check.name()), check.number())));
        old.checks().stream()
                .filter(check -> numbers.containsKey(check.name()))
                .forEach(check -> pairs.add(new Pair(check.number(), null)));
        return List.copyOf(pairs);
    }

    /** The checks that came out otherwise, in the order of the new revision, then of the old one. */
    List<CheckMoved> moved(Judgement before, Judgement after) {
        List<CheckMoved> moved = new ArrayList<>();
        for (Pair pair : pairs) {
            Verdict old = pair.before() == null ? null : before.verdicts().get(pair.before());
            Verdict now = pair.after() == null ? null : after.verdicts().get(pair.after());
            if (differ(old, now)) {
                moved.add(moved(
                        old == null ? null : new Judged(old, before), now == null ? null : new Judged(now, after)));
            }
        }
        return moved;
    }

    /** A check that is not there says as little about an engine as one that does not apply to it. */
    private static boolean differ(@Nullable Verdict old, @Nullable Verdict now) {
        if (old == null || now == null) {
            Verdict only = old == null ? now : old;
            return only != null && only.outcome() != Outcome.NOT_APPLICABLE;
        }
        return old.outcome() != now.outcome() || old.side() != now.side();
    }

    /** A verdict, and the judgement that it is part of. */
    record Judged(Verdict verdict, Judgement judgement) {
        Node.Check check() {
            return verdict.check();
        }
    }

    private CheckMoved moved(@Nullable Judged old, @Nullable Judged now) {
        CheckMoved.Found before = old == null ? null : found(old);
        CheckMoved.Found after = now == null ? null : found(now);
        List<CheckMoved.Change> changes = old == null || now == null ? List.of() : whatChanged.between(old, now);
        Node.Check named = Stream.of(now, old)
                .flatMap(Stream::ofNullable)
                .map(Judged::check)
                .findFirst()
                .orElseThrow();
        return new CheckMoved(named.name(), named.title(), before, after, changes);
    }

    private static CheckMoved.Found found(Judged judged) {
        Verdict verdict = judged.verdict();
        Account account =
                Account.of(verdict.check().requirement(), judged.judgement().frame(verdict.check()));
        Conformity conformity = verdict.outcome() == Outcome.CONTRADICTED ? null : verdict.conformity();
        return new CheckMoved.Found(
                verdict.outcome(),
                verdict.side(),
                conformity == null ? null : new Report.Probability(conformity.low(), conformity.high()),
                account.requirement(),
                account.value(),
                verdict.conformity() == null ? List.of() : account.reasons(),
                Reporting.missing(verdict));
    }
}

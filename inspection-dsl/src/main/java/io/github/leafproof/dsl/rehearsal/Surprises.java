package io.github.leafproof.dsl.rehearsal;

import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.dsl.report.PartingWays;
import io.github.leafproof.dsl.syntax.Declaration.Step;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.util.List;

/** Expectations that were not met, with what came instead and where it parted from what was expected. */
final class Surprises {

    private Surprises() {}

    static List<Rehearsed.Surprise> of(List<Step> unexpected, Judgement judgement) {
        return unexpected.stream().map(step -> surprise(step, judgement)).toList();
    }

    private static Rehearsed.Surprise surprise(Step step, Judgement judgement) {
        if (step instanceof Step.ExpectCheck expect) {
            String name = expect.check().toString();
            String word = expect.outcome().text();
            Verdict verdict = judgement.verdict(name).orElseThrow();
            return new Rehearsed.Surprise(
                    Played.place(expect.span()),
                    name,
                    word,
                    verdict.outcome().word(),
                    PartingWays.of(
                            judgement, verdict.check(), Outcome.named(word).orElseThrow()));
        }
        Step.ExpectRelease expect = (Step.ExpectRelease) step;
        String word = expect.release().text();
        return new Rehearsed.Surprise(
                Played.place(expect.span()),
                "release",
                word,
                judgement.release().release().word(),
                PartingWays.of(judgement, Release.named(word).orElseThrow()));
    }
}

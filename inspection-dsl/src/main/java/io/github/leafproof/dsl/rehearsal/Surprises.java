package io.github.leafproof.dsl.rehearsal;

import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.dsl.syntax.Declaration.Step;
import io.github.leafproof.inspection.record.Report;
import java.util.ArrayList;
import java.util.List;

/** Expectations that were not met, with what came instead and why. */
final class Surprises {

    private Surprises() {}

    static List<Rehearsed.Surprise> of(List<Step> unexpected, Judgement judgement) {
        if (unexpected.isEmpty()) {
            // The reasons take most of the time, and nobody asks for them.
            return List.of();
        }
        Report report = Reporting.of(judgement);
        return unexpected.stream().map(step -> surprise(step, report)).toList();
    }

    private static Rehearsed.Surprise surprise(Step step, Report report) {
        if (step instanceof Step.ExpectCheck expect) {
            String name = expect.check().toString();
            return surprise(
                    expect,
                    report.checks().stream()
                            .filter(check -> check.name().equals(name))
                            .findFirst()
                            .orElseThrow());
        }
        Step.ExpectRelease expect = (Step.ExpectRelease) step;
        return new Rehearsed.Surprise(
                Played.place(expect.span()),
                "release",
                expect.release().text(),
                report.release().word(),
                List.of(report.releaseReason()));
    }

    private static Rehearsed.Surprise surprise(Step.ExpectCheck expect, Report.Check check) {
        List<String> why = new ArrayList<>();
        if (check.requirement() != null) {
            why.add("requires " + check.requirement());
        }
        check.missing().forEach(missing -> why.add("missing: " + missing));
        why.addAll(check.evidence());
        return new Rehearsed.Surprise(
                Played.place(expect.span()),
                check.name(),
                expect.outcome().text(),
                check.outcome().word(),
                why);
    }
}

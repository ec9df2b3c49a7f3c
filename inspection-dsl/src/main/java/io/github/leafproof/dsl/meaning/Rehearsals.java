package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.message.NameDiagnostics;
import io.github.leafproof.dsl.message.RehearsalDiagnostics;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Declaration.Step;
import java.util.HashMap;
import java.util.Map;

/** Looks whether a procedure's rehearsals speak of things that are there. Running them is another room's work. */
final class Rehearsals {

    private final Problems problems;
    private final Outline outline;

    Rehearsals(Problems problems, Outline outline) {
        this.problems = problems;
        this.outline = outline;
    }

    void look() {
        Map<String, Span> titles = new HashMap<>();
        for (Declaration.Rehearse rehearse : outline.rehearsals) {
            Span first = titles.putIfAbsent(
                    rehearse.title().plain(), rehearse.title().span());
            if (first != null) {
                problems.add(RehearsalDiagnostics.titleTwice(rehearse.title().span(), first));
            }
            look(rehearse);
        }
    }

    private void look(Declaration.Rehearse rehearse) {
        boolean engine = false;
        boolean gauges = false;
        boolean expects = false;
        for (Step step : rehearse.steps()) {
            engine |= step instanceof Step.Engine;
            gauges |= step instanceof Step.Gauges;
            if (step instanceof Step.Enter enter) {
                entered(enter);
            } else if (step instanceof Step.ExpectCheck expect) {
                expects = true;
                expected(expect);
            } else if (step instanceof Step.ExpectRelease expect) {
                expects = true;
                Releases.release(problems, expect.release());
            }
        }
        if (problems.isHurt(rehearse.span())) {
            return;
        }
        if (!engine || !gauges) {
            String lacking = engine ? "gauges" : gauges ? "engine" : "engine or gauges";
            problems.add(RehearsalDiagnostics.incomplete(rehearse.title().span(), lacking));
        }
        if (!expects) {
            problems.add(RehearsalDiagnostics.expectsNothing(rehearse.title().span()));
        }
    }

    private void entered(Step.Enter enter) {
        String key = Env.TOP.key(enter.target());
        if (!outline.observations.containsKey(key)
                && !outline.isBroken(enter.target().name().text())) {
            problems.add(NameDiagnostics.unknownObservation(
                    enter.target().span(), key, problems.near(outline.observations.keySet())));
        }
    }

    private void expected(Step.ExpectCheck expect) {
        String key = Env.TOP.key(expect.check());
        if (!outline.checks.containsKey(key)) {
            Checks.unknownCheck(problems, outline, expect.check(), key);
        }
        Releases.outcome(problems, expect.outcome());
    }
}

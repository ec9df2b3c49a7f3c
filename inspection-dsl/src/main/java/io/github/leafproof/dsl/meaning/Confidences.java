package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.inspection.verdict.DecisionRule;

/** Confidences as written, made into decision rules. */
final class Confidences {

    private final Problems problems;

    Confidences(Problems problems) {
        this.problems = problems;
    }

    /** The rule for a confidence in per cent; simple acceptance is 50 %. */
    DecisionRule rule(Declaration.Confidence confidence) {
        double share = Double.parseDouble(confidence.percent()) / 100;
        if (!(share >= 0.5 && share <= 0.9999)) {
            problems.add(StructureDiagnostics.badConfidence(confidence.span()));
            return DecisionRule.guarded(0.95);
        }
        return share == 0.5 ? DecisionRule.simpleAcceptance() : DecisionRule.guarded(share);
    }
}

package io.github.leafproof.inspection.clearance;

import io.github.leafproof.inspection.clearance.Question.Proofs;
import io.github.leafproof.inspection.gauge.Feeler;
import io.github.leafproof.inspection.quantity.Estimate;

/** A feeler that could be offered next, and what it would prove. */
record Candidate(Feeler feeler, Estimate thickness, Proofs ifPasses, Proofs ifRefuses) {

    static Candidate of(Feeler feeler, Question question) {
        Estimate thickness = feeler.thickness();
        return new Candidate(feeler, thickness, question.ifPasses(thickness), question.ifRefuses(thickness));
    }

    double value() {
        return thickness.value();
    }

    int leaves() {
        return feeler.leaves().size();
    }
}

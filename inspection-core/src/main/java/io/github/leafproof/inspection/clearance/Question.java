package io.github.leafproof.inspection.clearance;

import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Finding;
import io.github.leafproof.inspection.verdict.Limits;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;

/** What the trials are to answer: does the gap lie inside these limits, with this confidence. */
record Question(Limits limits, DecisionRule rule) {

    /** Nobody needs a ninth decimal of a probability; levelled, near certainties do not multiply the cases to weigh. */
    private static final double NEARLY = 1e-9;

    /** What trials prove for the limits aimed for and for the tolerated ones. */
    record Proofs(Proof aimed, Proof tolerated) {

        Proofs and(Proofs other) {
            return new Proofs(aimed.and(other.aimed), tolerated.and(other.tolerated));
        }

        private Proofs levelled() {
            return new Proofs(aimed.levelled(NEARLY), tolerated.levelled(NEARLY));
        }
    }

    Proofs of(GapEvidence evidence) {
        return new Proofs(evidence.proof(limits.aimed()), evidence.proof(limits.tolerated())).levelled();
    }

    Proofs ifPasses(Estimate thickness) {
        return new Proofs(Proof.atLeast(thickness, limits.aimed()), Proof.atLeast(thickness, limits.tolerated()))
                .levelled();
    }

    Proofs ifRefuses(Estimate thickness) {
        return new Proofs(Proof.lessThan(thickness, limits.aimed()), Proof.lessThan(thickness, limits.tolerated()))
                .levelled();
    }

    Outcome outcome(Proofs proofs) {
        return rule.decide(proofs.aimed().conformity(), proofs.tolerated().conformity());
    }

    Side side(Proofs proofs) {
        return proofs.aimed().conformity().side();
    }

    /**
     * Whether more trials could not change the outcome. A gap shown to be tolerated, which may yet turn out to be as aimed
     * for, is not settled.
     */
    boolean isSettled(Proofs proofs) {
        Finding aimed = rule.decide(proofs.aimed().conformity());
        return aimed != Finding.OPEN && outcome(proofs) != Outcome.OPEN;
    }

    /** Whether a feeler this thick can help to show that the gap is inside: entering, or refusing, without doubt. */
    boolean canShowInside(Proof ifPasses, Proof ifRefuses) {
        return ifPasses.aboveLower() >= rule.confidence() && ifRefuses.belowUpper() >= rule.confidence();
    }

    /** Whether entering shows the gap to be too large. */
    boolean showsTooLarge(Proof ifPasses) {
        return ifPasses.aboveUpper() >= rule.confidence();
    }

    /** Whether refusing shows the gap to be too small. */
    boolean showsTooSmall(Proof ifRefuses) {
        return ifRefuses.belowLower() >= rule.confidence();
    }
}

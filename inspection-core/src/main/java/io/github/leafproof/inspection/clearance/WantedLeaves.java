package io.github.leafproof.inspection.clearance;

import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.verdict.Coverage;
import io.github.leafproof.inspection.verdict.Finding;
import io.github.leafproof.inspection.verdict.Limits;
import java.util.ArrayList;
import java.util.List;

/** How thick a leaf would have to be to settle what the tray at hand cannot, when measured to a given uncertainty. */
final class WantedLeaves {
    private final double u;
    private final double confidence;
    private final Limits window;
    private final Proof proof;
    private final double lower;
    private final double upper;

    private WantedLeaves(Question question, GapEvidence evidence, double u) {
        Question.Proofs proofs = question.of(evidence);
        boolean aimedIsOpen = question.rule().decide(proofs.aimed().conformity()) == Finding.OPEN;
        this.window =
                aimedIsOpen ? question.limits().aimed() : question.limits().tolerated();
        this.proof = aimedIsOpen ? proofs.aimed() : proofs.tolerated();
        this.lower = evidence.atLeast().map(Estimate::value).orElse(0.0);
        this.upper = evidence.lessThan().map(Estimate::value).orElse(Double.POSITIVE_INFINITY);
        this.confidence = question.rule().confidence();
        this.u = u;
    }

    static List<LeafWanted> toAnswer(Question question, GapEvidence evidence, double u) {
        return new WantedLeaves(question, evidence, u).list();
    }

    private List<LeafWanted> list() {
        List<LeafWanted> wanted = new ArrayList<>();
        boolean speaksAgainst = Math.max(proof.aboveUpper(), proof.belowLower()) > 1 - confidence;
        if (!speaksAgainst) {
            addThoseShowingInside(wanted);
        }
        add(wanted, new LeafWanted(window.upper() + z(confidence), upper, TrialResult.PASSES, false));
        add(wanted, new LeafWanted(lower, window.lower() - z(confidence), TrialResult.REFUSES, false));
        return wanted;
    }

    private void addThoseShowingInside(List<LeafWanted> wanted) {
        boolean lowerShown = proof.aboveLower() >= confidence;
        boolean upperShown = proof.belowUpper() >= confidence;
        // Of two leaves each may err with half the risk; of one, with what the other side leaves over.
        boolean inPair = !lowerShown && !upperShown;
        double both = (1 + confidence) / 2;
        double forUpper = inPair ? both : 1 + confidence - proof.aboveLower();
        double forLower = inPair ? both : 1 + confidence - proof.belowUpper();
        if (inPair || upperShown) {
            double thickest = Math.min(upper, window.upper() - z(inPair ? both : confidence));
            add(wanted, new LeafWanted(aboveLower(forLower), thickest, TrialResult.PASSES, inPair));
        }
        if (inPair || lowerShown) {
            double thinnest = Math.max(lower, aboveLower(inPair ? both : confidence));
            add(wanted, new LeafWanted(thinnest, window.upper() - z(forUpper), TrialResult.REFUSES, inPair));
        }
    }

    private double aboveLower(double probability) {
        return window.lower() > 0 ? window.lower() + z(probability) : 0;
    }

    private double z(double probability) {
        return u * Coverage.quantile(Math.min(1, probability), Double.POSITIVE_INFINITY);
    }

    private static void add(List<LeafWanted> wanted, LeafWanted leaf) {
        if (leaf.thinnest() < leaf.thickest()) {
            wanted.add(leaf);
        }
    }
}

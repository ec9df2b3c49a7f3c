package io.github.leafproof.examples.speed;

import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judge;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.inspection.quantity.UnitSystem;

/** The same procedure, interpreted: each verdict with what it rests on, ready to be put into words. */
public final class ByLeafproofInterpreted implements Contestant<Evidence> {

    private final CommonSheets sheets;

    public ByLeafproofInterpreted(double lashMax) {
        this.sheets = new CommonSheets(lashMax);
    }

    @Override
    public Evidence bound(Look look) {
        return sheets.evidence(look);
    }

    @Override
    public void judge(Evidence look, Verdicts into) {
        Judgement judgement = Judge.judge(look, UnitSystem.METRIC);
        for (Verdict verdict : judgement.verdicts()) {
            into.set(verdict.check().number(), ByLeafproof.number(verdict.outcome()));
        }
        into.set(Verdicts.RELEASE, ByLeafproof.number(judgement.release().release()));
    }
}

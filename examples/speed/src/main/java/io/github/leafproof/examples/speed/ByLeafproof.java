package io.github.leafproof.examples.speed;

import io.github.leafproof.dsl.bytecode.Figures;
import io.github.leafproof.dsl.bytecode.Outcomes;
import io.github.leafproof.dsl.bytecode.QuickJudge;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;

/** The same rules as a procedure of Leafproof, compiled; the outcomes are all that is asked. */
public final class ByLeafproof implements Contestant<Figures> {

    private final CommonSheets sheets;
    private final QuickJudge judge;
    private final Outcomes outcomes;

    public ByLeafproof(double lashMax) {
        this.sheets = new CommonSheets(lashMax);
        this.judge = QuickJudge.compiled(sheets.graph());
        this.outcomes = judge.blank();
    }

    @Override
    public Figures bound(Look look) {
        return judge.figures(sheets.evidence(look));
    }

    @Override
    public void judge(Figures look, Verdicts into) {
        judge.judge(look, outcomes);
        for (int check = 0; check < Verdicts.RELEASE; check++) {
            into.set(check, number(outcomes.of(check)));
        }
        into.set(Verdicts.RELEASE, number(outcomes.release()));
    }

    static int number(Outcome outcome) {
        return switch (outcome) {
            case PASSES -> Verdicts.PASSES;
            case FAILS -> Verdicts.FAILS;
            case OPEN -> Verdicts.OPEN;
            case BLOCKED -> Verdicts.BLOCKED;
            default -> throw new IllegalStateException("the common work knows no " + outcome);
        };
    }

    static int number(Release release) {
        return switch (release) {
            case READY -> Verdicts.READY;
            case HOLD -> Verdicts.HOLD;
            case REJECT -> Verdicts.REJECT;
            case UNFINISHED -> Verdicts.UNFINISHED;
        };
    }
}

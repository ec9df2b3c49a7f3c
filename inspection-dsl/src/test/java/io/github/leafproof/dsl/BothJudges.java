package io.github.leafproof.dsl;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.bytecode.Outcomes;
import io.github.leafproof.dsl.bytecode.QuickJudge;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judge;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.LinkedHashMap;
import java.util.Map;

/** The interpreter and what a procedure is compiled to, who have to come to the same. Tests judge by both. */
public final class BothJudges {

    private BothJudges() {}

    /** The interpreter's judgement, once the compiled procedure has come to the same outcomes and the same release. */
    public static Judgement judge(Evidence evidence, UnitSystem units) {
        return agreeing(QuickJudge.compiled(evidence.graph()), evidence, units);
    }

    /** The same for a procedure that was compiled before. */
    public static Judgement agreeing(QuickJudge judge, Evidence evidence, UnitSystem units) {
        Judgement judgement = Judge.judge(evidence, units);
        Outcomes outcomes = judge.blank();
        judge.judge(judge.figures(evidence), outcomes);
        Map<String, String> interpreted = new LinkedHashMap<>();
        Map<String, String> compiled = new LinkedHashMap<>();
        judgement.verdicts().forEach(verdict -> {
            String check = verdict.check().name();
            interpreted.put(check, verdict.outcome().word());
            compiled.put(check, outcomes.of(verdict.check().number()).word());
        });
        interpreted.put("the release", judgement.release().release().word());
        compiled.put("the release", outcomes.release().word());
        assertThat(compiled).isEqualTo(interpreted);
        return judgement;
    }
}

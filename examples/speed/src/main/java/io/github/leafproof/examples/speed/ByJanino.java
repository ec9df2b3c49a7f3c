package io.github.leafproof.examples.speed;

import org.codehaus.commons.compiler.CompileException;
import org.codehaus.janino.ScriptEvaluator;

/** Janino compiles a text of Java while the program runs. */
public final class ByJanino implements Contestant<Look> {

    private final Rules rules;
    private final double lashMax;

    /** What Janino makes of the text. */
    public interface Rules {
        void judge(Look look, Verdicts into, double lashMax);
    }

    public ByJanino(double lashMax) {
        this.lashMax = lashMax;
        this.rules = compiled(Texts.ofCommonWork("janino"));
    }

    static Rules compiled(String text) {
        ScriptEvaluator evaluator = new ScriptEvaluator();
        evaluator.setDefaultImports("io.github.leafproof.examples.speed.*");
        try {
            return evaluator.createFastEvaluator(text, Rules.class, new String[] {"look", "into", "lashMax"});
        } catch (CompileException wrong) {
            throw new IllegalStateException(wrong);
        }
    }

    @Override
    public Look bound(Look look) {
        return look;
    }

    @Override
    public void judge(Look look, Verdicts into) {
        rules.judge(look, into, lashMax);
    }
}

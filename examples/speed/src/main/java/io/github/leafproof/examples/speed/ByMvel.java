package io.github.leafproof.examples.speed;

import java.io.Serializable;
import java.util.List;
import java.util.Map;
import org.mvel2.MVEL;
import org.mvel2.ParserContext;

/** MVEL, with every variable's type stated. */
public final class ByMvel implements Contestant<Map<String, Object>> {

    private static final List<String> YES_OR_NO =
            List.of("thinIntake", "thickIntake", "thinExhaust", "thickExhaust", "drawn", "coversDry");
    private static final List<String> NUMBERS =
            List.of("head", "room", "recess", "needle", "opening", "retreat", "lashMax");

    private final Serializable script;
    private final double lashMax;

    public ByMvel(double lashMax) {
        this.lashMax = lashMax;
        this.script = compiled(Texts.ofCommonWork("mvel"));
    }

    static Serializable compiled(String text) {
        ParserContext types = new ParserContext();
        types.setStrongTyping(true);
        types.addImport("Verdicts", Verdicts.class);
        YES_OR_NO.forEach(name -> types.addInput(name, boolean.class));
        NUMBERS.forEach(name -> types.addInput(name, double.class));
        types.addInput("arm", String.class);
        types.addInput("damaged", int.class);
        types.addInput("compression", int.class);
        types.addInput("found", List.class);
        types.addInput("box", List.class);
        types.addInput("into", Verdicts.class);
        return MVEL.compileExpression(text, types);
    }

    @Override
    public Map<String, Object> bound(Look look) {
        return Variables.of(look, lashMax);
    }

    @Override
    public void judge(Map<String, Object> look, Verdicts into) {
        look.put("into", into);
        MVEL.executeExpression(script, look);
    }
}

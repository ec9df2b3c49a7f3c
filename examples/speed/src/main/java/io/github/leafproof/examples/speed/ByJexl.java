package io.github.leafproof.examples.speed;

import java.util.Map;
import org.apache.commons.jexl3.JexlBuilder;
import org.apache.commons.jexl3.JexlContext;
import org.apache.commons.jexl3.JexlEngine;
import org.apache.commons.jexl3.JexlScript;
import org.apache.commons.jexl3.MapContext;
import org.apache.commons.jexl3.introspection.JexlPermissions;

/** Commons JEXL interprets a script. */
public final class ByJexl implements Contestant<JexlContext> {

    private final JexlScript script;
    private final double lashMax;

    public ByJexl(double lashMax) {
        this.lashMax = lashMax;
        this.script = compiled(Texts.ofCommonWork("jexl"));
    }

    static JexlScript compiled(String text) {
        JexlEngine engine = new JexlBuilder()
                .permissions(JexlPermissions.UNRESTRICTED)
                .namespaces(Map.of("math", Math.class, "law", Verdicts.class))
                .create();
        return engine.createScript(text);
    }

    @Override
    public JexlContext bound(Look look) {
        return new MapContext(Variables.of(look, lashMax));
    }

    @Override
    public void judge(JexlContext look, Verdicts into) {
        look.set("into", into);
        script.execute(look);
    }
}

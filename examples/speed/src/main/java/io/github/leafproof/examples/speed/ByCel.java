package io.github.leafproof.examples.speed;

import dev.cel.bundle.Cel;
import dev.cel.bundle.CelFactory;
import dev.cel.common.CelFunctionDecl;
import dev.cel.common.CelOverloadDecl;
import dev.cel.common.CelValidationException;
import dev.cel.common.types.ListType;
import dev.cel.common.types.SimpleType;
import dev.cel.parser.CelStandardMacro;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelFunctionBinding;
import dev.cel.runtime.CelRuntime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** CEL evaluates one expression for each verdict; those of the lashes and the release read the verdicts before them. */
public final class ByCel implements Contestant<Map<String, Object>> {

    private static final String LASH = "v0 == 1 ? 3 : (%1$s ? 0.05 : 0.0) >= 0.03 && (%2$s ? 1e9 : 0.11) <= lashMax ? 0"
            + " : (%1$s ? 0.05 : 0.0) > lashMax || (%2$s ? 1e9 : 0.11) < 0.03 ? 1 : 2";
    private static final String WITHIN =
            "[phi((%3$s - %1$s) / %4$s) - phi((%2$s - %1$s) / %4$s)].map(p, p >= 0.95 ? 0 : p <= 0.05 ? 1 : 2)[0]";

    private static final List<String> RULES = List.of(
            "(head > room ? head - room : room - head) <= 5.0 ? 0 : 1",
            String.format(LASH, "thinIntake", "thickIntake"),
            String.format(LASH, "thinExhaust", "thickExhaust"),
            String.format(WITHIN, "recess", "(arm == 'metal' ? -0.2 : 0.8)", "(arm == 'metal' ? 0.2 : 1.2)", "0.05"),
            String.format(WITHIN, "needle", "2.75", "3.25", "0.05"),
            String.format(WITHIN, "opening", "0.70", "0.85", "0.01"),
            "drawn && retreat <= 2.0 ? 0 : 1",
            "damaged == 0 ? 0 : 1",
            "box.all(item, item in found) ? 0 : 1",
            "compression >= 2 ? 0 : 1",
            "coversDry ? 0 : 1",
            "v1 == 3 || v2 == 3 ? 3"
                    + " : v1 == 1 || v2 == 1 || v6 == 1 || v9 == 1 ? 2"
                    + " : v0 != 0 || v1 != 0 || v2 != 0 || v3 != 0 || v4 != 0 || v5 != 0 || v7 != 0 || v8 != 0"
                    + " || v10 != 0 ? 1 : 0");

    private final List<CelRuntime.Program> programs;
    private final double lashMax;

    public ByCel(double lashMax) {
        this.lashMax = lashMax;
        this.programs = compiled(RULES);
    }

    static List<CelRuntime.Program> compiled(List<String> rules) {
        Cel cel = cel();
        List<CelRuntime.Program> programs = new ArrayList<>();
        for (String rule : rules) {
            try {
                programs.add(cel.createProgram(cel.compile(rule).getAst()));
            } catch (CelValidationException | CelEvaluationException wrong) {
                throw new IllegalStateException(wrong);
            }
        }
        return List.copyOf(programs);
    }

    private static Cel cel() {
        var builder = CelFactory.plannerCelBuilder()
                .setStandardMacros(CelStandardMacro.STANDARD_MACROS)
                .addFunctionDeclarations(CelFunctionDecl.newFunctionDeclaration(
                        "phi", CelOverloadDecl.newGlobalOverload("phi_double", SimpleType.DOUBLE, SimpleType.DOUBLE)))
                .addFunctionBindings(CelFunctionBinding.from("phi_double", Double.class, Verdicts::phi));
        for (String name : List.of("head", "room", "recess", "needle", "opening", "retreat", "lashMax")) {
            builder.addVar(name, SimpleType.DOUBLE);
        }
        for (String name : List.of("thinIntake", "thickIntake", "thinExhaust", "thickExhaust", "drawn", "coversDry")) {
            builder.addVar(name, SimpleType.BOOL);
        }
        builder.addVar("arm", SimpleType.STRING);
        builder.addVar("damaged", SimpleType.INT);
        builder.addVar("compression", SimpleType.INT);
        builder.addVar("found", ListType.create(SimpleType.STRING));
        builder.addVar("box", ListType.create(SimpleType.STRING));
        for (int check = 0; check < Verdicts.RELEASE; check++) {
            builder.addVar("v" + check, SimpleType.INT);
        }
        return builder.build();
    }

    @Override
    public Map<String, Object> bound(Look look) {
        Map<String, Object> variables = new HashMap<>(Variables.of(look, lashMax));
        variables.put("damaged", (long) look.damaged());
        variables.put("compression", (long) look.compression());
        return variables;
    }

    @Override
    public void judge(Map<String, Object> look, Verdicts into) {
        try {
            for (int check = 0; check <= Verdicts.RELEASE; check++) {
                Long verdict = (Long) programs.get(check).eval(look);
                into.set(check, verdict.intValue());
                look.put("v" + check, verdict);
            }
        } catch (CelEvaluationException wrong) {
            throw new IllegalStateException(wrong);
        }
    }
}

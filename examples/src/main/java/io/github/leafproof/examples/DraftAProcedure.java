package io.github.leafproof.examples;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.build.ProcedureDraft;
import io.github.leafproof.dsl.graph.Occasion;
import io.github.leafproof.inspection.verdict.Severity;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Makes a procedure without a file, for the valves that a program knows of, and prints it in the one layout. */
public final class DraftAProcedure {
    private DraftAProcedure() {}

    /** Takes the names of the valves. */
    public static void main(String[] arguments) {
        draft(List.of(arguments), new PrintStream(System.out, true, StandardCharsets.UTF_8));
    }

    static void draft(List<String> valves, PrintStream out) {
        Procedure procedure = ProcedureDraft.named("lashes", "Valve lash", 1)
                .decideAt("95 %")
                .gauge("leaves", "leaf set")
                .forEach(
                        "valve",
                        valves,
                        each -> each.observe(
                                        "lash[valve]",
                                        "gap",
                                        lash -> lash.with("leaves")
                                                .ask("Offer the leaves to the {valve} valve, thinnest first"))
                                .check(
                                        "lash_within[valve]",
                                        "Lash of the {valve} valve",
                                        Severity.CRITICAL,
                                        check -> check.require(
                                                        "lash[valve] between engine.lash_min and engine.lash_max")
                                                .adviseBy(
                                                        Occasion.OPEN,
                                                        "next_leaf(lash[valve], engine.lash_min, engine.lash_max)")
                                                .because("the engine card")))
                .compile()
                .orElseThrow();

        out.print(procedure.tidied());
        out.println("// checks: " + procedure.graph().checks().size());
    }
}

package io.github.leafproof.dsl.meaning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.source.SourceText;
import java.nio.file.Path;

/** Small procedures, compiled, and judged on the example bench with the 15 cm³ engine on it. */
final class Bench15 {

    private static final String HEADER = "procedure small \"Small\" revision 1\n";

    private Bench15() {}

    static Compiled compiled(String text) {
        return Procedure.compile(SourceText.of("small.inspection", HEADER + text));
    }

    static String diagnostics(String text) {
        return DiagnosticPrinter.print(compiled(text).diagnostics(), false);
    }

    static CheckGraph graph(String text) {
        return compiled(text).orElseThrow().graph();
    }

    /** The type of a derived value, in words. */
    static String typeOf(String name, String text) {
        String check = "\ncheck always \"Always\" { require yes }";
        return ((Node.Derived) graph(text + check).node(name).orElseThrow())
                .type()
                .words();
    }

    /** The check of that name. */
    static Node.Check check(String name, String text) {
        return (Node.Check) graph(text).node(name).orElseThrow();
    }

    /** Enters these things on the example bench and holds what comes of it against what is expected. */
    static void assertJudged(String text, String enter, String expect) {
        String rehearsal =
                "\nrehearse \"it\" {\n engine \"cards/quillan-15.json\" gauges \"trays/bench-one.json\"\n enter "
                        + enter + "\n expect " + expect + "\n}\n";
        Procedure procedure = compiled(text + rehearsal).orElseThrow();
        assertThat(Rehearsing.run(procedure, Path.of("..", "examples", "bench")))
                .singleElement()
                .satisfies(rehearsed -> {
                    assertThat(rehearsed.problems()).isEmpty();
                    assertThat(rehearsed.surprises()).isEmpty();
                });
    }
}

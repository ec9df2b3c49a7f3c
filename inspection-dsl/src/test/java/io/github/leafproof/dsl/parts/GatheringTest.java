package io.github.leafproof.dsl.parts;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.graph.GaugeNeed;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Part;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A procedure in several files means what it would mean in one. */
class GatheringTest {

    private static final String HEADER = "procedure lash \"Lash\" revision 1\n";
    private static final String CHECK =
            "observe free : yes/no ask \"Free?\"\ncheck turns \"It turns\" { require free }\n";

    private static Compiled compile(String text, Map<String, String> parts) {
        return Procedure.compile(SourceText.of("main.inspection", HEADER + text), Shelf.of(parts));
    }

    private static String check(String name) {
        return "observe seen_" + name + " : yes/no ask \"Seen?\"\ncheck " + name + " \"" + name + "\" { require seen_"
                + name + " }\n";
    }

    @Test
    void a_used_file_counts_in_the_place_where_it_is_used() {
        Procedure procedure = compile(
                        check("first") + "use \"a.inspection\"\n" + check("last"),
                        Map.of(
                                "a.inspection", "use \"b.inspection\"\n" + check("second"),
                                "b.inspection", "language 1\n" + check("deep")))
                .orElseThrow();

        assertThat(procedure.graph().checks())
                .extracting(Node.Check::name)
                .containsExactly("first", "deep", "second", "last");
        assertThat(procedure.parts()).extracting(Part::name).containsExactly("a.inspection", "b.inspection");
    }

    @Test
    void a_file_that_several_use_counts_once_where_it_is_used_first() {
        Compiled compiled = compile(
                "use \"a.inspection\"\nuse \"b.inspection\"\n" + CHECK,
                Map.of(
                        "a.inspection",
                        "use \"leaves.inspection\"\n",
                        "b.inspection",
                        "use \"leaves.inspection\"\n" + check("extra"),
                        "leaves.inspection",
                        check("shared")));

        assertThat(compiled.diagnostics()).isEmpty();
        assertThat(compiled.orElseThrow().graph().checks())
                .extracting(Node.Check::name)
                .containsExactly("shared", "extra", "turns");
    }

    @Test
    void a_file_is_named_as_seen_from_the_root_in_whichever_file_its_name_stands() {
        Compiled compiled = compile(
                "use \"valves/lash.inspection\"\n" + CHECK,
                Map.of(
                        "valves/lash.inspection",
                        "use \"valves/leaves.inspection\"\n" + check("lash"),
                        "valves/leaves.inspection",
                        "gauge leaves : leaf set\n"));

        assertThat(compiled.diagnostics()).isEmpty();
    }

    @Test
    void whatever_is_declared_in_one_file_is_known_in_all_the_others() {
        Compiled compiled = compile(
                "use \"leaves.inspection\"\nlet widest = twice(engine.lash_max)\nobserve gap : gap with leaves ask \"Gap\"\n",
                Map.of("leaves.inspection", """
                        gauge leaves : leaf set
                        define twice(a : length) = 2 * a
                        check thin "Thin" { require gap at most widest }
                        """));

        assertThat(compiled.diagnostics()).isEmpty();
    }

    @Test
    void of_the_gauges_of_a_part_the_tray_must_hold_those_that_the_procedure_uses() {
        Procedure procedure = compile(
                        """
                        use "bench.inspection"
                        gauge clock : counter
                        observe gap : gap with leaves ask "Gap"
                        check thin "Thin" { require gap at most 0.1 mm }
                        """, Map.of("bench.inspection", "gauge leaves : leaf set\ngauge pins : pin set\n"))
                .orElseThrow();

        assertThat(procedure.graph().gauges()).extracting(GaugeNeed::name).containsExactly("leaves", "clock");
    }

    @Test
    void the_graph_names_each_used_file_by_its_digest() {
        String leaves = "gauge leaves : leaf set\n";
        Procedure procedure = compile("use \"leaves.inspection\"\n" + CHECK, Map.of("leaves.inspection", leaves))
                .orElseThrow();

        assertThat(procedure.graph().identity().parts())
                .extracting(part -> part.name() + " " + part.sha256())
                .containsExactly("leaves.inspection "
                        + SourceText.of("leaves.inspection", leaves).sha256());
        assertThat(procedure.graph().identity().sha256())
                .isEqualTo(procedure.source().sha256());
    }

    @Test
    void a_part_written_for_a_later_version_of_the_language_is_refused_as_such() {
        Compiled compiled = compile(
                "use \"leaves.inspection\"\n" + CHECK, Map.of("leaves.inspection", "language 9\nfeel the gap\n"));

        assertThat(compiled.diagnostics()).extracting(Diagnostic::code).containsExactly(Code.LP139);
    }

    /** Each file uses the next one. */
    private static Map<String, String> chain(int files) {
        return IntStream.range(0, files)
                .boxed()
                .collect(Collectors.toMap(
                        i -> "p" + i + ".inspection",
                        i -> (i + 1 < files ? "use \"p" + (i + 1) + ".inspection\"\n" : "") + check("c" + i),
                        (one, other) -> one,
                        TreeMap::new));
    }

    @Test
    void files_may_use_each_other_in_a_long_chain() {
        Compiled compiled = compile("use \"p0.inspection\"\n", chain(Gathering.MOST_FILES));

        assertThat(compiled.diagnostics()).isEmpty();
        assertThat(compiled.orElseThrow().graph().checks()).hasSize(Gathering.MOST_FILES);
    }

    @Test
    void more_files_than_any_bench_has_are_refused_once() {
        Compiled compiled = compile("use \"p0.inspection\"\n" + CHECK, chain(100_000));

        assertThat(compiled.diagnostics()).extracting(Diagnostic::code).containsExactly(Code.LP164);
        assertThat(DiagnosticPrinter.print(compiled.diagnostics(), false))
                .startsWith("p199.inspection:1:5: error LP164: with this the procedure uses more than 200 files");
    }

    @Test
    void more_text_than_any_procedure_has_is_refused_once() {
        String comment = "// " + "x".repeat(6 << 20) + "\n";
        Compiled compiled = compile(
                "use \"a.inspection\"\nuse \"b.inspection\"\nuse \"c.inspection\"\nuse \"d.inspection\"\n" + CHECK,
                Map.of(
                        "a.inspection", comment,
                        "b.inspection", comment,
                        "c.inspection", comment,
                        "d.inspection", comment));

        assertThat(compiled.diagnostics()).extracting(Diagnostic::code).containsExactly(Code.LP164);
        assertThat(compiled.diagnostics()
                        .get(0)
                        .span()
                        .source()
                        .at(compiled.diagnostics().get(0).span().start()))
                .hasToString("4:5");
    }

    @Test
    void a_text_alone_uses_nothing() {
        Compiled compiled =
                Procedure.compile(SourceText.of("main.inspection", HEADER + "use \"a.inspection\"\n" + CHECK));

        assertThat(compiled.diagnostics()).extracting(Diagnostic::code).containsExactly(Code.LP160);
    }
}

package io.github.leafproof.dsl.meaning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A procedure from a stranger may be as large and as twisted as it likes: understanding it ends, and says why. */
@Timeout(120)
class LargeProceduresTest {

    private static final String X = "observe x : length ask \"X\"\n";

    @Test
    void a_value_may_refer_to_ten_thousand_earlier_ones_in_a_chain() {
        Compiled compiled = compile(X
                + chain(10_000, i -> "let a" + (i + 1) + " = a" + i + " + 1 mm\n")
                        .replace("let a1 = a0 ", "let a1 = x ")
                        .concat("check c \"C\" { require a10000 at most 20 m }"));

        assertThat(compiled.diagnostics()).isEmpty();
        assertThat(compiled.orElseThrow().graph().derived()).hasSize(10_000);
    }

    @Test
    void twenty_steps_further_down_are_followed_and_a_longer_chain_is_refused_once() {
        IntFunction<String> line = i -> "let a" + i + " = a" + (i + 1) + " + 1 mm\n";
        String end = " = x\ncheck c \"C\" { require a0 at most 20 m }";

        assertThat(codes(chain(19, line) + "let a19" + end)).isEmpty();
        assertThat(codes(chain(10_000, line) + "let a10000" + end)).containsExactly(Code.LP712);
    }

    @Test
    void long_expressions_that_lead_to_each_other_do_not_outgrow_the_stack() {
        IntFunction<String> line = i -> "let a" + i + " = " + "abs(".repeat(40) + "a" + (i + 1) + ")".repeat(40) + "\n";
        String sum = " = x" + " + x".repeat(1000) + "\ncheck c \"C\" { require a0 at most 20 m }";

        assertThat(codes(chain(250, line) + "let a250" + sum)).containsExactly(Code.LP712);
        assertThat(codes("let a0" + sum)).isEmpty();
    }

    @Test
    void one_expression_may_nest_and_has_a_bound() {
        IntFunction<String> nested = depth -> "check c \"C\" { require " + "not ".repeat(depth) + "x at most 1 mm }";

        assertThat(codes(nested.apply(90))).isEmpty();
        assertThat(codes("check c \"C\" { require x at most " + "abs(-".repeat(40) + "x" + ")".repeat(40) + " }"))
                .isEmpty();
        assertThat(codes("check c \"C\" { require " + "if x at most 1 mm then yes else ".repeat(600) + "no }"))
                .containsExactly(Code.LP702);
    }

    @Test
    void functions_that_double_each_other_are_refused_and_not_computed() {
        String text = chain(40, i -> "define f" + (i + 1) + "(a : length) = f" + i + "(a) + f" + i + "(a)\n");

        List<Diagnostic> problems = compile(
                        X + "define f0(a : length) = a\n" + text + "check c \"C\" { require f40(x) at most 1 m }")
                .diagnostics();

        assertThat(problems).extracting(Diagnostic::code).containsExactly(Code.LP713);
        assertThat(problems.get(0).help()).contains("twice doubles");
    }

    @Test
    void functions_may_apply_each_other_sixty_deep_and_not_ten_thousand_deep() {
        IntFunction<String> line = i -> "define f" + (i + 1) + "(a : length) = f" + i + "(a) + 1 mm\n";
        String start = "define f0(a : length) = a\n";

        assertThat(codes(start + chain(60, line) + "check c \"C\" { require f60(x) at most 1 m }"))
                .isEmpty();
        assertThat(codes(start + chain(10_000, line) + "check c \"C\" { require f10000(x) at most 1 m }"))
                .containsExactly(Code.LP713);
    }

    @Test
    void what_all_functions_come_to_together_is_bounded_too() {
        String heavy = "define f(a : length) = a" + " + a".repeat(999) + "\n" + "define g(a : length) = f(a)"
                + " + f(a)".repeat(40) + "\n";
        String uses =
                chain(600, i -> "let u" + i + " = g(x)\ncheck c" + i + " \"C\" { require u" + i + " at most 9 m }\n");

        List<Diagnostic> problems = compile(X + heavy + uses).diagnostics();

        assertThat(problems).extracting(Diagnostic::code).containsExactly(Code.LP713);
        assertThat(problems.get(0).message()).startsWith("all functions applied so far");
    }

    @Test
    void ten_thousand_gates_may_wait_in_a_row() {
        String text = "check g0 \"G\" gate { require x at most 1 mm }\n"
                + chain(10_000, i -> "check g" + (i + 1) + " \"G\" gate { after g" + i + " require x at most 1 mm }\n");

        assertThat(compile(X + text).diagnostics()).extracting(Diagnostic::code).containsExactly(Code.LP431);
    }

    @Test
    void a_check_may_wait_for_ten_thousand_gates() {
        IntFunction<String> waiting = gates -> chain(
                        gates,
                        i -> "observe o" + i + " : length\ncheck g" + i + " \"G\" gate { require o" + i
                                + " at most 1 mm }\n")
                + "check last \"Last\" { after " + chain(gates - 1, i -> "g" + i + ", ") + "g" + (gates - 1)
                + " require x at most 1 mm }";

        assertThat(codes(waiting.apply(10_000))).isEmpty();
    }

    @Test
    void a_circle_of_ten_thousand_gates_is_shown_without_its_middle() {
        String text = chain(
                10_000,
                i -> "check g" + i + " \"G\" gate { after g" + (i + 1) % 10_000 + " require x at most 1 mm }\n");

        List<Diagnostic> problems = compile(X + text).diagnostics();

        assertThat(problems).extracting(Diagnostic::code).containsExactly(Code.LP406);
        assertThat(problems.get(0).message())
                .isEqualTo("g0 would wait for itself:"
                        + " g0 -> g1 -> g2 -> g3 -> g4 -> g5 -> g6 -> g7 -> g8 -> 9991 more -> g0");
    }

    @Test
    void loops_in_loops_multiply_until_they_are_refused() {
        String values = IntStream.range(0, 900).mapToObj(i -> "v" + i).collect(Collectors.joining(", "));
        String body = "observe y[a][b] : length ask \"Y\"\ncheck c[a][b] \"C\" { require y[a][b] at most 1 mm }\n";

        assertThat(codes("for a in " + values + " { for b in " + values + " {\n" + body + "} }"))
                .containsExactly(Code.LP711);
        assertThat(codes("for a in " + values + " { for b in " + values + " { for c in " + values + " { } } }"))
                .containsExactly(Code.LP711);
        assertThat(codes("for a in " + values + " { observe y[a] : text ask \"" + "y".repeat(80_000)
                        + "\"  check c[a] \"C\" { require y[a] is \"\" } }"))
                .containsExactly(Code.LP711);
    }

    @Test
    void a_list_of_more_than_a_thousand_is_no_choice() {
        String options = IntStream.range(0, 1_001).mapToObj(i -> "o" + i).collect(Collectors.joining(", "));
        String states = chain(1_001, i -> "s" + i + " -> s" + (i + 1) + " \"On\"\n");
        String check = "\ncheck c \"C\" { require x at most 1 mm }";

        assertThat(codes("observe o : one of " + options + " ask \"O\"\ncheck d \"D\" { require o is o7 }" + check))
                .containsExactly(Code.LP714);
        assertThat(codes("for v in " + options + " { }" + check)).containsExactly(Code.LP714);
        assertThat(codes("setup s starts s0 {\n" + states + "}" + check)).containsExactly(Code.LP714);
    }

    @Test
    void a_check_may_rest_on_a_thousand_readings_and_a_thousand_such_checks_are_too_much_for_a_report() {
        String readings = chain(1000, i -> "observe y" + i + " : length ask \"Y\"\n");
        String sum = "let sum = x" + chain(1000, i -> " + y" + i) + "\n";
        IntFunction<String> check = i -> "check c" + i + " \"C\" { require sum at most 9 m }\n";

        assertThat(codes(readings + sum + chain(100, check))).isEmpty();
        assertThat(codes(readings + sum + chain(1000, check))).containsExactly(Code.LP715);
    }

    @Test
    void running_sums_of_a_thousand_readings_are_told_apart_from_those_of_five_thousand() {
        IntFunction<String> sum =
                i -> "observe y" + i + " : length ask \"Y\"\nlet s" + (i + 1) + " = s" + i + " + y" + i + "\n";
        String start = "let s0 = x\n";

        assertThat(codes(start + chain(1000, sum) + "check c \"C\" { require s1000 at most 9 m }"))
                .isEmpty();
        assertThat(codes(start + chain(5000, sum) + "check c \"C\" { require s5000 at most 9 m }"))
                .containsExactly(Code.LP715);
    }

    @Test
    void a_hundred_thousand_declarations_compile() {
        Compiled compiled = compile(checks(50_000, i -> "y" + i));

        assertThat(compiled.diagnostics()).isEmpty();
        assertThat(compiled.orElseThrow().graph().checks()).hasSize(50_000);
    }

    @Test
    void fifty_thousand_misspelt_names_are_counted_and_the_first_hundred_said() {
        List<Diagnostic> problems = compile(checks(50_000, i -> "z" + i)).diagnostics();

        assertThat(problems).hasSize(101);
        assertThat(problems.get(100).code()).isEqualTo(Code.LP704);
        assertThat(problems.get(100).message()).isEqualTo("49900 more problems are not listed");
        assertThat(problems).isSortedAccordingTo(Diagnostic.BY_PLACE);
    }

    @Test
    void one_problem_more_than_a_hundred_is_one_more() {
        List<Diagnostic> problems = compile(checks(101, i -> "z" + i)).diagnostics();

        assertThat(problems.get(100).message()).isEqualTo("one more problem is not listed");
    }

    private static String checks(int number, IntFunction<String> read) {
        return chain(
                number,
                i -> "observe y" + i + " : length ask \"Y\"\ncheck c" + i + " \"C\" { require " + read.apply(i)
                        + " at most engine.lash_max }\n");
    }

    private static String chain(int links, IntFunction<String> link) {
        return IntStream.range(0, links).mapToObj(link).collect(Collectors.joining());
    }

    private static List<Code> codes(String text) {
        // The one observation need not be used in each case.
        return compile(X + text).diagnostics().stream()
                .filter(Diagnostic::isError)
                .map(Diagnostic::code)
                .toList();
    }

    private static Compiled compile(String text) {
        return Procedure.compile(SourceText.of("large.inspection", "procedure large \"Large\" revision 1\n" + text));
    }
}

package io.github.leafproof.dsl.meaning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.report.TextReport;
import io.github.leafproof.dsl.source.SourceText;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever can nest has a bound, and up to that bound a procedure is read, understood, made tidy, judged and reported on a
 * stack a quarter of what Java gives a thread as a rule: nothing recurses as deep as a stranger's file would have it.
 */
class SmallStackTest {

    private static final int SMALL = 256 * 1024;

    /** Each with the most of it that is taken, and how it is written so many times over. */
    static Stream<Arguments> nested() {
        return Stream.of(
                arguments("parentheses", 48, require(n -> "(".repeat(n) + "free" + ")".repeat(n))),
                arguments("not", 90, require(n -> "not ".repeat(n) + "free")),
                arguments("minus", 90, limit(n -> "- ".repeat(n) + "x")),
                arguments("powers", 48, limit(n -> "x * " + "(".repeat(n) + "1" + ") ^ 1".repeat(n))),
                arguments("powers of powers", 0, limit(n -> "x" + " ^ 1".repeat(n))),
                arguments("functions", 48, limit(n -> "abs(".repeat(n) + "x" + ")".repeat(n))),
                arguments("if", 90, require(n -> "if free then no else ".repeat(n) + "free")),
                arguments("if in if", 90, require(n -> "if ".repeat(n) + "free" + " then no else free".repeat(n))),
                arguments("choices", 30, require(n -> "choose pick { a: ".repeat(n) + "free" + " b: no }".repeat(n))),
                arguments("sums", 1000, limit(n -> "x" + " + x".repeat(n))),
                arguments("products", 1000, limit(n -> "x" + " * 1".repeat(n))),
                arguments("conditions", 1000, require(n -> "free" + " and free or free".repeat(n / 2))),
                arguments("texts", 8, advise(n -> "\"{".repeat(n) + "x" + "}\"".repeat(n))),
                arguments("values below", 19, chain(n -> "let y" + n + " = y" + (n + 1), " = x")),
                arguments(
                        "values below in functions", 15, chain(n -> "let y" + n + " = abs(y" + (n + 1) + ")", " = x")),
                arguments("functions of functions", 100, (IntFunction<String>) SmallStackTest::functions));
    }

    private static IntFunction<String> require(IntFunction<String> condition) {
        return n -> "check c \"C\" { require " + condition.apply(n) + " }";
    }

    private static IntFunction<String> limit(IntFunction<String> value) {
        return require(n -> "x at most " + value.apply(n));
    }

    private static IntFunction<String> advise(IntFunction<String> text) {
        return n -> "check c \"C\" { require free if fails advise " + text.apply(n) + " }";
    }

    private static IntFunction<String> chain(IntFunction<String> link, String end) {
        return n -> IntStream.range(0, n).mapToObj(link).collect(Collectors.joining("\n")) + "\nlet y" + n + end
                + "\ncheck c \"C\" { require y0 at most 1 mm }";
    }

    private static String functions(int n) {
        return "define f0(a : length) = a\n"
                + IntStream.range(0, n)
                        .mapToObj(i -> "define f" + (i + 1) + "(a : length) = f" + i + "(a)")
                        .collect(Collectors.joining("\n"))
                + "\ncheck c \"C\" { require f" + n + "(x) at most 1 mm }";
    }

    private static String whole(String declarations) {
        return Workshop.of("""
                        gauge depth : reading of length
                        observe x : length with depth ask "X"
                        observe free : yes/no ask "Free?"
                        observe pick : one of a, b ask "Which?"
                        check used "Used" { require x at most 1 mm and free and pick is a }
                        """ + declarations + "\n").procedure();
    }

    @ParameterizedTest
    @MethodSource("nested")
    void up_to_its_bound_it_is_judged_on_a_small_stack(String what, int most, IntFunction<String> times)
            throws Exception {
        String text = whole(times.apply(most));

        String report = onSmallStack(() -> {
            Procedure procedure = Procedure.compile(SourceText.of(what, text)).orElseThrow();
            assertThat(Procedure.compile(SourceText.of(what, procedure.tidied()))
                            .diagnostics())
                    .filteredOn(Diagnostic::isError)
                    .isEmpty();
            return TextReport.of(
                    Workshop.of(procedure)
                            .observe("x", "\"0.5 mm\"")
                            .observe("free", "true")
                            .observe("pick", "\"a\"")
                            .report(),
                    false);
        });

        assertThat(report).contains("Release: ");
    }

    @ParameterizedTest
    @MethodSource("nested")
    void ten_thousand_levels_of_it_are_refused_on_a_small_stack(String what, int most, IntFunction<String> times)
            throws Exception {
        Compiled compiled = onSmallStack(() -> Procedure.compile(SourceText.of(what, whole(times.apply(10_000)))));

        assertThat(compiled.diagnostics())
                .filteredOn(Diagnostic::isError)
                .extracting(Diagnostic::code)
                .isNotEmpty()
                .isSubsetOf(List.of(Code.LP142, Code.LP702, Code.LP703, Code.LP704, Code.LP712, Code.LP713));
    }

    private static <T> T onSmallStack(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        Thread thread = new Thread(null, task, "small", SMALL);
        thread.start();
        return task.get();
    }
}

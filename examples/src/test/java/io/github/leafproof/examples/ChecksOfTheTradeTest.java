package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The 75 checks of the trade (common practice) on their page, held against the procedures that make them. */
class ChecksOfTheTradeTest {
    private static final Pattern ROW =
            Pattern.compile("^\\| (\\d+) \\| (.+) \\| `(\\w+)` \\| (.+) \\|$", Pattern.MULTILINE);

    private static final Pattern NAME = Pattern.compile("`([^`]+)`");

    /** A row of the page. */
    private record Row(int number, String procedure, List<String> checks) {}

    private static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        String page = Project.text(Project.BENCH.resolve("checks.md"));
        for (Matcher row = ROW.matcher(page); row.find(); ) {
            List<String> checks = NAME.matcher(row.group(4))
                    .results()
                    .map(name -> name.group(1))
                    .toList();
            rows.add(new Row(Integer.parseInt(row.group(1)), row.group(3), checks));
        }
        return rows;
    }

    @Test
    void the_rows_are_the_75_checks_without_a_gap() {
        assertThat(rows().stream().map(Row::number))
                .containsExactlyElementsOf(IntStream.rangeClosed(1, 75).boxed().toList());
    }

    @Test
    void every_row_names_checks_that_its_procedure_makes() {
        Map<String, List<String>> made = new TreeMap<>();
        for (Row row : rows()) {
            List<String> checks = made.computeIfAbsent(
                    row.procedure(),
                    name -> Bench.procedure(name).graph().checks().stream()
                            .map(Node.Check::name)
                            .toList());
            assertThat(row.checks()).as("row %d", row.number()).isNotEmpty();
            assertThat(checks).as("row %d, %s", row.number(), row.procedure()).containsAll(row.checks());
        }
    }

    static Stream<String> procedures() {
        return Stream.concat(Bench.procedures().stream(), rows().stream().map(Row::procedure))
                .distinct();
    }

    @ParameterizedTest
    @MethodSource("procedures")
    void what_each_procedure_says_was_rehearsed(String name) {
        Procedure procedure = Bench.procedure(name);

        // The tank's is a small one, shown first.
        assertThat(procedure.rehearsals()).hasSizeGreaterThanOrEqualTo(name.equals("tank") ? 6 : 10);
    }

    @Test
    void the_traps_are_the_25_errors_that_benches_make_most() {
        List<String> numbers = Project.files(Project.BENCH.resolve("traps")).stream()
                .map(file -> file.getFileName().toString())
                .filter(name -> name.endsWith(".json"))
                .map(name -> name.substring(0, 2))
                .toList();

        assertThat(numbers)
                .containsExactlyElementsOf(IntStream.rangeClosed(1, 25)
                        .mapToObj(number -> String.format(Locale.ROOT, "%02d", number))
                        .toList());
    }
}

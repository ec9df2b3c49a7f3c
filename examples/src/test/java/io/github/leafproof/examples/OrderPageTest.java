package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.StepOrder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The order of steps of every procedure of the bench, against the order in which it is written. With {@code
 * -Dgolden.write=true} the table on the page is written anew; read the difference.
 */
class OrderPageTest {

    private static final Path PAGE = Project.ROOT.resolve("docs/order.md");
    private static final String HEAD = """
            | procedure | observations | changes as written | changes in this order | known to be the fewest |
            |---|---|---|---|---|
            """;

    private static List<Path> procedures() {
        return Stream.of(Project.BENCH, Project.BENCH.resolve("history"))
                .flatMap(OrderPageTest::procedures)
                .toList();
    }

    private static Stream<Path> procedures(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".inspection")).sorted().toList().stream();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static CheckGraph graph(Path file) {
        return Procedure.read(file).orElseThrow().graph();
    }

    /** How often the bench is changed by whoever goes through the observations as they are written. */
    private static int asWritten(CheckGraph graph) {
        Map<String, String> bench = new HashMap<>();
        int changes = 0;
        for (Node.Observation observation : graph.observations()) {
            for (StepOrder.Change change : graph.setup(observation, bench)) {
                bench.put(change.state().name(), change.change().to());
                changes++;
            }
        }
        return changes;
    }

    private static String row(Path file) {
        CheckGraph graph = graph(file);
        StepOrder order = graph.stepOrder();
        return "| " + file.getFileName().toString().replace(".inspection", "") + " | "
                + graph.observations().size() + " | " + asWritten(graph) + " | " + order.changes() + " | "
                + (order.method() == StepOrder.Method.EXACT ? "yes" : "no") + " |\n";
    }

    @Test
    void the_page_counts_the_changes_of_every_procedure_of_the_bench() throws IOException {
        String table = HEAD + procedures().stream().map(OrderPageTest::row).collect(Collectors.joining());
        if (Boolean.getBoolean("golden.write")) {
            String page = Project.text(PAGE);
            int from = page.indexOf(HEAD.substring(0, 12));
            int to = page.indexOf("\n\n", from) + 1;
            Files.writeString(PAGE, page.substring(0, from) + table + page.substring(to));
        }

        assertThat(Project.text(PAGE)).contains(table);
    }

    @Test
    void of_every_procedure_of_the_bench_it_is_known_that_no_order_has_fewer_changes() {
        assertThat(procedures()).hasSize(13).allSatisfy(file -> {
            CheckGraph graph = graph(file);
            StepOrder order = graph.stepOrder();
            assertThat(order.method()).isEqualTo(StepOrder.Method.EXACT);
            assertThat(order.changes()).isLessThanOrEqualTo(asWritten(graph));
            assertThat(order.observations()).containsExactlyInAnyOrderElementsOf(graph.observations());
        });
    }
}

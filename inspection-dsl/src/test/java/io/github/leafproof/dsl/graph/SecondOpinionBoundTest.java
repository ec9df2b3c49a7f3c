package io.github.leafproof.dsl.graph;

import static io.github.leafproof.dsl.graph.PropagationTest.depth;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The second opinion on a procedure's numbers takes a bounded time, and says where it stopped. */
class SecondOpinionBoundTest {

    // The trials of so many numbers would take minutes; they get what the bound allows for.
    @Test
    void a_procedure_that_computes_too_much_gets_no_second_opinion_on_all_of_it() {
        Workshop much = depth(IntStream.range(0, 400)
                        .mapToObj(
                                i -> "check c" + i + " \"C\" major { require step ^ 2 + " + i + " mm² at most 1 mm² }")
                        .collect(Collectors.joining("\n")))
                .observe("step", "\"0.00 mm\"");

        assertThat(much.report().notes())
                .anyMatch(
                        note -> note.matches("[0-9]+ computed values had no second opinion by Monte Carlo trials: this"
                                + " procedure computes too much for that"));
        assertThat(much.check("c0").notes()).isNotEmpty();
    }

    @Test
    void a_chain_of_ten_thousand_values_is_bounded_too() {
        String chain = IntStream.range(1, 10_000)
                .mapToObj(i -> "let x" + i + " = x" + (i - 1) + " * 1.0001")
                .collect(Collectors.joining("\n"));
        Workshop much = depth(
                        "let x0 = step ^ 2\n" + chain + "\ncheck last \"Last\" major { require x9999 at most 1 mm² }")
                .observe("step", "\"0.00 mm\"");

        assertThat(much.report().notes()).anyMatch(note -> note.contains("computed values had no second opinion"));
    }
}

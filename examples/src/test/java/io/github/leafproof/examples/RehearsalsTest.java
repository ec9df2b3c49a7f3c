package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.rehearsal.Rehearsed;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The first look's own cases. */
class RehearsalsTest {
    private final List<Rehearsed> rehearsed = Rehearsing.run(Bench.FIRST_LOOK, Project.BENCH);

    @TestFactory
    List<DynamicTest> each_rehearsal_comes_to_what_it_expects() {
        return rehearsed.stream()
                .map(each -> DynamicTest.dynamicTest(each.title(), () -> {
                    assertThat(each.problems()).isEmpty();
                    assertThat(each.surprises()).isEmpty();
                }))
                .toList();
    }

    @Test
    void the_first_look_rehearses_what_a_bench_gets_wrong() {
        assertThat(rehearsed)
                .extracting(Rehearsed::title)
                .contains(
                        "a leaf marked 0.10 that measures 0.11 proves nothing about 0.10",
                        "lash on a warm engine is not established, whatever the leaves say",
                        "at the top of the overlap a leaf says nothing")
                .hasSizeGreaterThanOrEqualTo(8);
    }
}

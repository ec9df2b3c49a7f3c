package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.rehearsal.Rehearsed;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The procedures' own cases. */
class RehearsalsTest {
    private static List<Rehearsed> rehearsed(String file) {
        Path procedure = Project.BENCH.resolve(file);
        return Rehearsing.run(Procedure.read(procedure).orElseThrow(), Project.BENCH);
    }

    @TestFactory
    List<DynamicTest> each_rehearsal_comes_to_what_it_expects() {
        return Bench.procedures().stream()
                .flatMap(name -> rehearsed(name + ".inspection").stream()
                        .map(each -> DynamicTest.dynamicTest(name + ": " + each.title(), () -> {
                            assertThat(each.problems()).isEmpty();
                            assertThat(each.surprises()).isEmpty();
                        })))
                .toList();
    }

    @Test
    void the_first_look_rehearses_what_a_bench_gets_wrong() {
        assertThat(rehearsed("first_look.inspection"))
                .extracting(Rehearsed::title)
                .contains(
                        "a leaf marked 0.10 that measures 0.11 proves nothing about 0.10",
                        "lash on a warm engine is not established, whatever the leaves say",
                        "at the top of the overlap a leaf says nothing")
                .hasSizeGreaterThanOrEqualTo(8);
    }
}

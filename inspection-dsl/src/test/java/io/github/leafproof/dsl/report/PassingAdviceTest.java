package io.github.leafproof.dsl.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import org.junit.jupiter.api.Test;

/** What a procedure has to say of a check that passes is read by whoever reads the report, and not by programs alone. */
class PassingAdviceTest {

    @Test
    void advice_for_a_pass_stands_in_the_report_behind_its_caution() {
        String text = TextReport.of(Workshop.of("""
                        observe flips : count hazard eyes ask "Flips"
                        check primes "It primes" {
                          require flips at most 8
                          if passes advise "{flips} flips are {flips / 2} intake strokes."
                        }
                        """).observe("flips", "6").report(), false);

        assertThat(text.replaceAll("\\s+", " "))
                .contains("passes It primes [major] found 6 caution Wear an eye shield")
                .contains("advice 6 flips are 3 intake strokes.");
    }
}

package io.github.leafproof.inspection.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class ReadTest {
    private static final Problem ERROR =
            new Problem("LP612", "a.json", "1:3 $.boar", "not known", "did you mean bore?");
    private static final Problem WARNING =
            new Problem(Problem.Level.WARNING, "LP683", "a.json", "", "times run backwards", null);

    @Test
    void a_problem_reads_as_place_reason_and_remedy() {
        assertThat(ERROR).hasToString("a.json:1:3 $.boar: error LP612: not known\n   help: did you mean bore?");
        assertThat(WARNING).hasToString("a.json: warning LP683: times run backwards");
    }

    @Test
    void what_was_read_can_be_used_whatever_looks_odd_about_it() {
        Read<String> read = new Read.Done<>("card", List.of(WARNING));

        assertThat(read.value()).contains("card");
        assertThat(read.problems()).containsExactly(WARNING);
        assertThat(read.orElseThrow()).isEqualTo("card");
        assertThat(read.map(String::length)).isEqualTo(new Read.Done<>(4, List.of(WARNING)));
    }

    @Test
    void what_was_refused_has_no_value_and_says_why() {
        Read<String> read = new Read.Refused<>(List.of(WARNING, ERROR));

        assertThat(read.value()).isEmpty();
        assertThat(read.map(String::length)).isEqualTo(new Read.Refused<Integer>(List.of(WARNING, ERROR)));
        assertThatThrownBy(read::orElseThrow).isInstanceOfSatisfying(RecordException.class, thrown -> {
            assertThat(thrown.problems()).containsExactly(WARNING, ERROR);
            assertThat(thrown).hasMessage(WARNING + "\n" + ERROR);
        });
    }

    @Test
    void nothing_is_refused_without_an_error() {
        assertThatThrownBy(() -> new Read.Refused<>(List.of(WARNING))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void no_probability_lies_outside_zero_and_one_or_runs_backwards() {
        double[][] impossible = {{-0.1, 0.5}, {0.5, 1.1}, {0.9, 0.1}, {Double.NaN, 1}, {0, Double.NaN}};
        for (double[] bounds : impossible) {
            assertThatThrownBy(() -> new Report.Probability(bounds[0], bounds[1]))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("no probability lies between");
        }
    }

    @Test
    void a_report_names_a_file_by_name_and_digest() {
        assertThat(Report.Input.of(new Document<>("content", "a.json", "00")))
                .isEqualTo(new Report.Input("a.json", "00"));
    }
}

package io.github.leafproof.dsl.meaning;

import static io.github.leafproof.dsl.meaning.Bench15.diagnostics;
import static io.github.leafproof.dsl.meaning.Bench15.graph;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What belongs before every run of an engine. The four cautions are common practice (trade reading, docs/safety.md). */
class RunningEngineTest {

    private static final String READ = "check fast \"F\" { require peak at least 9000 rpm }";

    @Test
    void an_engine_that_runs_shows_all_four_cautions_or_none_of_it_compiles() {
        assertThat(diagnostics("observe peak : rotational speed hazard propeller, hot, fuel\n" + READ))
                .contains("LP424")
                .contains("nothing warns of eyes");
        assertThat(diagnostics("observe peak : rotational speed\n" + READ))
                .contains("nothing warns of propeller, hot, fuel or eyes");
        assertThat(graph("observe peak : rotational speed hazard eyes, fuel, hot, propeller\n" + READ)
                        .checks())
                .hasSize(1);
    }

    @Test
    void a_tacho_that_reads_for_another_value_does_not_hide_the_run() {
        assertThat(diagnostics("gauge tacho : reading of rotational speed\nobserve peak : rotational speed with tacho "
                        + "when smooth\nobserve smooth : yes/no\n" + READ))
                .contains("LP424");
    }

    @Test
    void a_row_of_readings_of_the_speed_is_a_run_as_well() {
        assertThat(diagnostics("observe peak : series of rotational speed hazard hot "
                        + "check fast \"F\" { require mean(peak) at least 9000 rpm }"))
                .contains("LP424");
    }

    @Test
    void in_a_loop_each_round_must_show_them() {
        assertThat(diagnostics("for needle in rich, lean { observe peak[needle] : rotational speed hazard hot "
                        + "check c[needle] \"C\" { require peak[needle] at least 9000 rpm } }"))
                .contains("LP424");
    }

    @ParameterizedTest
    @ValueSource(strings = {"running", "running_rich", "idling", "runs_hot"})
    void a_state_in_which_it_runs_carries_them_even_if_it_is_only_passed_through(String state) {
        String setup = "setup shaft starts cold { cold -> " + state + " \"Start\" hazard propeller, hot, fuel, eyes\n"
                + state + " -> warm \"Stop\" %s } "
                + "observe drips : yes/no setup shaft warm\ncheck c \"C\" { require not drips }";
        assertThat(diagnostics(String.format(setup, ""))).contains("LP424");
        assertThat(diagnostics(String.format(setup, "while " + state + " hazard propeller, hot, fuel, eyes")))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"not_running", "before_running", "stopped_running", "until_it_runs"})
    void a_state_before_or_after_a_run_is_no_run(String state) {
        assertThat(diagnostics("setup shaft starts cold { cold -> " + state
                        + " \"Wait\" }\nobserve dry : yes/no setup shaft " + state
                        + "\ncheck c \"C\" { require dry }"))
                .isEmpty();
    }

    @Test
    void a_setup_that_is_named_for_the_run_tells_it_as_well() {
        assertThat(diagnostics("setup engine_runs starts off { off -> lean \"Start it\" } "
                        + "observe smooth : yes/no setup engine_runs lean\ncheck c \"C\" { require smooth }"))
                .contains("while engine_runs is lean");
    }

    @Test
    void a_hazard_of_the_shop_stands_for_none_of_the_four() {
        assertThat(diagnostics("hazard everything \"Mind everything.\" "
                        + "observe peak : rotational speed hazard everything\n" + READ))
                .contains("LP424");
    }
}

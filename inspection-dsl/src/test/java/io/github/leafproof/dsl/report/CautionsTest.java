package io.github.leafproof.dsl.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.inspection.record.Report;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The caution stands before the step: what lasts, lasts through every step until it is ended. */
class CautionsTest {

    private static final String BENCH = """
        hazard wet "The tank is open."
        hazard draughty "The door is open."
        setup tank starts shut {
          shut -> open "Open the tank" hazard electric
          open -> shut "Shut the tank"
          while open hazard wet
        }
        setup door starts open_wide {
          open_wide -> shut "Shut the door"
          while open_wide hazard draughty
        }
        observe full : yes/no setup tank open hazard eyes ask "Full?"
        observe clean : yes/no ask "Clean?"
        observe dry : yes/no setup tank shut, door shut ask "Dry?"
        check f "F" { require full }
        check c "C" { require clean }
        check d "D" { require dry }
        """;

    private static List<String> before(String step) {
        return Workshop.of(BENCH).report().next().stream()
                .filter(each -> each.step().startsWith(step))
                .findFirst()
                .map(Report.Step::cautions)
                .orElseThrow()
                .stream()
                .map(caution -> caution.substring(0, caution.indexOf('.')))
                .toList();
    }

    @Test
    void a_step_shows_its_own_hazards_and_those_of_the_states_it_needs() {
        assertThat(before("Full?"))
                .containsExactly(
                        "Wear an eye shield: fuel, springs, clips and chips fly without warning",
                        "The tank is open",
                        "The door is open");
    }

    @Test
    void opening_and_shutting_what_is_dangerous_while_open_shows_it_as_well() {
        assertThat(before("Open the tank")).contains("The tank is open").hasSize(3);
        assertThat(before("Shut the tank")).containsExactly("The tank is open", "The door is open");
    }

    @Test
    void a_step_that_needs_no_state_still_shows_what_lasts_while_it_is_done() {
        assertThat(before("Clean?")).containsExactly("The tank is open", "The door is open");
    }

    @Test
    void what_was_ended_is_not_shown_again() {
        assertThat(before("Dry?")).isEmpty();
    }
}

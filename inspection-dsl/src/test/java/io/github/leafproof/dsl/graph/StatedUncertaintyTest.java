package io.github.leafproof.dsl.graph;

import static io.github.leafproof.inspection.verdict.Outcome.FAILS;
import static io.github.leafproof.inspection.verdict.Outcome.OPEN;
import static io.github.leafproof.inspection.verdict.Outcome.PASSES;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.Contribution;
import io.github.leafproof.inspection.quantity.Estimate;
import org.junit.jupiter.api.Test;

/** How well a value is known, where the procedure says it (JCGM 100, 4.3.7 and 4.3.3; clauses from memory). */
class StatedUncertaintyTest {

    private static Workshop judging(String rules) {
        return Workshop.of("observe seen : yes/no ask \"Seen?\"\n" + rules
                        + "\ncheck looked \"Looked at\" minor { require seen }")
                .observe("seen", "true");
    }

    /** What a derived value comes to. */
    private static Estimate known(String expression) {
        Judgement judgement = judging("let value = " + expression).judged();
        Node.Derived node = (Node.Derived) judgement.graph().node("value").orElseThrow();
        return ((Value.Amount) judgement.slots()[node.slot()]).estimate();
    }

    // Divisor √3 for limits: JCGM 100, 4.3.7; U/k for a certificate: 4.3.3.
    @Test
    void limits_count_as_their_size_by_the_root_of_three_and_a_certificate_as_its_size_by_k() {
        assertThat(known("5 mm ± 0.3 mm").standardUncertainty()).isEqualTo(0.000_173_205, within(1e-9));
        assertThat(known("5 mm (u 0.3 mm)").standardUncertainty()).isEqualTo(0.0003, within(1e-12));
        assertThat(known("5 mm (U 0.3 mm, k 2)").standardUncertainty()).isEqualTo(0.00015, within(1e-12));
        assertThat(known("5 mm (U = 0.3 mm, k = 3)").standardUncertainty()).isEqualTo(0.0001, within(1e-12));
    }

    @Test
    void the_unit_behind_both_numbers_counts_for_both() {
        Estimate shared = known("5 ± 0.3 mm");

        assertThat(shared.value()).isEqualTo(0.005, within(1e-12));
        assertThat(shared.standardUncertainty()).isEqualTo(0.000_173_205, within(1e-9));
        assertThat(known("2 thou ± 0.01 mm").value()).isEqualTo(0.000_050_8, within(1e-12));
    }

    @Test
    void per_cent_are_a_share_of_the_value_and_of_a_ratio_they_are_per_cent() {
        assertThat(known("200 mm (u 2 %)").standardUncertainty()).isEqualTo(0.004, within(1e-12));
        assertThat(known("engine.displacement (u 1 %)").standardUncertainty()).isEqualTo(0.15e-6, within(1e-15));
        assertThat(known("-200 mm (u 2 %)").standardUncertainty()).isEqualTo(0.004, within(1e-12));
        assertThat(known("50 % (u 2 %)").standardUncertainty()).isEqualTo(0.02, within(1e-12));
    }

    @Test
    void a_temperature_is_known_to_a_difference_of_temperatures_below_nought_too() {
        Estimate frost = known("-5 °C (u 0.2 K)");

        assertThat(frost.value()).isEqualTo(268.15, within(1e-9));
        assertThat(frost.standardUncertainty()).isEqualTo(0.2, within(1e-12));
        assertThat(known("21.3 degC (u 0.2 degC)").standardUncertainty()).isEqualTo(0.2, within(1e-12));
    }

    @Test
    void what_is_written_once_errs_once_and_what_is_written_twice_errs_twice() {
        String once = "let ring = 5 mm (u 0.3 mm)\nlet other = 5 mm (u 0.3 mm)\n";

        assertThat(judging(once + "check same \"Same\" { require ring - ring within 0.001 mm of 0 mm }")
                        .outcome("same"))
                .isEqualTo(PASSES);
        assertThat(judging(once + "check same \"Same\" { require ring - other within 0.5 mm of 0 mm }")
                        .outcome("same"))
                .as("0.5 mm is 1.18 of the √2 times 0.3 mm: 76 % (normal table)")
                .isEqualTo(OPEN);
    }

    @Test
    void each_round_of_a_loop_writes_it_anew_and_each_use_of_a_function_does_not() {
        assertThat(known("""
                play[intake] - play[exhaust]
                for v in intake, exhaust { let play[v] = 1 mm (u 0.3 mm) }""").standardUncertainty()).isEqualTo(0.000_424_264, within(1e-9));
        assertThat(known("""
                longer(2 mm) - longer(1 mm)
                define longer(x : length) = x + (1 mm (u 0.3 mm))""").standardUncertainty()).isZero();
        assertThat(known("""
                off(off(1 mm))
                define off(x : length) = x (u 0.3 mm)""").standardUncertainty()).isEqualTo(0.0006, within(1e-12));
    }

    @Test
    void its_share_in_the_uncertainty_is_known_by_its_place() {
        assertThat(known("5 mm ± 0.3 mm").contributions())
                .extracting(Contribution::source)
                .containsExactly("the ± of line 3, column 18");
        assertThat(known("(5 mm (u 0.3 mm)) * 2").contributions())
                .extracting(Contribution::source)
                .containsExactly("the u of line 3, column 20");
    }

    @Test
    void a_limit_that_is_only_known_so_well_leaves_open_what_is_nearer_to_it() {
        Workshop bore = Workshop.of("observe bore : length ask \"Bore\"\n"
                + "check small \"Small\" { require bore at most 28 mm (u 0.1 mm) }");

        assertThat(bore.observe("bore", "\"27.7 mm\"").outcome("small")).isEqualTo(PASSES);
        assertThat(bore.observe("bore", "\"27.9 mm\"").outcome("small")).isEqualTo(OPEN);
        assertThat(bore.observe("bore", "\"28.1 mm\"").outcome("small")).isEqualTo(OPEN);
        assertThat(bore.observe("bore", "\"28.3 mm\"").outcome("small")).isEqualTo(FAILS);
        assertThat(bore.observe("bore", "\"27.7 mm\"").check("small").requirement())
                .isEqualTo("bore at most 28 mm (u 0.1 mm)");
    }

    // Within ±a anything is as likely as another: 95 % lie within ±0.95 a, not within ±1.96 a/√3 = ±1.13 a.
    @Test
    void the_second_opinion_knows_that_limits_end() {
        Workshop limits = judging("let ring = 5 mm ± 1 mm\ncheck large \"Large\" { require ring at least 4 mm }");
        Workshop normal = judging("let ring = 5 mm (u 1 mm)\ncheck large \"Large\" { require ring at least 4 mm }");

        assertThat(limits.report().notes())
                .anyMatch(note ->
                        note.matches("known better than was judged .*: ring is 4\\.0[456] mm to 5\\.9[456] mm, taken as"
                                + " 3\\.87 mm to 6\\.13 mm"));
        assertThat(normal.report().notes()).noneMatch(note -> note.contains("known better"));
    }
}

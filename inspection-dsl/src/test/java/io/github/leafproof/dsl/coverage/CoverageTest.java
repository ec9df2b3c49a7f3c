package io.github.leafproof.dsl.coverage;

import static io.github.leafproof.dsl.coverage.Rehearsals.coverage;
import static io.github.leafproof.dsl.coverage.Rehearsals.saying;
import static io.github.leafproof.dsl.coverage.Rehearsals.shown;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.leafproof.dsl.Golden;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.meaning.Saying.Kind;
import io.github.leafproof.dsl.meaning.Way;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What rehearsals show of a procedure. */
class CoverageTest {

    private static final String LASH = """
            gauge leaves : leaf set
            observe dry : yes/no ask "Dry?"
            observe lash : gap with leaves ask "Lash"
            check no_liquid "Dry" gate { require dry }
            check inside "Lash" critical {
              after no_liquid
              require lash between engine.lash_min and engine.lash_max
              if open advise next_leaf(lash, engine.lash_min, engine.lash_max)
              if high advise "Close it"
              if low advise "Open it"
            }
            """;

    @Test
    void each_rehearsal_shows_what_it_comes_to() {
        Coverage coverage = coverage(
                LASH,
                "enter dry yes, lash passes \"0.05\" refuses \"0.10\"",
                "enter dry yes, lash passes \"0.10\"",
                "enter dry no");

        assertThat(shown(coverage, "check inside")).containsExactly("fails high", "open", "blocked");
        assertThat(shown(coverage, "check no_liquid")).containsExactly("passes", "fails");
        assertThat(shown(coverage, "gate no_liquid")).containsExactly("lets through", "holds back");
        assertThat(shown(coverage, "advice inside if open")).containsExactly("is given");
        assertThat(shown(coverage, "advice inside if low")).isEmpty();
        assertThat(coverage.showing(saying(coverage, "check inside"), Way.BLOCKED))
                .containsExactly(2);
        assertThat(coverage.played()).isEqualTo(3);
    }

    @Test
    void what_is_missing_is_told_with_its_place_and_what_would_show_it() {
        Golden.hold(
                "coverage",
                CoverageText.of(coverage(LASH, "enter dry yes, lash passes \"0.05\" refuses \"0.10\""))
                        + CoverageText.of(coverage(LASH)));
    }

    @Test
    void programs_are_told_the_same_and_who_shows_what() {
        Golden.hold(
                "coverage-json",
                CoverageJson.write(List.of(coverage(
                        LASH, "enter dry yes, lash passes \"0.05\" refuses \"0.10\"", "engine \"cards/none.json\""))));
    }

    @Test
    void behind_a_shut_gate_and_in_the_other_arm_nothing_is_shown() {
        Coverage coverage = coverage("""
                observe dry : yes/no ask "Dry?"
                observe a : yes/no ask "A?"
                observe b : yes/no ask "B?"
                check no_liquid "Dry" gate { require dry }
                check both "Both" { after no_liquid require a and b }
                let most = if a then (if b then 1 mm else 2 mm) else 3 mm
                observe rim : length ask "Rim"
                check level "Level" { require rim at most most }
                """, "enter dry no, a no, b yes");

        assertThat(coverage.share(Kind.CONDITION).shown()).isEqualTo(1);
        assertThat(shown(coverage, "condition a")).isEmpty();
        assertThat(coverage.sayings())
                .filteredOn(saying -> coverage.isShown(saying, Way.FAILS))
                .extracting(CoverageText::title)
                .contains("condition a");
    }

    @Test
    void all_rounds_of_a_loop_together_show_what_is_written_once() {
        Coverage coverage = coverage("""
                for valve in intake, exhaust {
                  observe tight[valve] : yes/no ask "Tight?"
                  check held[valve] "Held" { require tight[valve] if fails advise "Tighten it" }
                }
                """, "enter tight[intake] yes, tight[exhaust] no");

        assertThat(shown(coverage, "check held[valve]")).containsExactly("passes", "fails");
        assertThat(shown(coverage, "advice held[valve] if fails")).containsExactly("is given");
    }

    @Test
    void a_function_is_shown_by_each_of_its_calls() {
        Coverage coverage = coverage("""
                define most(far : yes/no, end : one of left, right) = choose end {
                  left: if far then 2 mm else 1 mm
                  right: 3 mm
                }
                observe wide : yes/no ask "Wide?"
                observe narrow : yes/no ask "Narrow?"
                observe side : one of left, right ask "Side?"
                observe rim : length ask "Rim"
                check one "One" { require rim at most most(wide, side) }
                check two "Two" { require rim at most most(narrow, side) }
                """, "enter wide yes, narrow no, side left, rim 1 mm");

        assertThat(shown(coverage, "arm end: left")).containsExactly("is chosen");
        assertThat(shown(coverage, "arm end: right")).isEmpty();
        assertThat(shown(coverage, "condition far")).containsExactly("fails", "holds");
    }

    @Test
    void the_line_that_decides_is_shown_and_no_line_below_it() {
        Coverage coverage = coverage(LASH, "enter dry yes, lash passes \"0.10\"");

        assertThat(coverage.share(Kind.RELEASE)).isEqualTo(new Share(1, 4));
    }

    @Test
    void a_rehearsal_that_cannot_be_played_shows_nothing_and_one_that_surprises_shows_what_it_came_to() {
        Coverage coverage =
                coverage(LASH, "engine \"cards/none.json\"\n enter dry no", "enter dry yes\n  expect no_liquid fails");

        assertThat(coverage.played()).isEqualTo(1);
        assertThat(shown(coverage, "check no_liquid")).containsExactly("passes");
    }

    @Test
    void coverage_of_one_procedure_is_none_of_another() {
        Procedure one = Rehearsals.procedure(LASH, "enter dry no");
        Procedure other = Rehearsals.procedure(LASH, "enter dry no");
        Coverage coverage = Coverage.of(one, Rehearsals.played(one));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> coverage.and(Coverage.of(other, Rehearsals.played(other))));
        assertThatIllegalArgumentException().isThrownBy(() -> Coverage.of(other, Rehearsals.played(one)));
    }

    @Test
    void nothing_short_of_all_is_a_hundred_per_cent() {
        assertThat(new Share(9_999, 10_000).words()).isEqualTo("99.9 %");
        assertThat(new Share(9_999, 10_000).isAtLeast(BigDecimal.valueOf(100))).isFalse();
        assertThat(new Share(90, 100).words()).isEqualTo("90 %");
        assertThat(new Share(90, 100).isAtLeast(BigDecimal.valueOf(90))).isTrue();
        assertThat(new Share(2, 3).words()).isEqualTo("66.6 %");
        assertThat(new Share(2, 3).isAtLeast(new BigDecimal("66.7"))).isFalse();
        assertThat(new Share(0, 3).words()).isEqualTo("0 %");
        assertThat(new Share(0, 0).isAtLeast(BigDecimal.valueOf(100))).isTrue();
    }
}

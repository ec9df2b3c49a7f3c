package io.github.leafproof.inspection.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.quantity.Csv;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The laws of probability against printed tables.
 *
 * <p>Source: student-t.csv, the table that NIST Technical Note 1297 (B.1) and JCGM 100 (G.2) share, verified in a copy.
 */
class CoverageTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    static List<Csv.Row> rows() {
        return Csv.rows(CoverageTest.class, "student-t.csv");
    }

    static List<Csv.Row> rowsPrintedWell() {
        return rows().stream()
                .filter(row -> row.get("rounds_to_printed").equals("yes"))
                .toList();
    }

    @Test
    void the_printed_table_has_168_factors_of_which_two_are_printed_oddly() {
        // For 1 degree of freedom at 99.73 % the table prints 235.80 and the law gives 235.78; for 35 at 90 % it prints
        // 1.70 and the law gives 1.6896.
        assertThat(rows()).hasSize(168);
        assertThat(rows())
                .filteredOn(row -> row.get("rounds_to_printed").equals("NO"))
                .extracting(row -> row.get("nu") + " " + row.get("p"))
                .containsExactly("1 0.9973", "35 0.9");
    }

    @ParameterizedTest
    @MethodSource("rowsPrintedWell")
    void a_factor_is_the_printed_one(Csv.Row row) {
        BigDecimal printed = new BigDecimal(row.get("printed"));
        double half = printed.ulp().doubleValue() / 2;
        assertThat(factor(row)).isCloseTo(printed.doubleValue(), within(half + 1e-12));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_factor_agrees_with_an_independent_calculation(Csv.Row row) {
        double exact = Double.parseDouble(row.get("exact"));
        assertThat(factor(row)).isCloseTo(exact, within(1e-9 * exact));
    }

    private static double factor(Csv.Row row) {
        double dof = row.get("nu").equals("inf") ? INFINITE : Double.parseDouble(row.get("nu"));
        return Coverage.coverageFactor(Double.parseDouble(row.get("p")), dof);
    }

    @ParameterizedTest
    @CsvSource({
        "0.001, -5.89342953136",
        "0.01, -3.36492999891",
        "0.025, -2.57058183564",
        "0.05, -2.01504837333",
        "0.1, -1.47588404882"
    })
    void a_quantile_of_five_degrees_of_freedom_is_the_calculated_one(double p, double t) {
        // Recalculated with an independent numerical library.
        assertThat(Coverage.quantile(p, 5)).isCloseTo(t, within(1e-10));
        assertThat(Coverage.probabilityBelow(t, 5)).isCloseTo(p, within(1e-11));
        assertThat(Coverage.probabilityAbove(-t, 5)).isCloseTo(p, within(1e-11));
    }

    @ParameterizedTest
    @CsvSource({"0.80, 0.841621", "0.90, 1.281552", "0.95, 1.644854", "0.99, 2.326348", "0.999, 3.090232"})
    void a_quantile_of_the_normal_law_is_the_printed_one(double p, double z) {
        // JCGM 106:2012 table 1, from memory and recalculated.
        assertThat(Coverage.quantile(p, INFINITE)).isCloseTo(z, within(1e-6));
        assertThat(Coverage.probabilityBelow(z, INFINITE)).isCloseTo(p, within(1e-6));
    }

    @Test
    void the_block_of_example_h_1_is_known_to_93_nanometres() {
        // JCGM 100:2008 example H.1: t for 99 % and 16 degrees of freedom is 2.92, and 2.92 × 32 nm is 93 nm
        // (verified).
        double t = Coverage.coverageFactor(0.99, 16);
        assertThat(t).isCloseTo(2.920_781_622, within(1e-9));
        assertThat(t * 32).isCloseTo(93, within(0.5));
    }

    @Test
    void far_out_in_the_tail_a_probability_is_small_but_not_nothing() {
        assertThat(Coverage.probabilityAbove(10, INFINITE)).isCloseTo(7.619853e-24, within(1e-29));
        assertThat(Coverage.probabilityBelow(-10, INFINITE)).isCloseTo(7.619853e-24, within(1e-29));
        assertThat(Coverage.probabilityBelow(Double.NEGATIVE_INFINITY, INFINITE))
                .isZero();
        assertThat(Coverage.probabilityAbove(Double.POSITIVE_INFINITY, 3)).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, Double.NaN})
    void nothing_short_of_infinity_covers_all(double p) {
        assertThatThrownBy(() -> Coverage.coverageFactor(p, 5))
                .hasMessage("a coverage probability lies between 0 and 1, not at " + p);
    }
}

package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every unit against figures from outside.
 *
 * <p>Sources: unit-factors.csv (definitions of 1901 and 1959, and the digits that NIST SP 811 (2008) prints) for the units
 * of trade; the SI Brochure, 9th edition (tables of prefixes and of units in use with the SI, from memory) for the rest.
 */
class UnitFactorsTest {
    /** By definition of the SI, its prefixes, and the units in use with it. */
    private static final Map<String, String> SI = Map.ofEntries(
            Map.entry("m", "1"),
            Map.entry("kg", "1"),
            Map.entry("s", "1"),
            Map.entry("K", "1"),
            Map.entry("rad", "1"),
            Map.entry("km", "1e3"),
            Map.entry("cm", "1e-2"),
            Map.entry("mm", "1e-3"),
            Map.entry("µm", "1e-6"),
            Map.entry("L", "1e-3"),
            Map.entry("mL", "1e-6"),
            Map.entry("µL", "1e-9"),
            Map.entry("g", "1e-3"),
            Map.entry("mg", "1e-6"),
            Map.entry("ms", "1e-3"),
            Map.entry("min", "60"),
            Map.entry("h", "3600"),
            Map.entry("d", "86400"),
            Map.entry("N", "1"),
            Map.entry("kN", "1e3"),
            Map.entry("Pa", "1"),
            Map.entry("hPa", "1e2"),
            Map.entry("kPa", "1e3"),
            Map.entry("MPa", "1e6"),
            Map.entry("mbar", "1e2"),
            Map.entry("J", "1"),
            Map.entry("kJ", "1e3"),
            Map.entry("W", "1"),
            Map.entry("kW", "1e3"),
            Map.entry("%", "1e-2"),
            Map.entry("ppm", "1e-6"));

    /** Read in SP 811 (2008) Appendix B.8, from memory: the international mile, and conventional water. */
    private static final Map<String, String> MORE = Map.of("mi", "1609.344", "mmH2O", "9.80665");

    /** Checked at their fixed points instead: see TemperatureTest. */
    private static final Set<String> SCALES = Set.of("°C", "°F");

    static List<Csv.Row> rows() {
        return Csv.rows(UnitFactorsTest.class, "unit-factors.csv");
    }

    @Test
    void the_table_of_factors_has_its_47_rows() {
        assertThat(rows()).hasSize(47);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_factor_is_exactly_what_the_definitions_give(Csv.Row row) {
        Unit unit = Unit.parse(row.get("written"));
        assertThat(unit.factor()).isEqualTo(exact(row.get("exact")));
        assertThat(unit.dimension())
                .isEqualTo(Unit.parse(row.get("si_unit").replace(' ', '·')).dimension());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_factor_as_a_double_is_right_to_the_last_bits(Csv.Row row) {
        double expected = Double.parseDouble(row.get("factor"));
        Unit unit = Unit.parse(row.get("written"));
        assertThat(unit.toBase(1)).isCloseTo(expected, within(1e-15 * expected));
        assertThat(unit.fromBase(expected)).isCloseTo(1, within(1e-15));
        assertThat(Quantity.of(1, unit).base()).isCloseTo(expected, within(1e-15 * expected));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_factor_agrees_with_every_digit_that_sp_811_prints(Csv.Row row) {
        if (row.get("printed").isEmpty()) {
            assertThat(row.get("printed_status")).isEqualTo("by definition");
            return;
        }
        BigDecimal printed = new BigDecimal(row.get("printed"));
        BigDecimal found = BigDecimal.valueOf(Unit.parse(row.get("written")).toBase(1));
        assertThat(found.subtract(printed).abs())
                .isLessThanOrEqualTo(printed.ulp().divide(BigDecimal.valueOf(2)));
    }

    @Test
    void a_unit_of_the_si_is_what_its_prefix_says() {
        SI.forEach((symbol, factor) ->
                assertThat(Unit.parse(symbol).factor()).as(symbol).isEqualTo(Exact.of(new BigDecimal(factor))));
        MORE.forEach((symbol, factor) ->
                assertThat(Unit.parse(symbol).factor()).as(symbol).isEqualTo(Exact.of(new BigDecimal(factor))));
    }

    @Test
    void no_unit_of_the_table_lacks_a_check_from_outside() {
        Set<String> checked =
                rows().stream().map(row -> row.get("written")).collect(Collectors.toCollection(TreeSet::new));
        checked.addAll(SI.keySet());
        checked.addAll(MORE.keySet());
        checked.addAll(SCALES);
        assertThat(checked).containsAll(UnitTable.symbols());
    }

    private static Exact exact(String form) {
        boolean pi = form.startsWith("pi*");
        String fraction = pi ? form.substring(3) : form;
        int slash = fraction.indexOf('/');
        BigInteger over = new BigInteger(slash < 0 ? fraction : fraction.substring(0, slash));
        BigInteger under = slash < 0 ? BigInteger.ONE : new BigInteger(fraction.substring(slash + 1));
        return Exact.of(over, under).timesPi(pi ? 1 : 0);
    }
}

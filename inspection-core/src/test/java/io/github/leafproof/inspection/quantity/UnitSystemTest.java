package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Which units a reader takes as they stand. */
class UnitSystemTest {

    @Test
    void every_unit_is_at_home_somewhere_and_times_and_turns_everywhere() {
        List<String> both = UnitTable.symbols().stream()
                .filter(symbol -> UnitSystem.METRIC.isAtHome(Unit.parse(symbol)))
                .filter(symbol -> UnitSystem.INCH.isAtHome(Unit.parse(symbol)))
                .toList();

        assertThat(UnitTable.symbols())
                .allMatch(symbol ->
                        UnitSystem.METRIC.isAtHome(Unit.parse(symbol)) || UnitSystem.INCH.isAtHome(Unit.parse(symbol)));
        assertThat(both)
                .containsExactlyInAnyOrder(
                        "s", "rad", "ms", "min", "h", "d", "turn", "deg", "arcmin", "rpm", "%", "ppm");
        assertThat(UnitSystem.METRIC.isAtHome(Unit.ONE)).isTrue();
        assertThat(UnitSystem.INCH.isAtHome(Unit.ONE)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "mm, METRIC", "K, METRIC", "thou, INCH", "mm per turn, METRIC", "thou per turn, INCH", "in·lbf, INCH",
                "N·m, METRIC",
        "mL/min, METRIC", "floz/min, INCH", "psi, INCH", "µin, INCH", "Δ°F, INCH", "inHg, INCH", "atm, METRIC"
    })
    void a_product_or_quotient_is_at_home_where_its_units_are(String symbol, UnitSystem home) {
        for (UnitSystem system : UnitSystem.values()) {
            assertThat(system.isAtHome(Unit.parse(symbol))).isEqualTo(system == home);
        }
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void the_units_that_amounts_are_shown_in_are_at_home(UnitSystem system) {
        for (String symbol : UnitTable.symbols()) {
            Dimension dimension = Unit.parse(symbol).dimension();
            boolean unusual = List.of("J", "kJ", "Btu").contains(symbol);
            assertThat(system.isAtHome(system.unitFor(dimension, 1)) || unusual)
                    .as(symbol)
                    .isTrue();
        }
    }
}

package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** How units are found, put together and written. */
class UnitTest {
    private static Unit unit(String text) {
        return Unit.parse(text);
    }

    @Test
    void a_name_on_the_table_is_found_and_a_product_is_not() {
        assertThat(Unit.find("turns")).contains(unit("turn"));
        assertThat(Unit.find("cc")).contains(unit("cm³"));
        assertThat(Unit.find("in·lbf")).isEmpty();
        assertThat(Unit.find("")).isEmpty();
    }

    @Test
    void units_multiply_and_divide_as_their_dimensions_do() {
        assertThat(unit("in").times(unit("lbf"))).isEqualTo(unit("in·lbf")).hasToString("in·lbf");
        assertThat(unit("mm").dividedBy(unit("turn")))
                .isEqualTo(unit("mm per turn"))
                .hasToString("mm per turn");
        assertThat(unit("kg").dividedBy(unit("m").power(3))).hasToString("kg/m³");
        assertThat(unit("mm").times(unit("mm"))).isEqualTo(unit("mm²"));
        assertThat(unit("mm").dividedBy(unit("mm"))).isEqualTo(Unit.ONE);
        assertThat(unit("mm").dividedBy(unit("in")).dimension()).isEqualTo(Dimension.RATIO);
        assertThat(unit("K").power(-1)).hasToString("per K");
        assertThat(unit("K").power(-1).dividedBy(unit("s"))).hasToString("per K per s");
        assertThat(unit("per K per s").symbol()).isEqualTo("per K per s");
    }

    @Test
    void spellings_of_one_unit_are_one_unit() {
        for (String spelling : List.of("kg/m3", "kg/m³", "kg/m^3", "kg per m3", "kg · m-3", "kg m⁻³")) {
            assertThat(unit(spelling)).as(spelling).isEqualTo(unit("kg/m³"));
        }
        assertThat(unit("1/K")).isEqualTo(unit("per K"));
        assertThat(unit("/K")).isEqualTo(unit("per K"));
        assertThat(unit("  ")).isEqualTo(Unit.ONE);
        assertThat(Unit.ONE.dimension().isRatio()).isTrue();
    }

    @Test
    void twelve_thousand_revolutions_a_minute_are_1257_radians_a_second() {
        // 1 rpm is π/30 rad/s by definition; digits recalculated.
        assertThat(unit("rpm").toBase(12_000)).isCloseTo(1256.637_061_435_917, within(1e-12));
        assertThat(Quantity.parse("12 000 rpm").base()).isCloseTo(1256.637_061_435_917, within(1e-12));
    }

    @Test
    void one_atmosphere_is_29_92_inches_of_mercury() {
        // NIST SP 811 (2008), printed 29.9213 inHg and 14.69595 psi; verified in a transcription.
        Quantity atmosphere = Quantity.parse("1 atm");
        assertThat(atmosphere.in(unit("inHg")).value()).isCloseTo(29.921_255_579_7, within(5e-11));
        assertThat(atmosphere.in(unit("psi")).value()).isCloseTo(14.695_948_775_5, within(5e-11));
    }

    @Test
    void units_as_large_but_named_apart_are_not_equal() {
        assertThat(unit("J")).isNotEqualTo(unit("N·m"));
        assertThat(unit("J")).isNotEqualTo("J");
        assertThat(unit("J").toBase(1)).isEqualTo(unit("N·m").toBase(1));
    }
}

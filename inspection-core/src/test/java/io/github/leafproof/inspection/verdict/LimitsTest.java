package io.github.leafproof.inspection.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitsTest {
    private static final double NONE = Double.POSITIVE_INFINITY;

    @Test
    void limits_are_made_as_they_are_said() {
        assertThat(Limits.between(1, 2)).isEqualTo(new Limits(1, 2, 1, 2));
        assertThat(Limits.atLeast(1)).isEqualTo(new Limits(1, NONE, 1, NONE));
        assertThat(Limits.atMost(2)).isEqualTo(new Limits(-NONE, 2, -NONE, 2));
        assertThat(Limits.within(0.5, 2)).isEqualTo(new Limits(1.5, 2.5, 1.5, 2.5));
        assertThat(Limits.between(1, 1).lower()).isEqualTo(1);
    }

    @Test
    void quantities_make_limits_in_whatever_unit_they_are_written() {
        Limits lash = Limits.between(Quantity.parse("0.03 mm"), Quantity.parse("4 thou"));
        assertThat(lash.lower()).isCloseTo(3e-5, within(1e-18));
        assertThat(lash.upper()).isCloseTo(1.016e-4, within(1e-18));
        assertThat(Limits.atLeast(Quantity.parse("1 bar")).lower()).isEqualTo(1e5);
        assertThat(Limits.atMost(Quantity.parse("1 bar")).upper()).isEqualTo(1e5);
        assertThat(Limits.within(Quantity.parse("3 K"), Quantity.parse("20 °C")))
                .isEqualTo(Limits.within(3, 293.15));
    }

    @Test
    void a_tolerance_widens_the_window() {
        Limits lash = Limits.between(Quantity.parse("0.03 mm"), Quantity.parse("0.10 mm"))
                .tolerating(Quantity.parse("0.03 mm"), Quantity.parse("0.14 mm"));
        assertThat(lash.hasTolerance()).isTrue();
        assertThat(lash.aimed().hasTolerance()).isFalse();
        assertThat(lash.aimed().upper()).isEqualTo(1e-4);
        assertThat(lash.tolerated()).isEqualTo(Limits.between(3e-5, 1.4e-4));
        assertThat(Limits.atLeast(1).tolerating(0.5, NONE).hasTolerance()).isTrue();
        assertThat(Limits.atLeast(1).hasTolerance()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "2, 1, 1, 2, the lower limit 2.0 must not lie above the upper limit 1.0",
        "NaN, 1, 0, 2, the lower limit NaN must not lie above the upper limit 1.0",
        "1, NaN, 0, 2, the lower limit 1.0 must not lie above the upper limit NaN",
        "1, 2, NaN, 2, 'what is tolerated, NaN to 2.0, must not be narrower than what is aimed for, 1.0 to 2.0'",
        "1, 2, 1.5, 2, 'what is tolerated, 1.5 to 2.0, must not be narrower than what is aimed for, 1.0 to 2.0'",
        "1, 2, 1, 1.5, 'what is tolerated, 1.0 to 1.5, must not be narrower than what is aimed for, 1.0 to 2.0'",
        "Infinity, Infinity, Infinity, Infinity, no value lies beyond infinity",
        "-Infinity, -Infinity, -Infinity, -Infinity, no value lies beyond infinity",
        "-Infinity, Infinity, -Infinity, Infinity, limits need a lower or an upper one",
    })
    void limits_that_make_no_sense_are_refused(double lower, double upper, double from, double to, String message) {
        assertThatThrownBy(() -> new Limits(lower, upper, from, to))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(message);
    }

    @Test
    void limits_are_made_of_amounts_of_one_kind() {
        Quantity length = Quantity.parse("1 mm");
        Quantity pressure = Quantity.parse("1 bar");
        assertThatThrownBy(() -> Limits.between(length, pressure))
                .hasMessage("limits cannot be made of a length and a pressure");
        assertThatThrownBy(() -> Limits.within(length, pressure))
                .hasMessage("limits cannot be made of a length and a pressure");
        assertThatThrownBy(() -> Limits.atMost(1e-3).tolerating(length, pressure))
                .hasMessage("limits cannot be made of a length and a pressure");
    }
}

package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: t(°C) = (t(°F) − 32)/1.8 and T = t + 273.15 K, exact (NIST SP 811, verified in a transcription). */
class TemperatureTest {
    @ParameterizedTest
    @CsvSource({"32, 0, 273.15", "68, 20, 293.15", "98.6, 37, 310.15", "-40, -40, 233.15", "212, 100, 373.15"})
    void the_scales_meet_at_their_known_points(String fahrenheit, String celsius, double kelvin) {
        Quantity f = Quantity.of(fahrenheit, Unit.parse("°F"));
        Quantity c = Quantity.of(celsius, Unit.parse("°C"));
        assertThat(f.in(Unit.parse("°C"))).isEqualTo(c);
        assertThat(c.in(Unit.parse("°F"))).isEqualTo(f);
        assertThat(f.sameAmountAs(c)).isTrue();
        assertThat(c.base()).isCloseTo(kelvin, within(1e-12));
        assertThat(f.base()).isCloseTo(kelvin, within(1e-12));
        assertThat(f.unit().toBase(f.value())).isCloseTo(kelvin, within(1e-12));
        assertThat(f.unit().fromBase(kelvin)).isCloseTo(f.value(), within(1e-12));
        assertThat(c.unit().fromBase(kelvin)).isCloseTo(c.value(), within(1e-12));
    }

    @Test
    void five_kelvins_are_nine_fahrenheit_degrees_of_difference() {
        assertThat(Quantity.parse("5 K").in(Unit.parse("deltaF"))).isEqualTo(Quantity.parse("9 Δ°F"));
    }

    @Test
    void a_temperature_is_not_a_difference() {
        assertThatThrownBy(() -> Quantity.parse("3 °C").in(Unit.parse("K")))
                .isInstanceOf(QuantityException.class)
                .hasMessage("3 °C is a temperature and cannot be given in K, a unit of temperature difference")
                .extracting(e -> ((QuantityException) e).remedy())
                .isEqualTo("choose a unit of temperature");
    }

    @Test
    void a_temperature_taken_as_a_difference_keeps_its_number() {
        assertThat(Quantity.parse("1 °C").asDifference()).isEqualTo(Quantity.parse("1 K"));
        assertThat(Quantity.parse("2 °F").asDifference()).isEqualTo(Quantity.parse("2 Δ°F"));
        assertThat(Quantity.parse("2 mm").asDifference()).isEqualTo(Quantity.parse("2 mm"));
    }

    @Test
    void nothing_is_colder_than_absolute_zero() {
        assertThat(Quantity.parse("-273.15 °C").base()).isZero();
        assertThat(Quantity.parse("-459.67 °F").base()).isZero();
        assertThatThrownBy(() -> Quantity.parse("-273.16 °C"))
                .hasMessage("-273.16 °C is colder than absolute zero")
                .extracting(e -> ((QuantityException) e).remedy())
                .isEqualTo("temperatures go from -273.15 °C up; write a difference in K or Δ°F");
    }

    @Test
    void a_head_less_a_room_is_a_difference_and_a_head_plus_a_room_is_nothing() {
        assertThat(Dimension.difference(Dimension.TEMPERATURE, Dimension.TEMPERATURE))
                .contains(Dimension.TEMPERATURE_DIFFERENCE);
        assertThat(Dimension.sum(Dimension.TEMPERATURE, Dimension.TEMPERATURE)).isEmpty();
        assertThat(Dimension.sum(Dimension.TEMPERATURE, Dimension.TEMPERATURE_DIFFERENCE))
                .contains(Dimension.TEMPERATURE);
        assertThat(Dimension.sum(Dimension.TEMPERATURE_DIFFERENCE, Dimension.TEMPERATURE))
                .contains(Dimension.TEMPERATURE);
        assertThat(Dimension.difference(Dimension.TEMPERATURE, Dimension.TEMPERATURE_DIFFERENCE))
                .contains(Dimension.TEMPERATURE);
        assertThat(Dimension.difference(Dimension.TEMPERATURE_DIFFERENCE, Dimension.TEMPERATURE))
                .isEmpty();
        assertThat(Dimension.sum(Dimension.TEMPERATURE, Dimension.LENGTH)).isEmpty();
        assertThat(Dimension.difference(Dimension.LENGTH, Dimension.TEMPERATURE))
                .isEmpty();
    }

    @Test
    void in_a_quotient_a_degree_is_an_interval() {
        Unit perFahrenheit = Unit.parse("per °F");
        assertThat(perFahrenheit.dimension()).isEqualTo(Dimension.THERMAL_EXPANSION);
        assertThat(Quantity.parse("1 per K").in(perFahrenheit).number()).isEqualTo("5/9");
        assertThat(Unit.parse("J/kg/°C").toBase(1)).isEqualTo(1);
    }

    @Test
    void aluminium_grows_as_much_per_kelvin_as_the_handbook_says_per_degree_fahrenheit() {
        // Callister, Fundamentals of Materials Science and Engineering, Table B.6: aluminium 6061, 23.6e-6 per K,
        // prints
        // 13.1e-6 per °F (verified in a copy).
        double perFahrenheit =
                Quantity.parse("23.6e-6 per K").in(Unit.parse("per °F")).value();
        assertThat(perFahrenheit).isCloseTo(13.1e-6, within(0.05e-6));
    }
}

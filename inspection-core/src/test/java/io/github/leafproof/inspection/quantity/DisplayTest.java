package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rounding as JCGM 100:2008 clause 7.2.6 advises (from memory): two digits of the uncertainty, and no more of the value. */
class DisplayTest {
    private static Estimate estimate(String value, String u) {
        Quantity amount = Quantity.parse(value);
        return Estimate.of(amount, Uncertainty.standard(Quantity.parse(u)), Source.stated("gauge"));
    }

    @ParameterizedTest
    @CsvSource({
        "0.05 mm, 0.001 mm, 0.0500 mm (u 0.0010 mm)",
        "0.11 mm, 0.00115 mm, 0.1100 mm (u 0.0012 mm)",
        "0.1234567 mm, 0.0996 mm, 0.12 mm (u 0.10 mm)",
        "0.1234567 mm, 0.0994 mm, 0.123 mm (u 0.099 mm)",
        "1234.5 mm, 250 mm, 1230 mm (u 250 mm)",
        "1235.5 mm, 25 mm, 1236 mm (u 25 mm)",
        "-0.00001 mm, 0.01 mm, 0.000 mm (u 0.010 mm)",
        "21.44 °C, 0.6 K, 21.44 °C (u 0.60 K)",
        "3 turns, 0.05 turns, 3.000 turns (u 0.050 turns)",
        "1 turn, 1 turn, 1.0 turns (u 1.0 turns)",
        "50 deg, 1.5 deg, 50.0 deg (u 1.5 deg)",
        "95 %, 1 %, 0.950 (u 0.010)",
        "9200 rpm, 120 rpm, 9200 rpm (u 120 rpm)",
        "0.45 mm per turn, 0.01 mm per turn, 0.450 mm per turn (u 0.010 mm per turn)",
        "12 min, 6 s, 12.00 min (u 0.10 min)",
        "11 h, 6 min, 11.00 h (u 0.10 h)",
        "30 d, 12 h, 30.00 d (u 0.50 d)",
        "12 s, 1 s, 12.0 s (u 1.0 s)"
    })
    void a_value_is_shown_to_the_second_digit_of_its_uncertainty(String value, String u, String shown) {
        assertThat(Display.withUncertainty(estimate(value, u), UnitSystem.METRIC))
                .isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({
        "0.05 mm, 0.001 mm, 1.969 thou (u 0.039 thou)",
        "25.4 mm, 0.0254 mm, 1.0000 in (u 0.0010 in)",
        "20 °C, 0.5 K, 68.00 °F (u 0.90 Δ°F)",
        "101.325 kPa, 1 kPa, 14.70 psi (u 0.15 psi)",
        "0.5 N·m, 0.01 N·m, 4.425 in·lbf (u 0.089 in·lbf)",
        "15 mL, 0.1 mL, 0.5072 floz (u 0.0034 floz)"
    })
    void a_reader_of_inches_is_shown_inches(String value, String u, String shown) {
        assertThat(Display.withUncertainty(estimate(value, u), UnitSystem.INCH)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({
        "0.03 mm, 0.03 mm",
        "2 thou, 0.0508 mm",
        "1/3 mm, 0.333333 mm",
        "21.4 °C, 21.4 °C",
        "1 turn, 1 turn",
        "0.25 turns, 90 deg",
        "1500 m, 1500000 mm",
        "1e20 m, 1E+23 mm",
        "7 per s, 7 per s"
    })
    void an_exact_value_is_shown_as_its_shortest_decimal(String value, String shown) {
        assertThat(Display.of(Estimate.exact(Quantity.parse(value)), UnitSystem.METRIC))
                .isEqualTo(shown);
        assertThat(Display.withUncertainty(Estimate.exact(Quantity.parse(value)), UnitSystem.METRIC))
                .isEqualTo(shown);
    }

    @Test
    void a_value_is_shown_in_the_unit_asked_for_and_in_no_other_kind_of_unit() {
        assertThat(Display.of(2.54e-5, Dimension.LENGTH, 0, Unit.parse("thou"))).isEqualTo("1 thou");
        assertThat(Display.of(2.54e-5, Dimension.LENGTH, 2.54e-7, Unit.parse("µm")))
                .isEqualTo("25.40 µm");
        assertThatThrownBy(() -> Display.of(1, Dimension.LENGTH, 0, Unit.parse("kPa")))
                .hasMessage("a length cannot be shown in kPa");
    }

    @Test
    void digits_that_no_double_holds_are_not_made_up() {
        assertThat(Display.of(1, Dimension.LENGTH, 1e-300, Unit.parse("m"))).isEqualTo("1.000000000000000 m");
        assertThat(Display.of(0, Dimension.LENGTH, 1e-300, Unit.parse("m"))).isEqualTo("0.000000000000000 m");
    }

    @ParameterizedTest
    @CsvSource({
        "1.25, 1, 1.2",
        "1.35, 1, 1.4",
        "-0.04, 1, 0.0",
        "9200, 0, 9200",
        "1e-7, 3, 0.000",
        "0.1, 3, 0.100",
        "123456789, 2, 123456789.00"
    })
    void a_number_is_shown_with_the_digits_asked_for(double value, int digits, String shown) {
        assertThat(Display.number(value, digits)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 100 %",
        "0, 0 %",
        "0.97, 97 %",
        "0.57, 57 %",
        "0.95, 95 %",
        "0.9496, 94 %",
        "0.0504, 6 %",
        "0.05, 5 %",
        "0.5, 50 %",
        "0.995, 99.5 %",
        "0.9959, 99.5 %",
        "0.9995, > 99.9 %",
        "0.9999999999, > 99.9 %",
        "0.0005, < 0.1 %",
        "1e-30, < 0.1 %",
        "0.0051, 0.6 %",
        "0.3, 30 %"
    })
    void a_probability_is_never_rounded_towards_certainty(double probability, String shown) {
        assertThat(Display.percent(probability)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"-0.1", "1.1", "NaN"})
    void a_probability_lies_from_zero_to_one(double probability) {
        assertThatThrownBy(() -> Display.percent(probability))
                .hasMessage("a probability lies from 0 to 1, not at " + probability);
    }

    @Test
    void every_dimension_with_a_name_is_shown_in_a_unit_of_its_own_kind() {
        for (String name : Dimension.names()) {
            Dimension dimension = Dimension.named(name).orElseThrow();
            for (UnitSystem system : UnitSystem.values()) {
                assertThat(system.unitFor(dimension, 1).dimension()).as(name).isEqualTo(dimension);
            }
        }
    }

    @Test
    void wear_is_shown_for_each_hour_and_what_moves_for_each_second() {
        // 0.02 mm in an hour is 5.56e-9 m/s.
        Estimate wear = Estimate.exact(0.02e-3 / 3600, Dimension.SPEED);
        assertThat(Display.of(wear, UnitSystem.METRIC)).isEqualTo("0.02 mm/h");
        assertThat(Display.of(wear, UnitSystem.INCH)).isEqualTo("0.787402 thou/h");
        assertThat(Display.of(Estimate.exact(-0.5, Dimension.SPEED), UnitSystem.METRIC))
                .isEqualTo("-0.5 m/s");
        assertThat(Display.of(Estimate.exact(0, Dimension.SPEED), UnitSystem.METRIC))
                .isEqualTo("0 m/s");
    }
}

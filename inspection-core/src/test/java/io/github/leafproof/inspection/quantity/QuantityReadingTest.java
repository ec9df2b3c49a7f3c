package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How people write quantities (common practice of the trade), and what they are told when it went wrong. */
class QuantityReadingTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.05 mm | 0.05 mm",
                "0.05mm | 0.05 mm",
                ".010 in | 0.01 in",
                "+2 thou | 2 thou",
                "2 mil | 2 thou",
                "9 200 rpm | 9200 rpm",
                "9\u00a0200 rpm | 9200 rpm",
                "1 234 567.890 12 mm | 1234567.89012 mm",
                "4.5 in·lbf | 4.5 in·lbf",
                "4.5 in*lbf | 4.5 in·lbf",
                "4.5 in lbf | 4.5 in·lbf",
                "21 degC | 21 °C",
                "-3 K | -3 K",
                "\u22123 K | -3 K",
                "- 3 K | -3 K",
                "3 turns | 3 turns",
                "1 turn | 1 turn",
                "1 1/2 turns | 1.5 turns",
                "-1 1/2 turns | -1.5 turns",
                "1/4 in | 0.25 in",
                "1/3 turn | 1/3 turns",
                "50° | 50 deg",
                "0.45 mm per turn | 0.45 mm per turn",
                "0.45 mm/turn | 0.45 mm per turn",
                "95 % | 95 %",
                "1.5e-3 m | 0.0015 m",
                "1.5E+3 m | 1500 m",
                "1e30 m | 1e30 m",
                "1e-30 m | 1e-30 m",
                "15 cc | 15 cm³",
                "15 cm3 | 15 cm³",
                "2 mm² | 2 mm²",
                "2 kg/m^3 | 2 kg/m³",
                "7 s⁻¹ | 7 per s",
                "10 um | 10 µm",
                "10 \u03bcm | 10 µm",
                "1.05 | 1.05",
                "0 mm | 0 mm",
                "-0 mm | 0 mm"
            })
    void a_quantity_is_read_as_it_is_written_in_the_shop(String written, String canonical) {
        Quantity quantity = Quantity.parse(written);
        assertThat(quantity).hasToString(canonical);
        assertThat(Quantity.parse(canonical)).isEqualTo(quantity).hasSameHashCodeAs(quantity);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | there is nothing here | write a number and a unit, such as 0.05 mm",
                "mm | \"mm\" does not start with a number | write a number and a unit, such as 0.05 mm",
                "0,05 mm | the comma in 0,05 could mean a decimal or thousands | write a dot for decimals and a blank for thousands: 0.05 mm, 9 200 rpm",
                "9,200 rpm | the comma in 9,200 could mean a decimal or thousands | write a dot for decimals and a blank for thousands: 0.05 mm, 9 200 rpm",
                "NaN mm | \"NaN mm\" is not an amount anybody can measure | write a number and a unit, such as 0.05 mm",
                "-Infinity K | \"-Infinity K\" is not an amount anybody can measure | write a number and a unit, such as 0.05 mm",
                "1e100 m | 1e100 is beyond what can be measured | numbers go from 1e-100 to just below 1e100",
                "1e-101 m | 1e-101 m is beyond what can be measured | numbers go from 1e-100 to just below 1e100",
                "1e999999999999 m | 1e999999999999 m is beyond what can be measured | numbers go from 1e-100 to just below 1e100",
                "3 4 mm | \"3 4 mm\" is not one number and a unit | write the number in one piece, thousands in groups of three: 9 200 rpm",
                "0.0.5 mm | \"0.0.5 mm\" is not one number and a unit | write the number in one piece, thousands in groups of three: 9 200 rpm",
                "1/0 in | 1/0 divides by zero | write a fraction such as 1/4",
                "5 MM | there is no unit \"MM\" | did you mean mm? Capital letters count in units",
                "5 kpa | there is no unit \"kpa\" | did you mean kPa? Capital letters count in units",
                "5 thuo | there is no unit \"thuo\" | did you mean thou?",
                "5 kg/mmm3 | there is no unit \"mmm\" in kg/mmm3 | did you mean mm?",
                "21 C | there is no unit \"C\" | write °C for a temperature, K for a difference",
                "40 in-lb | there is no unit \"in-lb\" | write in·lbf",
                "5 m^99 | the power in the unit m^99 is too high | no unit needs a power beyond 9",
                "5 W/m·K | the unit W/m·K can be read in two ways | after / or per give one unit at a time, such as J/kg/K",
                "5 mm/ | the unit mm/ ends where another unit should follow | write the unit after /",
            })
    void what_is_wrong_is_said_with_the_remedy(String written, String problem, String remedy) {
        QuantityException refused = catchThrowableOfType(QuantityException.class, () -> Quantity.parse(written));
        assertThat(refused).hasMessage(problem);
        assertThat(refused.remedy()).isEqualTo(remedy);
    }

    @Test
    void a_unit_nobody_could_have_meant_is_answered_with_how_units_look() {
        QuantityException refused = catchThrowableOfType(QuantityException.class, () -> Quantity.parse("5 qqqqqq"));
        assertThat(refused.remedy())
                .isEqualTo("units are written as mm, °C, bar, rpm, g or N·m, and products and quotients of these as mm"
                        + " per turn");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pressure | units of pressure are kPa, psi, Pa, hPa, MPa, bar, mbar, atm, at, torr, mmHg, inHg, mmH2O, inH2O",
                "torque | units of torque are N·m, in·lbf, J, kJ, Btu",
                "density | units of density are kg/m³, lb/ft³",
                "temperature | units of temperature are °C, °F",
                "ratio | units of ratio are %, ppm",
            })
    void where_it_is_known_what_is_counted_the_units_for_that_are_told(String dimension, String remedy) {
        Dimension wanted = Dimension.named(dimension).orElseThrow();
        QuantityException refused = catchThrowableOfType(QuantityException.class, () -> Unit.parse("qqqqqq", wanted));
        assertThat(refused).hasMessage("there is no unit \"qqqqqq\"");
        assertThat(refused.remedy()).isEqualTo(remedy);
    }

    @Test
    void where_a_spelling_is_a_known_slip_or_nearly_right_no_list_is_needed() {
        assertThat(catchThrowableOfType(QuantityException.class, () -> Unit.parse("Nm", Dimension.TORQUE))
                        .remedy())
                .isEqualTo("write N·m");
        assertThat(catchThrowableOfType(QuantityException.class, () -> Unit.parse("MM", Dimension.LENGTH))
                        .remedy())
                .isEqualTo("did you mean mm? Capital letters count in units");
        assertThat(Unit.parse("bar", Dimension.LENGTH)).isEqualTo(Unit.parse("bar"));
        assertThat(Unit.meant("Nm")).contains("N·m");
        assertThat(Unit.meant("mm")).isEmpty();
        assertThat(Unit.meant("qqqqqq")).isEmpty();
    }

    @Test
    void endless_text_is_refused_at_once() {
        assertThatThrownBy(() -> Quantity.parse("1".repeat(201)))
                .hasMessage("a quantity of 201 characters is too long to be one");
        assertThatThrownBy(() -> Unit.parse("m·".repeat(40) + "m"))
                .hasMessage("a unit of 81 characters is too long to be one");
        assertThat(Quantity.parse("1".repeat(99)).value()).isCloseTo(1.111e98, within(1e95));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e100, -1e100, 1e-101})
    void a_number_that_cannot_be_measured_is_refused(double number) {
        assertThatThrownBy(() -> Quantity.of(number, Unit.parse("mm"))).isInstanceOf(QuantityException.class);
    }

    @Test
    void an_amount_too_large_for_a_number_is_refused_whatever_its_unit() {
        assertThatThrownBy(() -> Quantity.of(9e99, Unit.parse("km^9·mi^9·km^9·km^9·km^9·km^9·km^9·km^9·km^9")))
                .isInstanceOf(QuantityException.class)
                .hasMessageEndingWith("is beyond what can be measured");
    }

    @Test
    void a_double_stands_for_its_shortest_decimal() {
        assertThat(Quantity.of(0.1, Unit.parse("mm"))).isEqualTo(Quantity.parse("0.1 mm"));
        assertThat(Quantity.of(7, Unit.parse("mm"))).isEqualTo(Quantity.parse("7 mm"));
        assertThat(Quantity.of("9 200", Unit.parse("rpm"))).isEqualTo(Quantity.parse("9200 rpm"));
    }

    @Test
    void a_bare_number_has_no_unit_in_it() {
        QuantityException refused =
                catchThrowableOfType(QuantityException.class, () -> Quantity.of("5 mm", Unit.parse("mm")));
        assertThat(refused).hasMessage("\"5 mm\" is not a bare number");
        assertThat(refused.remedy()).isEqualTo("give the number alone, such as 0.05");
    }

    @Test
    void an_amount_cannot_be_given_in_the_unit_of_something_else() {
        assertThatThrownBy(() -> Quantity.parse("0.05 mm").in(Unit.parse("kPa")))
                .hasMessage("0.05 mm is a length and cannot be given in kPa, a unit of pressure");
        assertThatThrownBy(() -> Quantity.parse("3 turns").in(Unit.ONE))
                .hasMessage("3 turns is an angle and cannot be given in plain numbers, a unit of ratio");
    }

    @Test
    void as_much_is_as_much_in_any_unit_but_equal_only_in_the_same() {
        Quantity inch = Quantity.parse("1 in");
        assertThat(inch.sameAmountAs(Quantity.parse("25.4 mm"))).isTrue();
        assertThat(inch.sameAmountAs(Quantity.parse("25.41 mm"))).isFalse();
        assertThat(inch.sameAmountAs(Quantity.parse("1 kPa"))).isFalse();
        assertThat(inch).isNotEqualTo(Quantity.parse("25.4 mm")).isNotEqualTo("1 in");
        assertThat(Quantity.parse("1 N·m").sameAmountAs(Quantity.parse("1 J"))).isTrue();
        assertThat(Quantity.parse("360 deg").in(Unit.parse("turn"))).isEqualTo(Quantity.parse("1 turn"));
        assertThat(Quantity.parse("1 rad").in(Unit.parse("deg"))).hasToString("180·π^-1 deg");
    }
}

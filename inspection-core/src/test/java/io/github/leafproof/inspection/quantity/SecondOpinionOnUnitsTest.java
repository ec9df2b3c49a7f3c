package io.github.leafproof.inspection.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.HECTO;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.unit.Units;

/**
 * The same conversions by an independent library of units (tech.units:indriya, the reference implementation of JSR 385).
 *
 * <p>It brings the SI and its prefixes; the units of the inch system are built here from their definitions by its own
 * arithmetic. It converts by way of decimals and doubles and so is not exact, least of all where π is involved; the two
 * are therefore compared at 1e-12 of the amount.
 */
class SecondOpinionOnUnitsTest {
    private static final double CLOSE = 1e-12;

    private static final Map<String, Unit<?>> THEIRS = new LinkedHashMap<>();

    static {
        Unit<?> inch = CENTI(Units.METRE).multiply(ratio(254, 100));
        Unit<?> foot = inch.multiply(12);
        Unit<?> pound = Units.KILOGRAM.multiply(ratio(45359237, 100000000));
        Unit<?> gravity = Units.METRE_PER_SQUARE_SECOND.multiply(ratio(980665, 100000));
        Unit<?> poundForce = pound.multiply(gravity);
        Unit<?> turn = Units.RADIAN.transform(MultiplyConverter.ofPiExponent(1)).multiply(2);
        Unit<?> pascal = Units.PASCAL;
        THEIRS.put("km", KILO(Units.METRE));
        THEIRS.put("cm", CENTI(Units.METRE));
        THEIRS.put("mm", MILLI(Units.METRE));
        THEIRS.put("µm", MICRO(Units.METRE));
        THEIRS.put("in", inch);
        THEIRS.put("thou", inch.divide(1000));
        THEIRS.put("ft", foot);
        THEIRS.put("yd", foot.multiply(3));
        THEIRS.put("mi", foot.multiply(5280));
        THEIRS.put("mm²", MILLI(Units.METRE).pow(2));
        THEIRS.put("in³", inch.pow(3));
        THEIRS.put("mL", MILLI(Units.LITRE));
        THEIRS.put("gal", inch.pow(3).multiply(231));
        THEIRS.put("floz", inch.pow(3).multiply(231).divide(128));
        THEIRS.put("g", Units.GRAM);
        THEIRS.put("lb", pound);
        THEIRS.put("oz", pound.divide(16));
        THEIRS.put("gr", pound.divide(7000));
        THEIRS.put("ms", MILLI(Units.SECOND));
        THEIRS.put("min", Units.MINUTE);
        THEIRS.put("h", Units.HOUR);
        THEIRS.put("d", Units.DAY);
        THEIRS.put("N", Units.NEWTON);
        THEIRS.put("lbf", poundForce);
        THEIRS.put("kgf", Units.KILOGRAM.multiply(gravity));
        THEIRS.put("in·lbf", inch.multiply(poundForce));
        THEIRS.put("ft·lbf", foot.multiply(poundForce));
        THEIRS.put("kPa", KILO(Units.PASCAL));
        THEIRS.put("hPa", HECTO(Units.PASCAL));
        THEIRS.put("MPa", MEGA(Units.PASCAL));
        THEIRS.put("bar", pascal.multiply(100_000));
        THEIRS.put("atm", pascal.multiply(101_325));
        THEIRS.put("torr", pascal.multiply(101_325).divide(760));
        THEIRS.put("psi", poundForce.divide(inch.pow(2)));
        THEIRS.put("kJ", KILO(Units.JOULE));
        THEIRS.put("kW", KILO(Units.WATT));
        THEIRS.put("hp", foot.multiply(poundForce).multiply(550).divide(Units.SECOND));
        THEIRS.put("km/h", Units.KILOMETRE_PER_HOUR);
        THEIRS.put("mph", foot.multiply(5280).divide(Units.HOUR));
        THEIRS.put("lb/ft³", pound.divide(foot.pow(3)));
        THEIRS.put("turn", turn);
        THEIRS.put("deg", turn.divide(360));
        THEIRS.put("rpm", turn.divide(Units.MINUTE));
        THEIRS.put("mm per turn", MILLI(Units.METRE).divide(turn));
        THEIRS.put("%", Units.PERCENT);
        THEIRS.put("°C", Units.CELSIUS);
    }

    private static RationalNumber ratio(long over, long under) {
        return RationalNumber.of(BigInteger.valueOf(over), BigInteger.valueOf(under));
    }

    static Stream<Arguments> conversions() {
        return THEIRS.entrySet().stream().map(entry -> Arguments.of(entry.getKey(), entry.getValue()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("conversions")
    void both_libraries_make_the_same_amount_of_a_number(String symbol, Unit<?> theirs)
            throws IncommensurableException {
        for (double number : new double[] {1, 0.05, 9200, -7.25, 1e-6, 123456.789}) {
            double expected = theirs.getConverterToAny(theirs.getSystemUnit()).convert(number);
            io.github.leafproof.inspection.quantity.Unit ours =
                    io.github.leafproof.inspection.quantity.Unit.parse(symbol);
            assertThat(ours.toBase(number))
                    .as("%s %s", number, symbol)
                    .isCloseTo(expected, within(CLOSE * Math.abs(expected)));
        }
    }

    @Test
    void the_second_opinion_covers_most_of_the_table() {
        assertThat(THEIRS).hasSizeGreaterThan(40);
    }
}

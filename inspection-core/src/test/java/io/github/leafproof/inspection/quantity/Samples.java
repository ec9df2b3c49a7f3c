package io.github.leafproof.inspection.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;

/** Quantities, units, dimensions and estimates of every kind, for laws that hold for all of them. */
class Samples extends DomainContextBase {
    private static final List<String> MADE_OF_OTHERS = List.of(
            "in·lbf",
            "mm per turn",
            "thou per turn",
            "kg/m³",
            "lb/ft³",
            "deg/s",
            "per °F",
            "cm³/min",
            "J/kg/K",
            "mm²",
            "in³",
            "");

    @Provide
    Arbitrary<Unit> units() {
        return Arbitraries.oneOf(
                Arbitraries.of(UnitTable.symbols()).map(Unit::parse),
                Arbitraries.of(MADE_OF_OTHERS).map(Unit::parse));
    }

    @Provide
    Arbitrary<Quantity> quantities() {
        Arbitrary<BigDecimal> numbers = Combinators.combine(
                        Arbitraries.bigIntegers().between(BigInteger.TEN.pow(17).negate(), BigInteger.TEN.pow(17)),
                        Arbitraries.integers().between(-30, 30))
                .as((digits, scale) -> new BigDecimal(digits, scale));
        return Combinators.combine(numbers, units())
                .as((number, unit) ->
                        Quantity.of((unit.dimension().isAbsolute() ? number.abs() : number).toString(), unit));
    }

    @Provide
    Arbitrary<Dimension> dimensions() {
        return Arbitraries.integers()
                .between(-3, 3)
                .list()
                .ofSize(5)
                .map(powers -> Dimension.RATIO
                        .times(Dimension.LENGTH.power(powers.get(0)))
                        .times(Dimension.MASS.power(powers.get(1)))
                        .times(Dimension.TIME.power(powers.get(2)))
                        .times(Dimension.TEMPERATURE_DIFFERENCE.power(powers.get(3)))
                        .times(Dimension.ANGLE.power(powers.get(4))));
    }

    /** Lengths of some millimetres, each with up to four sources of four that all may share. */
    @Provide
    Arbitrary<Estimate> estimates() {
        Arbitrary<Double> shares = Arbitraries.doubles().between(-1, 1).ofScale(3);
        return Combinators.combine(
                        Arbitraries.doubles().between(-10, 10).ofScale(3),
                        shares.list().ofSize(4))
                .as(Samples::estimate);
    }

    private static Estimate estimate(double value, List<Double> shares) {
        Estimate estimate = Estimate.exact(value, Dimension.LENGTH);
        for (int i = 0; i < shares.size(); i++) {
            Source source = new Source("source " + i, i == 0 ? Double.POSITIVE_INFINITY : 3.0 * i);
            Estimate error = Estimate.of(0, Dimension.LENGTH, 1, source);
            estimate = estimate.plus(error.scaledBy(shares.get(i)));
        }
        return estimate;
    }
}

package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.Tuple.Tuple2;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Numbers are computed with as two longs while they fit; commons-numbers' fractions of any length must agree, always. */
class ExactLawsTest {

    @Provide
    static Arbitrary<Tuple2<Exact, BigFraction>> numbers() {
        Arbitrary<Long> parts = Arbitraries.oneOf(
                Arbitraries.longs().between(-10_000, 10_000),
                Arbitraries.longs(),
                Arbitraries.of(
                        Long.MIN_VALUE, Long.MAX_VALUE, 1L << 53, (1L << 53) + 1, -1L, 1_000_000_000_000_000_000L));
        return parts.flatMap(over -> parts.filter(under -> under != 0)
                .map(under -> Tuple.of(
                        Exact.of(BigInteger.valueOf(over), BigInteger.valueOf(under)),
                        BigFraction.of(BigInteger.valueOf(over), BigInteger.valueOf(under)))));
    }

    @Property
    void reckons_as_fractions_of_any_length_do(
            @ForAll("numbers") Tuple2<Exact, BigFraction> a, @ForAll("numbers") Tuple2<Exact, BigFraction> b) {
        same(a.get1().times(b.get1()), a.get2().multiply(b.get2()));
        same(a.get1().plus(b.get1()), a.get2().add(b.get2()));
        same(a.get1().minus(b.get1()), a.get2().subtract(b.get2()));
        same(a.get1().negated(), a.get2().negate());
        assertThat(a.get1().equals(b.get1())).isEqualTo(a.get2().equals(b.get2()));
        Assume.that(!b.get1().isZero());
        same(a.get1().over(b.get1()), a.get2().divide(b.get2()));
    }

    @Property
    void comes_back_to_where_it_was_in_two_steps(
            @ForAll("numbers") Tuple2<Exact, BigFraction> a, @ForAll("numbers") Tuple2<Exact, BigFraction> b) {
        Assume.that(!b.get1().isZero());
        Exact there = a.get1().times(b.get1()).over(b.get1());
        assertThat(there).isEqualTo(a.get1()).hasSameHashCodeAs(a.get1());
        assertThat(there.text()).isEqualTo(a.get1().text());
    }

    private static void same(Exact found, BigFraction expected) {
        Exact other = Exact.of(expected.getNumerator(), expected.getDenominator());
        assertThat(found).isEqualTo(other).hasSameHashCodeAs(other);
        assertThat(found.toDouble()).isEqualTo(expected.doubleValue());
        assertThat(found.isNegative()).isEqualTo(expected.signum() < 0);
        assertThat(found.isZero()).isEqualTo(expected.signum() == 0);
    }

    @Test
    void is_no_less_exact_beyond_two_longs() {
        Exact googol = Exact.of(BigInteger.TEN.pow(100), BigInteger.ONE);
        Exact third = Exact.of(BigInteger.ONE, BigInteger.valueOf(3));
        assertThat(googol.times(third).over(googol)).isEqualTo(third);
        assertThat(googol).isNotEqualTo(third);
    }
}

package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.Domain;

/** Laws that hold for every quantity, whatever its number and unit. */
@Domain(Samples.class)
class QuantityLawsTest {
    @Property(seed = "1")
    void converting_there_and_back_loses_nothing(@ForAll Quantity quantity, @ForAll Unit other) {
        Unit target = quantity.dimension().equals(other.dimension()) ? other : Unit.coherent(quantity.dimension());
        Quantity there = quantity.in(target);
        assertThat(there.sameAmountAs(quantity)).isTrue();
        assertThat(there.in(quantity.unit())).isEqualTo(quantity);
    }

    @Property(seed = "1")
    void what_is_printed_is_read_back_as_equal(@ForAll Quantity quantity, @ForAll Unit other) {
        assertThat(Quantity.parse(quantity.toString())).isEqualTo(quantity);
        Unit target = quantity.dimension().equals(other.dimension()) ? other : Unit.coherent(quantity.dimension());
        Quantity converted = quantity.in(target);
        assertThat(Quantity.parse(converted.toString())).isEqualTo(converted);
    }

    @Property(tries = 5000, seed = "1")
    void whatever_is_typed_gives_a_quantity_or_a_remedy(@ForAll("scribbles") String text) {
        try {
            assertThat(Quantity.parse(Quantity.parse(text).toString())).isEqualTo(Quantity.parse(text));
        } catch (QuantityException refused) {
            assertThat(refused.getMessage()).isNotBlank();
            assertThat(refused.remedy()).isNotBlank();
        }
    }

    @Provide
    Arbitrary<String> scribbles() {
        Arbitrary<String> pieces = Arbitraries.of(
                "0",
                "1",
                "25",
                "400",
                ".",
                ",",
                "-",
                "+",
                " ",
                "/",
                "^",
                "e",
                "E9",
                "e-99",
                "\u00a0",
                "°",
                "·",
                "·10^-9",
                "·π^2",
                "mm",
                "in",
                "lbf",
                "per ",
                "turn",
                "K",
                "°C",
                "%",
                "²",
                "⁻¹",
                "(",
                "Infinity",
                "NaN",
                "\u0130",
                "x");
        return pieces.list().ofMaxSize(12).map(list -> String.join("", list));
    }

    @Property(seed = "1")
    void a_unit_is_read_back_as_it_is_written(@ForAll Unit a, @ForAll Unit b) {
        for (Unit unit : new Unit[] {a, a.times(b), a.dividedBy(b), a.power(2), a.power(-1), a.power(0)}) {
            assertThat(Unit.parse(unit.symbol())).isEqualTo(unit).hasSameHashCodeAs(unit);
            assertThat(Unit.parse(unit.symbol()).factor()).isEqualTo(unit.factor());
            assertThat(Unit.parse(unit.symbol()).dimension()).isEqualTo(unit.dimension());
        }
    }

    @Property(seed = "1")
    void the_exact_amount_and_the_one_in_doubles_agree(@ForAll Quantity quantity) {
        double base = quantity.base();
        double slack = 1e-14 * Math.max(Math.abs(base), quantity.dimension().isAbsolute() ? 300 : 0);
        assertThat(quantity.unit().toBase(quantity.value())).isCloseTo(base, within(slack));
    }
}

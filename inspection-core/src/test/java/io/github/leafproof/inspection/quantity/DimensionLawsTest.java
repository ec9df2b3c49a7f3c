package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** Dimensions multiply like powers of numbers: the laws of a commutative group. */
@Domain(Samples.class)
@Domain(DomainContext.Global.class)
class DimensionLawsTest {
    @Property(seed = "1")
    void the_order_of_a_product_does_not_matter(@ForAll Dimension a, @ForAll Dimension b, @ForAll Dimension c) {
        assertThat(a.times(b)).isEqualTo(b.times(a)).hasSameHashCodeAs(b.times(a));
        assertThat(a.times(b).times(c)).isEqualTo(a.times(b.times(c)));
    }

    @Property(seed = "1")
    void dividing_undoes_multiplying(@ForAll Dimension a, @ForAll Dimension b) {
        assertThat(a.times(b).dividedBy(b)).isEqualTo(a);
        assertThat(a.dividedBy(a).isRatio()).isTrue();
        assertThat(a.times(a.power(-1))).isEqualTo(Dimension.RATIO);
    }

    @Property(seed = "1")
    void a_root_undoes_a_power(@ForAll Dimension a, @ForAll @IntRange(min = 1, max = 4) int n) {
        Dimension product = Dimension.RATIO;
        for (int i = 0; i < n; i++) {
            product = product.times(a);
        }
        assertThat(a.power(n)).isEqualTo(product);
        assertThat(product.root(n)).contains(a);
    }

    @Property(seed = "1")
    void a_coherent_unit_counts_its_dimension_one_for_one(@ForAll Dimension a) {
        Unit unit = Unit.coherent(a);
        assertThat(unit.dimension()).isEqualTo(a);
        assertThat(unit.toBase(1)).isEqualTo(1);
    }

    @Property(seed = "1")
    void only_like_amounts_are_added(@ForAll Dimension a, @ForAll Dimension b) {
        assertThat(Dimension.sum(a, b).isPresent()).isEqualTo(a.equals(b));
        assertThat(Dimension.difference(a, b).isPresent()).isEqualTo(a.equals(b));
    }

    @Example
    void a_name_leads_back_to_its_dimension() {
        for (String name : Dimension.names()) {
            Dimension dimension = Dimension.named(name).orElseThrow();
            assertThat(Dimension.named(dimension.words())).as(name).contains(dimension);
            assertThat(dimension).hasToString(dimension.words());
        }
        assertThat(Dimension.named("ENERGY")).contains(Dimension.TORQUE);
        assertThat(Dimension.named("colour")).isEmpty();
    }

    @Example
    void the_names_stand_for_what_the_laws_of_mechanics_say() {
        assertThat(Dimension.MASS.times(Dimension.ACCELERATION)).isEqualTo(Dimension.FORCE);
        assertThat(Dimension.FORCE.times(Dimension.LENGTH)).isEqualTo(Dimension.TORQUE);
        assertThat(Dimension.FORCE.dividedBy(Dimension.AREA)).isEqualTo(Dimension.PRESSURE);
        assertThat(Dimension.FORCE.times(Dimension.SPEED)).isEqualTo(Dimension.POWER);
        assertThat(Dimension.MASS.dividedBy(Dimension.VOLUME)).isEqualTo(Dimension.DENSITY);
        assertThat(Dimension.LENGTH.dividedBy(Dimension.ANGLE)).isEqualTo(Dimension.LENGTH_PER_TURN);
        assertThat(Dimension.ANGLE.dividedBy(Dimension.TIME)).isEqualTo(Dimension.ROTATIONAL_SPEED);
        assertThat(Dimension.VOLUME.dividedBy(Dimension.TIME)).isEqualTo(Dimension.VOLUME_FLOW);
        assertThat(Dimension.MASS.dividedBy(Dimension.TIME)).isEqualTo(Dimension.MASS_FLOW);
        assertThat(Dimension.TORQUE.dividedBy(Dimension.MASS)).isEqualTo(Dimension.SPECIFIC_ENERGY);
    }

    @Example
    void a_dimension_without_a_name_is_spelled_out() {
        Dimension volumeTimesAreaPerTime = Dimension.LENGTH.power(5).dividedBy(Dimension.TIME);
        assertThat(volumeTimesAreaPerTime.words()).isEqualTo("length⁵ per time");
        assertThat(volumeTimesAreaPerTime.phrase()).isEqualTo("a length⁵ per time");
        assertThat(Dimension.TIME.power(-1).phrase()).isEqualTo("an amount per time");
        assertThat(Dimension.ANGLE.phrase()).isEqualTo("an angle");
        assertThat(Dimension.MASS
                        .times(Dimension.LENGTH)
                        .dividedBy(Dimension.TIME.power(3))
                        .words())
                .isEqualTo("length × mass per time³");
        assertThat(Dimension.ANGLE.power(-10).words()).isEqualTo("per angle¹⁰");
    }

    @Example
    void in_a_product_a_temperature_is_no_longer_absolute() {
        assertThat(Dimension.TEMPERATURE.isAbsolute()).isTrue();
        assertThat(Dimension.TEMPERATURE.times(Dimension.RATIO)).isEqualTo(Dimension.TEMPERATURE_DIFFERENCE);
        assertThat(Dimension.TEMPERATURE.difference()).isEqualTo(Dimension.TEMPERATURE_DIFFERENCE);
        assertThat(Dimension.LENGTH.difference()).isEqualTo(Dimension.LENGTH);
        assertThat(Unit.coherent(Dimension.TEMPERATURE)).isEqualTo(Unit.parse("°C"));
    }

    @Example
    void a_length_has_no_square_root() {
        assertThat(Dimension.LENGTH.root(2)).isEmpty();
        assertThatThrownBy(() -> Dimension.LENGTH.root(0)).hasMessage("a root has a degree of one or more, not 0");
    }
}

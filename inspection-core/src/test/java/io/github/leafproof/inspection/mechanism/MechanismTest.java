package io.github.leafproof.inspection.mechanism;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Distribution;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.MonteCarlo;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.QuantityException;
import io.github.leafproof.inspection.quantity.Source;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every calculation. */
class MechanismTest {
    private static final double SHARE = 0.0005;

    static List<Mechanism> all() {
        return Mechanisms.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void a_calculation_says_what_it_tells_takes_and_rests_on(Mechanism mechanism) {
        assertThat(mechanism.name()).matches("[a-z]+(_[a-z]+)*");
        assertThat(mechanism.meaning()).isNotBlank().doesNotEndWith(".");
        assertThat(mechanism.source()).isNotBlank();
        assertThat(mechanism.formula()).isNotBlank();
        assertThat(mechanism.inputs()).isNotEmpty().doesNotHaveDuplicates();
        assertThat(mechanism.inputs()).allSatisfy(input -> {
            assertThat(input.name()).matches("[a-z]+(_[a-z]+)*");
            assertThat(input.meaning()).isNotBlank();
            assertThat(input.because()).isNotBlank().doesNotEndWith(".");
        });
        assertThat(mechanism.inputs()).extracting(Input::name).doesNotHaveDuplicates();
        assertThat(mechanism).hasToString(mechanism.name());
    }

    @ParameterizedTest
    @MethodSource("all")
    void its_example_has_an_answer_in_the_unit_people_speak_of(Mechanism mechanism) {
        Estimate answer = mechanism.of(exact(mechanism)).known();

        assertThat(answer.dimension()).isEqualTo(mechanism.unit().dimension());
        assertThat(answer.isExact()).isTrue();
    }

    /** JCGM 101 clause 8: first order is good enough where inputs are known to 0.05 % and the formula is not at a bend. */
    @ParameterizedTest
    @MethodSource("all")
    void its_uncertainty_is_what_trials_by_chance_scatter(Mechanism mechanism) {
        List<Estimate> inputs = uncertain(mechanism);
        double u = mechanism.of(inputs).known().standardUncertainty();
        Distribution trials = MonteCarlo.propagate(
                trial -> mechanism
                        .of(inputs.stream().map(trial::settled).toList())
                        .known()
                        .value(),
                u,
                40_000);

        assertThat(u).isCloseTo(trials.standardUncertainty(), within(0.03 * trials.standardUncertainty()));
    }

    private static List<Estimate> exact(Mechanism mechanism) {
        return mechanism.example().stream().map(Estimate::exact).toList();
    }

    /** Each input off by a share of itself, as an instrument is; a grade, or one at the end of its range, is exact. */
    private static List<Estimate> uncertain(Mechanism mechanism) {
        List<Estimate> inputs = new ArrayList<>();
        for (int i = 0; i < mechanism.inputs().size(); i++) {
            Input input = mechanism.inputs().get(i);
            Quantity at = mechanism.example().get(i);
            double u = SHARE * Math.abs(at.base());
            boolean inside = !input.name().equals("grade")
                    && at.base() - 6 * u > input.low().base()
                    && at.base() + 6 * u < input.high().base();
            inputs.add(Estimate.of(at.base(), at.dimension(), inside ? u : 0, Source.stated(input.name())));
        }
        return inputs;
    }

    @Test
    void what_two_inputs_share_is_counted_once() {
        Source ruler = Source.stated("the ruler");
        Estimate one = Estimate.of(0.02, Dimension.LENGTH, 0.0001, ruler);
        Estimate two = Estimate.of(0.02, Dimension.LENGTH, 0.0001, ruler);

        Estimate bent = Estimate.through(x -> x[0] - x[1], Dimension.LENGTH, List.of(one, two));

        assertThat(bent.standardUncertainty()).isZero();
    }

    @Test
    void where_a_formula_ends_on_one_side_the_other_side_tells_the_uncertainty() {
        Estimate none = Estimate.of(0, Dimension.RATIO, 0.01, Source.stated("a reading"));

        Estimate root = Estimate.through(x -> Math.sqrt(x[0]), Dimension.RATIO, List.of(none));

        assertThat(root.standardUncertainty()).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void a_formula_narrower_than_the_uncertainty_is_tried_in_smaller_steps() {
        Estimate wide = Estimate.of(0.5, Dimension.RATIO, 10, Source.stated("a guess"));

        Estimate angle = Estimate.through(x -> Math.asin(x[0]), Dimension.RATIO, List.of(wide));

        assertThat(angle.standardUncertainty()).isBetween(10.0, 15.0);
    }

    @Test
    void a_slope_of_exactly_nothing_stays_nothing() {
        Estimate top = Estimate.of(0, Dimension.ANGLE, 0.01, Source.stated("the wheel"));

        assertThat(Estimate.through(x -> Math.cos(x[0]), Dimension.RATIO, List.of(top))
                        .isExact())
                .isTrue();
    }

    @Test
    void an_uncertainty_without_bound_is_no_estimate() {
        Estimate edge = Estimate.of(1, Dimension.RATIO, 0.1, Source.stated("a reading"));

        assertThatThrownBy(() -> Estimate.through(x -> x[0] == 1 ? 1 : Double.NaN, Dimension.RATIO, List.of(edge)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a reading");
    }

    @Test
    void an_amount_of_the_wrong_kind_is_a_mistake_of_the_program() {
        Estimate warm = Estimate.exact(Quantity.parse("20 °C"));

        assertThatThrownBy(() -> Cylinder.DISPLACEMENT_OF.of(warm, warm))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("displacement_of takes [length, length], not [temperature, temperature]");
        assertThatThrownBy(() -> Cylinder.DISPLACEMENT_OF.of(warm)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_range_goes_upward_and_is_of_one_kind() {
        assertThatThrownBy(() -> Input.of("x", "x", "2 mm", "1 mm", "x")).isInstanceOf(QuantityException.class);
        assertThatThrownBy(() -> Input.of("x", "x", "1 mm", "2 °C", "x")).isInstanceOf(QuantityException.class);
    }

    @Test
    void a_formula_without_an_answer_says_so() {
        Mechanism odd = Mechanism.called("odd", "nothing")
                .takes(Input.of("x", "x", "-1", "1", "x"))
                .gives("", "√x", x -> Math.sqrt(x[0]));

        Answer answer = odd.of(Estimate.exact(Quantity.parse("-1")));

        assertThat(answer).isEqualTo(new Answer.Refusal("odd", "", "the formula has no answer for these amounts"));
        assertThatThrownBy(answer::known).hasMessage("the formula has no answer for these amounts");
    }

    @Test
    void no_two_calculations_have_one_name() {
        assertThat(Mechanisms.all()).extracting(Mechanism::name).doesNotHaveDuplicates();
        assertThat(Mechanisms.named("piston_travel")).contains(CrankSlider.PISTON_TRAVEL);
        assertThat(Mechanisms.named("perpetual_motion")).isEmpty();
    }

    @Test
    void every_calculation_is_found_by_its_name_and_names_stand_in_their_order() {
        assertThat(Mechanisms.names())
                .containsExactlyElementsOf(
                        Mechanisms.all().stream().map(Mechanism::name).toList());
        assertThat(Mechanisms.all())
                .allSatisfy(mechanism ->
                        assertThat(Mechanisms.named(mechanism.name())).containsSame(mechanism));
    }
}

package io.github.leafproof.dsl.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.dsl.formula.Account;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Lettering;
import io.github.leafproof.dsl.html.Part;
import io.github.leafproof.dsl.html.Words;
import io.github.leafproof.inspection.clearance.FeelTrial;
import io.github.leafproof.inspection.clearance.GapEvidence;
import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.gauge.LeafSet;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Source;
import io.github.leafproof.inspection.quantity.Uncertainty;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether the pictures show what was measured: lengths and areas on them are held to the numbers they stand for. */
class FigureTest {

    private static final double MM = 1e-3;

    private record Named(String words) implements Formula {
        @Override
        public Value value(Frame frame) {
            return Value.Judged.YES;
        }

        @Override
        public List<Formula> parts() {
            return List.of();
        }
    }

    private static LimitsHeld.Window limits(@Nullable Double lower, @Nullable Double upper) {
        Estimate from = lower == null ? null : Estimate.exact(lower, Dimension.LENGTH);
        Estimate to = upper == null ? null : Estimate.exact(upper, Dimension.LENGTH);
        return new LimitsHeld.Window(from, to, from, to);
    }

    private static Account.Held held(Value value, LimitsHeld.Window limits, Outcome outcome) {
        return new Account.Held(
                new Named("width"), value, limits, new Value.Judged(outcome, Conformity.unknown(), Side.NONE));
    }

    private static Element reading(double y, double u, double freedom, LimitsHeld.Window limits) {
        Estimate reading = Estimate.of(y, Dimension.LENGTH, u, new Source("rule", freedom));
        return ReadingFigure.of(held(Value.Amount.of(reading), limits, Outcome.OPEN), UnitSystem.METRIC, "Width", "f");
    }

    private static LeafSet leaves() {
        return new LeafSet("leaves", List.of(leaf("1 mm", "1 mm")), Quantity.parse("0 mm"), Quantity.parse("0 mm"));
    }

    private static Leaf leaf(String marked, String measured) {
        return Leaf.measured(
                "leaves",
                Quantity.parse(marked),
                Quantity.parse(measured),
                Uncertainty.standard(Quantity.parse("0.001 mm")));
    }

    private static Account.Held gap(LimitsHeld.Window limits, Outcome outcome, FeelTrial... trials) {
        return held(new Value.Felt("lash", new GapEvidence(List.of(trials)), leaves()), limits, outcome);
    }

    private static FeelTrial trial(Leaf leaf, TrialResult result) {
        return new FeelTrial(leaf, result, 0);
    }

    private static Stream<Element> all(Part part) {
        return part instanceof Element element
                ? Stream.concat(Stream.of(element), element.parts().stream().flatMap(FigureTest::all))
                : Stream.of();
    }

    private static List<Element> styled(Element figure, String style) {
        return all(figure)
                .filter(each -> style.equals(each.attributes().get("class")))
                .toList();
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(Objects.requireNonNull(element.attributes().get(attribute)));
    }

    private static List<double[]> points(Element path) {
        List<double[]> points = new ArrayList<>();
        for (String point : Objects.requireNonNull(path.attributes().get("d")).split("[MLZ]", -1)) {
            if (!point.isBlank()) {
                String[] xy = point.split(" ", -1);
                points.add(new double[] {Double.parseDouble(xy[0]), Double.parseDouble(xy[1])});
            }
        }
        return points;
    }

    /** Under a line down to the axis. */
    private static double area(List<double[]> points) {
        double area = 0;
        for (int i = 1; i < points.size(); i++) {
            double width = points.get(i)[0] - points.get(i - 1)[0];
            area += width * (ReadingFigure.FOOT - (points.get(i)[1] + points.get(i - 1)[1]) / 2);
        }
        return area;
    }

    private static double filledShare(Element figure) {
        double whole = area(points(styled(figure, "curve").get(0)));
        return styled(figure, "inside").stream()
                        .mapToDouble(each -> area(points(each)))
                        .sum()
                / whole;
    }

    /** Φ and Student's t with 4 degrees of freedom: the usual printed tables, from memory to three places. */
    @ParameterizedTest
    @CsvSource({"0, Infinity, 0.500", "1, Infinity, 0.841", "-1, Infinity, 0.159", "2, Infinity, 0.977", "1, 4, 0.813"})
    void the_filled_share_of_the_curve_is_the_probability_of_conforming(double z, double freedom, double probability) {
        double upper = 5 * MM;
        Element figure = reading(upper - z * 0.1 * MM, 0.1 * MM, freedom, limits(null, upper));

        assertThat(filledShare(figure)).isCloseTo(probability, within(0.012));
    }

    @Test
    void between_two_limits_two_uncertainties_away_all_but_one_in_twenty_is_filled() {
        Element figure = reading(5 * MM, 0.1 * MM, Double.POSITIVE_INFINITY, limits(4.8 * MM, 5.2 * MM));

        // Φ(2) − Φ(−2) = 0.9545.
        assertThat(filledShare(figure)).isCloseTo(0.9545, within(0.012));
        assertThat(styled(figure, "outside")).hasSize(2);
    }

    @Test
    void a_reading_that_is_plainly_beyond_its_limit_has_nothing_filled() {
        Element figure = reading(6 * MM, 0.1 * MM, Double.POSITIVE_INFINITY, limits(null, 5 * MM));

        assertThat(styled(figure, "inside")).isEmpty();
        assertThat(styled(figure, "outside")).hasSize(1);
    }

    @Test
    void a_number_that_is_known_exactly_has_no_curve() {
        Estimate exact = Estimate.exact(5 * MM, Dimension.LENGTH);

        assertThat(ReadingFigure.shows(held(Value.Amount.of(exact), limits(null, 6 * MM), Outcome.PASSES)))
                .isFalse();
    }

    /** The case that docs/judging.md works out: limits 0.03 to 0.10 mm, leaves of 0.050 and 0.110 mm. */
    @Test
    void what_two_leaves_leave_of_a_gap_is_drawn_to_scale() {
        Element figure = GapFigure.of(
                gap(
                        limits(0.03 * MM, 0.10 * MM),
                        Outcome.OPEN,
                        trial(leaf("0.05 mm", "0.050 mm"), TrialResult.PASSES),
                        trial(leaf("0.10 mm", "0.110 mm"), TrialResult.REFUSES)),
                UnitSystem.METRIC,
                "Lash",
                "f");
        Element band = styled(figure, "band").get(0);
        Element inside = styled(figure, "inside").get(0);
        Element whole = styled(figure, "outline").get(0);
        double each = number(band, "width") / 7;

        assertThat(number(inside, "x") - number(band, "x")).isCloseTo(2 * each, within(0.15));
        assertThat(number(inside, "width")).isCloseTo(5 * each, within(0.15));
        assertThat(number(whole, "width")).isCloseTo(6 * each, within(0.15));
        assertThat(styled(figure, "outside")).hasSize(1);
        assertThat(said(figure))
                .contains("0.05 mm passes: at least 0.0500 mm", "0.10 mm refuses: less than 0.1100 mm")
                .contains("Still possible: 0.0500 mm to 0.1100 mm");
    }

    @Test
    void trials_that_contradict_each_other_leave_nothing_filled() {
        Element figure = GapFigure.of(
                gap(
                        limits(0.03 * MM, 0.10 * MM),
                        Outcome.CONTRADICTED,
                        trial(leaf("0.08 mm", "0.081 mm"), TrialResult.PASSES),
                        trial(leaf("0.05 mm", "0.050 mm"), TrialResult.REFUSES)),
                UnitSystem.METRIC,
                "Lash",
                "f");

        assertThat(styled(figure, "inside")).isEmpty();
        assertThat(said(figure)).contains("These cannot all be right.");
    }

    @Test
    void of_very_many_trials_those_are_drawn_that_say_most() {
        List<FeelTrial> trials = new ArrayList<>();
        for (int hundredth = 3; hundredth < 15; hundredth++) {
            String size = "0." + (hundredth < 10 ? "0" : "") + hundredth + " mm";
            trials.add(trial(leaf(size, size), hundredth < 9 ? TrialResult.PASSES : TrialResult.REFUSES));
        }
        Element figure = GapFigure.of(
                gap(limits(0.03 * MM, 0.10 * MM), Outcome.PASSES, trials.toArray(FeelTrial[]::new)),
                UnitSystem.METRIC,
                "Lash",
                "f");

        assertThat(styled(figure, "leaf")).hasSize(8);
        assertThat(said(figure)).contains("0.08 mm passes: at least 0.0800 mm", "0.09 mm refuses: less than 0.0900 mm");
    }

    @Property(tries = 300)
    void no_word_leaves_its_figure_and_every_place_is_a_number(
            @ForAll @DoubleRange(min = -1e4, max = 1e4) double y,
            @ForAll @DoubleRange(min = 0.01, max = 1e7) double u,
            @ForAll @DoubleRange(min = -1e4, max = 1e4) double lower,
            @ForAll @DoubleRange(min = 0.01, max = 1e8) double width) {
        for (LimitsHeld.Window limits :
                List.of(limits(lower, lower + width / 1e4), limits(lower, null), limits(null, lower))) {
            Element figure = reading(y, u / 1e5, Double.POSITIVE_INFINITY, limits);
            all(figure).forEach(each -> {
                assertThat(each.attributes().values()).noneMatch(value -> value.contains("NaN"));
                if (each.name().equals("text")) {
                    assertStaysInside(each);
                }
            });
        }
    }

    private static void assertStaysInside(Element text) {
        double wide = Lettering.width(words(text), Pen.LETTERS);
        double x = number(text, "x");
        String anchor = text.attributes().getOrDefault("text-anchor", "start");
        double from = anchor.equals("start") ? x : anchor.equals("end") ? x - wide : x - wide / 2;
        assertThat(from).isGreaterThan(-0.1);
        assertThat(from + wide).isLessThan(Pen.WIDTH + 0.1);
    }

    @Property(tries = 500)
    void an_axis_has_some_round_numbers_in_rising_order(
            @ForAll @DoubleRange(min = -1e4, max = 1e4) double from,
            @ForAll @DoubleRange(min = 0.01, max = 1e7) double width) {
        Scale scale = Scale.over(
                List.of(from, from + width / 1e3),
                Double.NEGATIVE_INFINITY,
                Dimension.LENGTH,
                UnitSystem.METRIC,
                0,
                300);
        List<Scale.Tick> ticks = scale.ticks();

        assertThat(ticks).hasSizeBetween(2, 8);
        assertThat(ticks).extracting(Scale.Tick::label).doesNotHaveDuplicates();
        for (Scale.Tick tick : ticks) {
            double base = scale.unit().toBase(Double.parseDouble(tick.label()));
            assertThat(scale.at(base)).isCloseTo(tick.place(), within(0.5));
        }
    }

    private static String said(Element figure) {
        return String.join(
                "\n",
                all(figure)
                        .filter(each -> each.name().equals("text"))
                        .map(FigureTest::words)
                        .toList());
    }

    private static String words(Element text) {
        return ((Words) text.parts().get(0)).text();
    }
}

package io.github.leafproof.inspection.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.mechanism.Tuning;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Source;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class OutlookTest {
    private static final double HOUR = 3600;
    private static final double LONGEST = 10_000 * HOUR;

    private static Estimate exact(String quantity) {
        return Estimate.exact(Quantity.parse(quantity));
    }

    private static Estimate lash(double millimetres, double u, String name) {
        return Estimate.of(millimetres * 1e-3, Dimension.LENGTH, u * 1e-3, Source.stated(name));
    }

    private static Estimate rate(Estimate before, Estimate now, String hours) {
        return now.minus(before).dividedBy(exact(hours));
    }

    /** The worked example of the trade (common practice): 0.06 to 0.075 mm in 0.7 h, limit 0.10 mm, u 0.003 mm: about 1.0 h. */
    @Test
    void lash_known_exactly_is_short_of_its_limit_as_long_as_the_trade_works_out() {
        Estimate now = exact("0.075 mm");
        Estimate closing = rate(exact("0.06 mm"), now, "0.7 h");
        Estimate distance = exact("0.1 mm").minus(exact("0.003 mm")).minus(now);

        double hours = Outlook.surelyShortFor(distance, closing, 0.95, LONGEST) / HOUR;

        assertThat(hours).isCloseTo(1.0, within(0.05));
        assertThat(hours * HOUR)
                .isCloseTo(
                        Tuning.NEXT_CHECK
                                .of(now, exact("0.1 mm"), exact("0.003 mm"), closing)
                                .known()
                                .value(),
                        within(1e-6));
    }

    /** With the u of 0.003 mm in both checks, worked out by hand: m = 0.025, c = 0.0214/h; see the quadratic below. */
    @Test
    void what_is_only_known_so_well_is_sure_for_a_shorter_time() {
        Estimate before = lash(0.06, 0.003, "first check");
        Estimate now = lash(0.075, 0.003, "second check");
        Estimate distance = exact("0.1 mm").minus(now);

        double hours = Outlook.surelyShortFor(distance, rate(before, now, "0.7 h"), 0.95, LONGEST) / HOUR;

        // 0.025 - 0.0214 t = 1.645 * 0.003 * sqrt((1 + t/0.7)^2 + (t/0.7)^2) is solved by t = 0.667 h.
        assertThat(hours).isCloseTo(0.667, within(0.001));
    }

    /** Fieller's interval (1954, from memory): (m − c t)² = k²(u_m² + t² u_c²), of which the smaller root counts. */
    @Property(tries = 200, seed = "1")
    void it_is_the_lower_end_of_fiellers_interval(
            @ForAll @DoubleRange(min = 0.5, max = 5) double m,
            @ForAll @DoubleRange(min = 0.2, max = 3) double c,
            @ForAll @DoubleRange(min = 0.01, max = 0.2) double um,
            @ForAll @DoubleRange(min = 0.01, max = 0.1) double uc) {
        double k = 1.6448536269514722;
        double a = c * c - k * k * uc * uc;
        double b = -2 * m * c;
        double d = m * m - k * k * um * um;
        double lower = (-b - Math.sqrt(b * b - 4 * a * d)) / (2 * a);

        double found = Outlook.surelyShortFor(
                Estimate.of(m, Dimension.LENGTH, um, Source.stated("distance")),
                Estimate.of(c, Dimension.SPEED, uc, Source.stated("rate")),
                0.95,
                1e6);

        assertThat(found).isCloseTo(lower, within(1e-6));
    }

    @Test
    void a_value_that_may_be_beyond_its_limit_today_is_sure_for_no_time_at_all() {
        Estimate distance = lash(0.002, 0.002, "distance");

        assertThat(Outlook.surelyShortFor(distance, exact("0.01 mm/h"), 0.95, LONGEST))
                .isZero();
        assertThat(Outlook.surelyShortFor(exact("-1 mm"), exact("-1 mm/h"), 0.95, LONGEST))
                .isZero();
    }

    @Test
    void a_value_that_surely_moves_away_is_short_of_its_limit_for_as_long_as_anybody_asks() {
        assertThat(Outlook.surelyShortFor(exact("1 mm"), exact("-0.01 mm/h"), 0.95, LONGEST))
                .isEqualTo(LONGEST);
        assertThat(Outlook.surelyShortFor(exact("1 mm"), exact("0 mm/h"), 0.95, LONGEST))
                .isEqualTo(LONGEST);
    }

    @Test
    void a_rate_that_may_be_nothing_still_has_an_earliest_time() {
        Estimate closing = Estimate.of(0, Dimension.SPEED, 1e-5 / HOUR, Source.stated("rate"));

        double hours = Outlook.surelyShortFor(exact("0.02 mm"), closing, 0.95, LONGEST) / HOUR;

        assertThat(hours).isCloseTo(2 / 1.6449, within(1e-4));
    }
}

package io.github.leafproof.inspection.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class GaugeTrayTest {
    private static final LocalDate JANUARY = LocalDate.of(2026, 1, 10);
    private static final LocalDate NEXT_JANUARY = LocalDate.of(2027, 1, 10);

    @Test
    void a_tray_finds_its_gauges_by_name() {
        Counter strokes = new Counter("strokes");
        GaugeTray tray = new GaugeTray("Bench one", List.of(strokes));
        assertThat(tray.gauge("strokes")).contains(strokes);
        assertThat(tray.gauge("Strokes")).isEmpty();
        assertThat(strokes.kind()).isEqualTo("counter");
    }

    @Test
    void two_gauges_of_the_same_name_are_refused() {
        assertThatThrownBy(() -> new GaugeTray("Bench one", List.of(new Counter("turns"), new Counter("turns"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Bench one has two gauges called turns");
        assertThatThrownBy(() -> new Counter(""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a counter needs a name");
    }

    @Test
    void a_gauge_is_overdue_from_the_day_after_its_due_date() {
        Calibration yearly = new Calibration(JANUARY, NEXT_JANUARY);
        assertThat(yearly.overdueOn(NEXT_JANUARY)).isFalse();
        assertThat(yearly.overdueOn(NEXT_JANUARY.plusDays(1))).isTrue();
        assertThat(Calibration.unknown().overdueOn(NEXT_JANUARY)).isFalse();
        assertThat(new Calibration(JANUARY, null).overdueOn(NEXT_JANUARY)).isFalse();
    }

    @Test
    void nothing_is_due_before_it_was_calibrated() {
        assertThatThrownBy(() -> new Calibration(NEXT_JANUARY, JANUARY))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("due on 2026-01-10, which is before it was calibrated on 2027-01-10");
    }
}

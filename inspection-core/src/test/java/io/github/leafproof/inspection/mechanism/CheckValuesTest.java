package io.github.leafproof.inspection.mechanism;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.quantity.Csv;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every calculation against figures from outside; check-values.csv says beside each where it comes from. */
class CheckValuesTest {
    private static final Set<String> STATUS = Set.of(
            "seen",
            "recomputed",
            "definition",
            "common practice",
            "from memory",
            "seen; recomputed",
            "geometry seen; recomputed",
            "question seen; recomputed",
            "trade sheet; recomputed",
            "from memory; recomputed");

    static List<Csv.Row> rows() {
        return Csv.rows(CheckValuesTest.class, "check-values.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_calculation_comes_to_what_is_published(Csv.Row row) {
        Mechanism mechanism = Mechanisms.named(row.get("mechanism")).orElseThrow();
        Quantity expected = Quantity.parse(row.get("expected"));
        Estimate found = mechanism
                .of(Stream.of(row.get("inputs").split(" ; "))
                        .map(Quantity::parse)
                        .map(Estimate::exact)
                        .toList())
                .known();

        assertThat(found.dimension()).isEqualTo(expected.dimension());
        assertThat(found.value()).isCloseTo(expected.base(), within(tolerance(row.get("tolerance"), expected)));
    }

    private static double tolerance(String words, Quantity expected) {
        String amount = words.substring(words.indexOf(' ') + 1);
        return words.startsWith("rel ")
                ? Double.parseDouble(amount) * Math.abs(expected.base())
                : absolute(amount, expected);
    }

    private static double absolute(String amount, Quantity expected) {
        Quantity tolerance = Quantity.parse(amount);
        assertThat(tolerance.dimension()).isEqualTo(expected.dimension().difference());
        return tolerance.base();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void each_figure_says_where_it_comes_from_and_how_far_to_trust_it(Csv.Row row) {
        assertThat(row.get("source")).isNotBlank();
        assertThat(STATUS).contains(row.get("status"));
    }

    @Test
    void no_calculation_lacks_a_figure_from_outside() {
        Set<String> checked = rows().stream().map(row -> row.get("mechanism")).collect(Collectors.toSet());
        assertThat(checked)
                .containsExactlyInAnyOrderElementsOf(
                        Mechanisms.all().stream().map(Mechanism::name).toList());
    }
}

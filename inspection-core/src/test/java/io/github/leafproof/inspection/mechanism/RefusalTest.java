package io.github.leafproof.inspection.mechanism;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.inspection.Golden;
import io.github.leafproof.inspection.mechanism.Answer.Refusal;
import io.github.leafproof.inspection.quantity.Csv;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Amounts for which a formula does not hold are refused, by name, with the range and the reason. */
class RefusalTest {

    static List<Mechanism> all() {
        return Mechanisms.all();
    }

    static List<Csv.Row> nonsense() {
        return Csv.rows(RefusalTest.class, "nonsense.csv");
    }

    @ParameterizedTest
    @MethodSource("all")
    void each_input_is_refused_below_and_above_its_range(Mechanism mechanism) {
        for (int i = 0; i < mechanism.inputs().size(); i++) {
            Input input = mechanism.inputs().get(i);
            double width = input.high().base() - input.low().base();
            assertThat(refusal(mechanism, i, input.low().base() - width * 1e-6).input())
                    .isEqualTo(input.name());
            assertThat(refusal(mechanism, i, input.high().base() + width * 1e-6).words())
                    .contains(
                            input.words(), input.low().toString(), input.high().toString(), input.because());
        }
    }

    private static Refusal refusal(Mechanism mechanism, int place, double value) {
        List<Estimate> given = new ArrayList<>(
                mechanism.example().stream().map(Estimate::exact).toList());
        given.set(place, Estimate.exact(value, given.get(place).dimension()));
        return (Refusal) mechanism.of(given);
    }

    @ParameterizedTest
    @MethodSource("nonsense")
    void what_cannot_be_is_refused_and_the_culprit_named(Csv.Row row) {
        assertThat(refused(row).input()).isEqualTo(row.get("culprit"));
    }

    @Test
    void what_is_said_of_nonsense() {
        Golden.hold(
                "mechanism/refusals.txt",
                nonsense().stream()
                        .map(row ->
                                row.get("mechanism") + "(" + row.get("inputs").replace(" ;", ",") + ")\n    "
                                        + refused(row).words() + "\n")
                        .collect(Collectors.joining()));
    }

    @Test
    void every_limit_that_depends_on_another_input_is_tried() {
        List<String> said = nonsense().stream()
                .map(row -> row.get("mechanism") + ": "
                        + refused(row).words().replaceFirst("the (.*) is .* and must be ", "$1 must be "))
                .toList();
        for (Mechanism mechanism : Mechanisms.all()) {
            for (String limit : mechanism.limits()) {
                assertThat(said).anyMatch(words -> words.startsWith(mechanism.name() + ": " + limit));
            }
        }
    }

    private static Refusal refused(Csv.Row row) {
        Mechanism mechanism = Mechanisms.named(row.get("mechanism")).orElseThrow();
        return (Refusal) mechanism.of(Stream.of(row.get("inputs").split(" ; "))
                .map(Quantity::parse)
                .map(Estimate::exact)
                .toList());
    }
}

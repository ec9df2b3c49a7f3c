package io.github.leafproof.dsl.formula;

import static io.github.leafproof.inspection.verdict.Outcome.FAILS;
import static io.github.leafproof.inspection.verdict.Outcome.PASSES;
import static io.github.leafproof.inspection.verdict.Outcome.UNTESTED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.mechanism.Mechanism;
import io.github.leafproof.inspection.mechanism.Mechanisms;
import io.github.leafproof.inspection.quantity.Quantity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The calculations of the trade, called from a procedure by their names. */
class CalculationsInProceduresTest {

    private static final Workshop DISPLACEMENT = Workshop.of("""
            observe found : length ask "Bore"
            check printed "The printed class is right" {
              require displacement_difference(displacement_of(found, 24.8 mm), 15 mL) between -3 % and 3 %
            }
            """);

    @Test
    void a_bore_and_a_stroke_tell_the_printed_class() {
        assertThat(DISPLACEMENT.observe("found", "\"27.7 mm\"").outcome("printed"))
                .isEqualTo(PASSES);
        assertThat(DISPLACEMENT.observe("found", "\"26 mm\"").outcome("printed"))
                .isEqualTo(FAILS);
    }

    @Test
    void an_amount_that_a_formula_refuses_is_the_reason_why_nothing_is_known() {
        Workshop nothing = DISPLACEMENT.observe("found", "\"0 mm\"");

        assertThat(nothing.outcome("printed")).isEqualTo(UNTESTED);
        assertThat(nothing.check("printed").missing().toString())
                .contains("cannot be computed: the bore is 0 mm and must be from 0.1 mm to 2000 mm");
    }

    /** Each example of docs/mechanics.md, as a procedure. */
    @TestFactory
    Stream<DynamicTest> every_calculation_can_be_called() {
        return Mechanisms.all().stream()
                .map(mechanism -> dynamicTest(
                        mechanism.name(),
                        () -> assertThat(Procedure.compile(SourceText.of("call.inspection", calling(mechanism)))
                                        .diagnostics())
                                .isEmpty()));
    }

    private static String calling(Mechanism mechanism) {
        String amounts = mechanism.example().stream()
                .map(CalculationsInProceduresTest::written)
                .collect(Collectors.joining(", "));
        return """
                procedure call "Call" revision 1
                observe asked : yes/no ask "Asked?"
                check computed "Computed" { require asked and %1$s(%2$s) at most %1$s(%2$s) }
                """.formatted(mechanism.name(), amounts);
    }

    private static String written(Quantity amount) {
        String text = amount.toString().replace(" per s", " / 1 s").replace(" per K", " / 1 K");
        return text.startsWith("-") ? "(" + text + ")" : text;
    }

    @Test
    void the_page_of_the_language_names_every_calculation() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "language.md"));

        assertThat(Mechanisms.all()).allSatisfy(mechanism -> assertThat(page).contains("`" + mechanism.name() + "`"));
    }
}

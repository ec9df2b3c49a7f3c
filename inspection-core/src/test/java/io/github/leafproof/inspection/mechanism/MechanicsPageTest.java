package io.github.leafproof.inspection.mechanism;

import io.github.leafproof.inspection.Golden;
import io.github.leafproof.inspection.quantity.Csv;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** docs/mechanics.md is made here; {@code -Dgolden.write=true} writes it anew. */
class MechanicsPageTest {
    @Test
    void the_page_of_calculations_says_what_the_program_calculates() {
        Golden.hold(
                Path.of("..", "docs", "mechanics.md"),
                new MechanicsPage(Csv.rows(CheckValuesTest.class, "check-values.csv")).text());
    }
}

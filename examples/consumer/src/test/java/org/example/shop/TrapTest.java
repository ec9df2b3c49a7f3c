package org.example.shop;

import static io.github.leafproof.dsl.assertions.InspectionAssertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** One engine of the shop, and what its report must say. */
class TrapTest {

    private static final Path BENCH = Path.of("target", "test-classes", "bench");

    @Test
    void a_leaf_that_is_not_what_is_stamped_on_it_proves_nothing() {
        Report report = Procedure.read(BENCH.resolve("first_look.inspection"))
                .orElseThrow()
                .judge(
                        CardFile.read(BENCH.resolve("cards/quillan-15.json")).orElseThrow(),
                        TrayFile.read(BENCH.resolve("trays/bench-one.json")).orElseThrow(),
                        SheetFile.read(BENCH.resolve("sheets/0412-trap.json")).orElseThrow(),
                        UnitSystem.METRIC)
                .orElseThrow();

        assertThat(report)
                .isHeld()
                .check("lash_within[intake]")
                .isOpen()
                .hasEvidence("leaf 0.10 mm, measured 0.1100 mm")
                .advises("Offer 0.05 + 0.04 mm together")
                .check("cold")
                .passes()
                .holdsWithAtLeast(0.95);
    }
}

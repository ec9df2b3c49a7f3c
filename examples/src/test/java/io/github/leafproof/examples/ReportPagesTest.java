package io.github.leafproof.examples;

import io.github.leafproof.dsl.page.ReportPage;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The report of the engine that the whole bench begins with, as a page; a person has looked at it. */
class ReportPagesTest {

    @Test
    void the_page_of_the_trap_is_as_a_person_has_seen_it() throws IOException {
        String page = ReportPage.of(Bench.judgement("0412-trap.json"), Bench.judge("0412-trap.json"));

        // Which version wrote it is known only where the program was packed.
        Golden.holds(
                Project.BENCH.resolve("expected/pages/0412-trap.html"),
                page.replaceAll("Written by Leafproof \\S+ from", "Written by Leafproof from"));
    }
}

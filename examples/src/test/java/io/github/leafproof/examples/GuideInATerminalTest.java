package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.ReportFile;
import io.github.leafproof.inspection.record.SheetFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The guide in a real terminal, as somebody at the bench has it. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the terminal of this test is a Unix one")
class GuideInATerminalTest {

    private static final Path LINES = Project.BENCH.resolve("conversations/0500-first-look.txt");
    private static final Path RECORDED = Project.BENCH.resolve("expected/conversations/0500-first-look.txt");

    @TempDir
    private Path bench;

    @BeforeEach
    void copyTheBench() throws IOException {
        try (Stream<Path> files = Files.walk(Project.BENCH)) {
            for (Path file : files.toList()) {
                String name = Project.BENCH.relativize(file).toString();
                if (name.matches("first_look\\.inspection|parts.*|cards.*|trays.*|sheets")) {
                    Path target = bench.resolve(name);
                    if (Files.isDirectory(file)) {
                        Files.createDirectories(target);
                    } else {
                        Files.copy(file, target);
                    }
                }
            }
        }
    }

    private GuidedTerminal guide(String terminal, int columns, String... more) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                "guide",
                bench.resolve("first_look.inspection").toString(),
                "--card=" + bench.resolve("cards/quillan-15.json"),
                "--tray=" + bench.resolve("trays/bench-one.json"),
                "--sheet=" + sheet(),
                "--date=2026-03-04"));
        command.addAll(List.of(more));
        return GuidedTerminal.run(terminal, columns, command);
    }

    private GuidedTerminal guideOfMk(String terminal, int columns) throws IOException {
        return guide(
                terminal, columns, "--by=mk", "--serial=Q15-1", "--condition=used", "--owner=", "--variant=late cam");
    }

    private Path sheet() {
        return bench.resolve("sheets/0500.json");
    }

    @Test
    void a_first_look_from_nothing_to_a_report_in_one_sitting() throws Exception {
        try (GuidedTerminal terminal = guide("xterm-256color", 100)) {
            for (String line : Files.readAllLines(LINES)) {
                terminal.type(line + "\r");
            }

            assertThat(terminal.exit()).as(terminal.whole()).isZero();
            Golden.holds(RECORDED, terminal.whole().replace(bench.toString(), "BENCH"));
        }
        JobSheet written = SheetFile.read(sheet()).orElseThrow().content();
        assertThat(written.entries()).hasSizeGreaterThan(40).allMatch(entry -> "mk".equals(entry.by()));
        assertThat(ReportFile.read(bench.resolve("sheets/0500-report.json"))
                        .orElseThrow()
                        .content()
                        .release()
                        .word())
                .isEqualTo("ready");
    }

    @Test
    void words_are_completed_and_a_line_that_was_begun_can_be_dropped() throws Exception {
        try (GuidedTerminal terminal = guideOfMk("xterm", 80)) {
            terminal.type("yes\r");
            terminal.type("pap\t\r");
            terminal.type("rubbish\u0003");
            terminal.type("lig\t\r");
            terminal.awaitPrompt();
            terminal.press("\u0004");

            assertThat(terminal.exit()).isEqualTo(3);
            assertThat(terminal.whole())
                    .contains("ok: Its build is shown, or taken as unknown (papers)")
                    .contains("noted: light")
                    .contains("Everything that was entered is kept");
        }
    }

    @Test
    void nothing_is_lost_when_the_power_goes() throws Exception {
        try (GuidedTerminal terminal = guideOfMk("xterm", 80)) {
            terminal.type("yes\r");
            terminal.type("papers\r");
            terminal.awaitPrompt();
            terminal.kill();
        }
        try (GuidedTerminal again = guideOfMk("xterm", 80)) {
            again.type("list\r");
            again.type("stop\r");

            assertThat(again.exit()).isEqualTo(3);
            assertThat(again.whole())
                    .contains("Going on where it was left.")
                    .contains("2 done")
                    .contains("done: marks_agree, build_evidence");
        }
    }

    @Test
    void what_is_said_fits_a_terminal_that_was_made_narrow() throws Exception {
        try (GuidedTerminal terminal = guideOfMk("xterm", 80)) {
            terminal.awaitPrompt();
            terminal.resize(44);
            terminal.press("help\r");
            terminal.type("stop\r");

            assertThat(terminal.exit()).isEqualTo(3);
            String narrow = terminal.whole().substring(terminal.whole().indexOf("> help"));
            assertThat(narrow.lines().filter(line -> !line.contains(bench.toString())))
                    .allMatch(line -> line.length() <= 44);
        }
    }

    @Test
    void a_terminal_that_can_do_nothing_gets_plain_lines() throws Exception {
        try (GuidedTerminal terminal = guideOfMk("dumb", 80)) {
            terminal.type("yes\n");
            terminal.type("stop\n");

            assertThat(terminal.exit()).isEqualTo(3);
            assertThat(terminal.raw())
                    .contains("ok: It is the engine on the card")
                    .doesNotContain("\u001b");
        }
    }

    @Test
    void a_second_guide_on_the_same_sheet_is_refused() throws Exception {
        try (GuidedTerminal first = guideOfMk("xterm", 80)) {
            first.awaitPrompt();
            try (GuidedTerminal second = guideOfMk("xterm", 80)) {
                assertThat(second.exit()).isEqualTo(2);
                assertThat(second.whole()).contains("help: ");
            }
            first.press("stop\r");
            assertThat(first.exit()).isEqualTo(3);
        }
    }
}

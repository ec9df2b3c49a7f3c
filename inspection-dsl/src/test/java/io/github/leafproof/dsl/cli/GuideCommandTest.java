package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import io.github.leafproof.inspection.record.SheetFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The walk at the command line, in plain lines; docs/guide.md shows a whole one. */
class GuideCommandTest {

    @TempDir
    private Path here = Path.of("");

    @BeforeEach
    void copyTheBench() {
        Terminal.copyBench(here);
    }

    private Terminal guide(String lines, String... more) {
        return Terminal.typing(
                lines,
                Stream.concat(
                                Stream.of(
                                        "guide",
                                        here.resolve("first_look.inspection").toString(),
                                        "--card=" + here.resolve("cards/quillan-15.json"),
                                        "--tray=" + here.resolve("trays/bench-one.json"),
                                        "--sheet=" + sheet()),
                                Stream.of(more))
                        .toArray(String[]::new));
    }

    private Terminal guideOfMk(String lines) {
        return guide(
                lines,
                "--by=mk",
                "--serial=Q15-1",
                "--condition=used",
                "--owner=job 7",
                "--variant=late cam",
                "--date=2026-03-04",
                "--running-time=2 h");
    }

    private Path sheet() {
        return here.resolve("sheets/0500.json");
    }

    @Test
    void whoever_stops_is_told_how_to_go_on_and_goes_on_there() {
        Terminal left = guideOfMk("yes\npapers\n");

        assertThat(left.exit()).isEqualTo(3);
        assertThat(left.out()).contains("build_evidence> papers\n").contains("Everything that was entered is kept");
        assertThat(sheet()).doesNotExist();

        Terminal again = guideOfMk("finish\n");
        assertThat(again.out()).contains("Going on where it was left.").contains("2 done");
        assertThat(again.exit()).isEqualTo(3);
        var written = SheetFile.read(sheet()).orElseThrow().content();
        assertThat(written.entries()).hasSize(2);
        assertThat(written.card()).isEqualTo("../cards/quillan-15.json");
        assertThat(written.engine().owner()).isEqualTo("job 7");
        assertThat(written.runningTime()).hasToString("2 h");
        assertThat(here.resolve("sheets/0500-report.json")).exists();
        assertThat(here.resolve("sheets/0500-report.html")).content().contains("<html");
    }

    @Test
    void what_was_written_is_judged_alike_by_inspect() {
        guideOfMk("yes\npapers\nfinish\n");

        Terminal judged = Terminal.run(
                "inspect", here.resolve("first_look.inspection").toString(), "--sheet", sheet().toString());

        assertThat(judged.exit()).isEqualTo(3);
        assertThat(judged.out()).contains("Release: UNFINISHED");
    }

    @Test
    void a_sheet_that_is_there_is_not_begun_over() throws IOException {
        Files.writeString(sheet(), "{}");

        Terminal said = guideOfMk("yes\n");

        assertThat(said.exit()).isEqualTo(2);
        assertThat(Files.readString(sheet())).isEqualTo("{}");
        Golden.hold("cli/guide-sheet-is-there", said.whole(here));
    }

    @ParameterizedTest
    @CsvSource({
        "--variant=spate, has no variant spate",
        "--date=4.3.2026, is no day",
        "--running-time=long, is no time",
        "--json=cards/quillan-15.json, help: "
    })
    void what_makes_no_sense_beforehand_is_told_before_anything_is_asked(String option, String told) {
        String[] parts = option.split("=", -1);
        String given = parts[0].equals("--json") ? here.resolve(parts[1]).toString() : parts[1];

        Terminal said = guide("yes\n", parts[0] + "=" + given);

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains(told).contains(parts[0]);
        assertThat(said.out()).isEmpty();
    }

    @Test
    void everything_wrong_with_the_files_is_told_at_once() {
        Terminal said =
                Terminal.run("guide", "no.inspection", "--card=no-card.json", "--tray=no-tray.json", "--sheet=x.json");

        assertThat(said.exit()).isEqualTo(2);
        Golden.hold("cli/guide-no-files", said.whole(here));
    }
}

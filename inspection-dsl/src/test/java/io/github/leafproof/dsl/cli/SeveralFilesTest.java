package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.ReportFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Procedures of several files on the command line. */
class SeveralFilesTest {

    private static final String PART =
            "gauge leaves : leaf set\nobserve lash : gap with leaves ask \"Offer the leaves\"\n";

    @TempDir
    private Path here = Path.of("");

    private String procedure = "";

    @BeforeEach
    void a_procedure_in_a_folder_uses_what_lies_in_another() throws IOException {
        Terminal.copyBench(here);
        file("common/lash.inspection", PART);
        procedure = file("procedures/lash.inspection", """
                procedure lash "Lash" revision 1
                use "common/lash.inspection"
                check inside "Lash is inside" critical { require lash between engine.lash_min and engine.lash_max }
                """);
    }

    private String file(String name, String text) throws IOException {
        Path file = here.resolve(name);
        Files.createDirectories(file.resolveSibling(""));
        return Files.writeString(file, text).toString();
    }

    @Test
    void vetting_takes_the_root_that_is_named() {
        assertThat(Terminal.run("vet", procedure).err()).contains("LP160");
        assertThat(Terminal.run("vet", "--root", here.toString(), procedure))
                .isEqualTo(new Terminal(
                        0, procedure + ": sound\n   1 check, 1 observation; judging takes at most 6 steps\n", ""));
    }

    @Test
    void with_a_card_too_the_procedures_own_findings_come_before_those_of_what_it_uses() throws IOException {
        file("common/lash.inspection", PART.replace("leaves", "feelers"));
        String first = file("procedures/lash.inspection", Files.readString(Path.of(procedure)) + "let spare = 3 mm\n");

        Terminal said = Terminal.run(
                "vet",
                "--root",
                here.toString(),
                first,
                "--card",
                here.resolve("cards/quillan-15.json").toString(),
                "--tray",
                here.resolve("trays/bench-one.json").toString());

        assertThat(said.err()).startsWith(first + ":4:5: warning LP431").contains("error LP463");
    }

    @Test
    void a_mistake_in_a_used_file_is_shown_at_its_place_there() throws IOException {
        String part = file("common/lash.inspection", PART.replace("leaf set", "leaf sett"));

        Terminal said = Terminal.run("vet", "--root", here.toString(), procedure);

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).startsWith(part + ":1:");
    }

    @Test
    void the_report_names_every_used_file_as_the_procedure_does_and_by_its_digest() throws IOException {
        String sheet = file("sheets/lash.json", """
                {"sheet": "1", "procedure": "lash", "revision": 1, "card": "../cards/quillan-15.json",
                 "tray": "../trays/bench-one.json", "engine": {"variant": "late cam"}, "date": "2026-03-03",
                 "entries": [{"observe": "lash", "trials": [
                   {"leaf": "0.05 mm", "result": "passes"}, {"leaf": "0.08 mm", "result": "refuses"}]}]}
                """);
        Path json = here.resolve("report.json");

        Terminal said = Terminal.run(
                "inspect", procedure, "--root", here.toString(), "--sheet", sheet, "--json", json.toString());

        String digest = SourceText.of("common/lash.inspection", PART).sha256();
        assertThat(said.exit()).isZero();
        assertThat(said.out()).contains("  part       " + digest + "  common/lash.inspection\n");
        assertThat(ReportFile.read(json).orElseThrow().content().procedure().parts())
                .containsExactly(new Report.Input("common/lash.inspection", digest));
    }

    @Test
    void a_report_is_never_written_over_a_used_file() throws IOException {
        String part = here.resolve("common/lash.inspection").toString();
        Terminal said =
                Terminal.run("inspect", procedure, "--root", here.toString(), "--sheet", "none.json", "--json", part);

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains("leafproof: --json would write the report over " + part);
        assertThat(Path.of(part)).hasContent(PART);
    }

    @Test
    void a_rehearsal_in_a_part_is_run_and_names_its_files_from_there() throws IOException {
        String part = file("common/lash.inspection", PART + """
                rehearse "thick" {
                  engine "../cards/quillan-15.json" variant "late cam"
                  gauges "../trays/bench-one.json"
                  enter lash passes "0.05" refuses "0.10"
                  expect inside passes
                }
                """);

        Terminal said = Terminal.run("rehearse", "--root", here.toString(), procedure);

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.out())
                .startsWith("  SURPRISE     thick\n      " + part + ":7:10: expected inside passes, got open\n")
                .endsWith(procedure + ": 1 rehearsal, 0 as expected\n");
    }

    @Test
    void a_part_is_tidied_by_itself() throws IOException {
        String part = file("common/lash.inspection", PART.replace(" : ", ":"));

        assertThat(Terminal.run("tidy", "--check", part)).isEqualTo(new Terminal(1, part + ": not tidy\n", ""));
        assertThat(Terminal.run("tidy", part)).isEqualTo(new Terminal(0, part + ": tidied\n", ""));
        assertThat(Path.of(part)).hasContent(PART);
        assertThat(Terminal.run("tidy", "--root", here.toString(), procedure, part))
                .isEqualTo(new Terminal(0, procedure + ": tidied\n", ""));
    }

    @Test
    void a_part_with_mistakes_of_grammar_is_left_alone() throws IOException {
        String part = file("common/lash.inspection", PART + "observe head :\n");

        assertThat(Terminal.run("tidy", part).exit()).isEqualTo(2);
        assertThat(Path.of(part)).hasContent(PART + "observe head :\n");
    }

    @Test
    void a_procedure_whose_part_has_mistakes_is_left_alone() throws IOException {
        file("common/lash.inspection", PART.replace("with leaves", "with blades"));

        assertThat(Terminal.run("tidy", "--root", here.toString(), procedure).err())
                .contains("LP305");
    }
}

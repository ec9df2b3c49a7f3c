package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.ReportFile;
import io.github.leafproof.inspection.verdict.Release;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandLineTest {

    @TempDir
    private Path here = Path.of("");

    private String file(String name, String text) throws IOException {
        return Files.writeString(here.resolve(name), text).toString();
    }

    @ParameterizedTest
    @CsvSource({
        "0411-clean.json, 0",
        "0412-trap.json, 1",
        "0413-warm.json, 3",
        "0414-leak.json, 1",
        "0415-unfinished.json, 3",
        "0416-contradiction.json, 1",
        "0417-adjusted.json, 0"
    })
    void the_exit_code_tells_ready_from_held_and_unfinished(String sheet, int exit) {
        Terminal said = Terminal.inspect(sheet);

        assertThat(said.exit()).isEqualTo(exit);
        assertThat(said.err()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "inspect",
                "verify-report",
                "make-key",
                "card",
                "explain",
                "draw",
                "history",
                "vet",
                "rehearse",
                "mutants",
                "edges",
                "replay",
                "tidy",
                "reckon",
                "guide",
                "why"
            })
    void every_verb_shows_what_it_takes_and_an_example(String verb) {
        Terminal said = verb.isEmpty() ? Terminal.run("--help") : Terminal.run(verb, "--help");

        assertThat(said.exit()).isZero();
        Golden.hold("cli/help" + (verb.isEmpty() ? "" : "-" + verb), said.out());
    }

    @Test
    void without_a_verb_the_help_is_shown() {
        assertThat(Terminal.run()).isEqualTo(Terminal.run("--help"));
    }

    @Test
    void a_mistake_is_explained_by_its_code_however_that_is_typed() {
        Terminal said = Terminal.run("why", "LP201");

        assertThat(said.exit()).isZero();
        Golden.hold("cli/why", said.out());
        assertThat(Terminal.run("why", "lp201")).isEqualTo(said);
        assertThat(Terminal.run("why", "201")).isEqualTo(said);
        assertThat(Terminal.run("why", "LP201", "LP616").out())
                .startsWith(said.out())
                .contains("LP616: ");
    }

    @Test
    void a_code_that_no_mistake_has_is_told() {
        Terminal said = Terminal.run("why", "LP999");

        assertThat(said.exit()).isEqualTo(2);
        Golden.hold("cli/why-unknown", said.whole(here));
    }

    @Test
    void the_version_is_told() {
        assertThat(Terminal.run("--version").out()).startsWith("leafproof ");
    }

    @Test
    void a_command_used_wrongly_is_told_in_a_line_and_where_the_help_is() {
        Terminal said = Terminal.run("inspect", "--units", "furlong", "x.inspection", "--sheet", "x.json");

        assertThat(said.exit()).isEqualTo(2);
        Golden.hold("cli/misused", said.whole(here));
    }

    @Test
    void the_report_is_written_as_json_too_and_reads_back() {
        Path json = here.resolve("report.json");

        Terminal said = Terminal.inspect("0412-trap.json", "--json", json.toString());

        Report report = ReportFile.read(json).orElseThrow().content();
        assertThat(said.exit()).isEqualTo(1);
        assertThat(report.release()).isEqualTo(Release.HOLD);
    }

    @Test
    void the_report_is_written_as_a_page_too_in_the_units_asked_for() {
        Path page = here.resolve("0412.html");

        Terminal said = Terminal.inspect("0412-trap.json", "--units", "inch", "--report", page.toString());

        assertThat(said.exit()).isEqualTo(1);
        assertThat(page)
                .content()
                .startsWith("<!DOCTYPE html>")
                .contains("<strong>HOLD</strong>", "Still possible: 1.969 thou to 4.331 thou");
    }

    @Test
    void two_reports_do_not_go_into_one_file() {
        String file = here.resolve("report").toString();

        Terminal said = Terminal.inspect("0412-trap.json", "--json", file, "--report", file);

        assertThat(said.exit()).isEqualTo(2);
        Golden.hold("cli/inspect-one-file", said.whole(here));
        assertThat(Path.of(file)).doesNotExist();
    }

    @Test
    void a_page_is_never_written_over_what_it_was_made_from() throws IOException {
        Terminal.copyBench(here);
        String procedure = here.resolve("first_look.inspection").toString();
        Path sheet = here.resolve("sheets/0412-trap.json");
        Path card = here.resolve("cards/quillan-15.json");
        String before = Files.readString(card);

        Terminal said = Terminal.run("inspect", procedure, "--sheet", sheet.toString(), "--report", card.toString());

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains("--report would write the page over");
        assertThat(card).hasContent(before);
    }

    @Test
    void a_report_is_never_written_over_what_it_was_made_from() throws IOException {
        Terminal.copyBench(here);
        Path sheet = here.resolve("sheets/0412-trap.json");
        String before = Files.readString(sheet);
        String procedure = here.resolve("first_look.inspection").toString();

        Terminal said = Terminal.run("inspect", procedure, "--sheet", sheet.toString(), "--json", sheet.toString());

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains("would write the report over");
        assertThat(sheet).hasContent(before);
    }

    @Test
    void a_report_that_cannot_be_written_is_bad_input_and_the_report_is_still_printed() {
        Terminal said = Terminal.inspect(
                "0411-clean.json", "--json", here.resolve("no/such/folder.json").toString());

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.out()).contains("Release: READY");
        assertThat(said.err()).contains("LP610");
    }

    @Test
    void a_reader_of_inches_is_shown_inches_and_behind_them_what_the_procedure_writes() {
        Golden.hold(
                "cli/inspect-inch",
                Terminal.inspect("0414-leak.json", "--units", "inch").out());
    }

    @Test
    void inches_are_shown_to_those_who_read_them() {
        assertThat(Terminal.inspect("0412-trap.json", "--units", "inch").out())
                .contains("1.969 thou to 4.331 thou")
                .doesNotContain("0.0500 mm to");
    }

    @Test
    void a_card_and_a_tray_of_the_command_go_before_those_of_the_sheet() {
        Terminal said = Terminal.inspect(
                "0412-trap.json",
                "--tray",
                Terminal.BENCH.resolve("trays/bench-new.json").toString());

        assertThat(said.out()).contains("never measured").contains("BENCH/trays/bench-new.json");
    }

    @Test
    void a_sheet_that_names_no_card_needs_one_from_the_command() throws IOException {
        Terminal.copyBench(here);
        Path sheet = here.resolve("sheets/0412-trap.json");
        Files.writeString(sheet, Files.readString(sheet).replaceFirst("\"card\": \"[^\"]*\",", ""));
        String procedure = here.resolve("first_look.inspection").toString();
        String card = here.resolve("cards/quillan-15.json").toString();

        Terminal without = Terminal.run("inspect", procedure, "--sheet", sheet.toString());
        Terminal with = Terminal.run("inspect", procedure, "--sheet", sheet.toString(), "--card", card);

        assertThat(without.exit()).isEqualTo(2);
        assertThat(without.err()).contains("the sheet names no card").contains("--card");
        assertThat(with.exit()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0412-trap.json", "0414-leak.json", "0415-unfinished.json"})
    void colour_adds_nothing_that_the_words_do_not_say(String sheet) {
        String procedure = Terminal.BENCH.resolve("first_look.inspection").toString();
        String path = Terminal.BENCH.resolve("sheets").resolve(sheet).toString();

        String coloured =
                Terminal.run(true, "inspect", procedure, "--sheet", path).out();

        assertThat(coloured).contains("\u001b[");
        assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", ""))
                .isEqualTo(Terminal.inspect(sheet).out());
    }

    @Test
    void vetting_a_sound_procedure_says_so() {
        Terminal said = Terminal.run(
                "vet", Terminal.BENCH.resolve("first_look.inspection").toString());

        assertThat(said.exit()).isZero();
        assertThat(said.err()).isEmpty();
        assertThat(said.out())
                .startsWith(
                        "BENCH/first_look.inspection: sound\n   42 checks, 45 observations; judging takes at most ");
    }

    @Test
    void a_procedure_is_vetted_with_the_card_and_the_tray_it_will_be_used_with() {
        String procedure = Terminal.BENCH.resolve("first_look.inspection").toString();
        String card = Terminal.BENCH.resolve("cards/quillan-15.json").toString();
        String tray = Terminal.BENCH.resolve("trays/bench-one.json").toString();

        assertThat(Terminal.run("vet", procedure, "--card", card, "--tray", tray)
                        .out())
                .contains("sound");
        assertThat(Terminal.run("vet", procedure, "--card", card, "--tray", tray, "--variant", "late")
                        .err())
                .contains("LP467", "late cam");
        assertThat(Terminal.run("vet", procedure, "--card", card, "--tray", card)
                        .exit())
                .isEqualTo(2);
        assertThat(Terminal.run("vet", procedure, "--card", card).err()).contains("give both --card and --tray");
    }

    @Test
    void vetting_lists_the_mistakes_of_every_file_for_people_and_for_programs() throws IOException {
        String one = file("one.inspection", "procedure one \"One\" revision 1\ncheck a \"A\" { require b }\n");
        String two = file("two.inspection", "procedure two \"Two\" revision 1\nobserve c : yes/no\n");

        Golden.hold("cli/vet", Terminal.run("vet", one, two).whole(here));
        Golden.hold("cli/vet-json", Terminal.run("vet", "--json", one, two).whole(here));
        Golden.hold("cli/vet-lines", Terminal.run("vet", "--lines", one, two).whole(here));
        String beginners = "src/test/resources/beginners/03_written_like_a_programming_language/input.inspection";
        Golden.hold("cli/vet-sarif", Terminal.run("vet", "--sarif", beginners).whole(here));
    }

    @Test
    void rehearsals_that_come_out_as_expected_are_listed() {
        Terminal said = Terminal.run(
                "rehearse", Terminal.BENCH.resolve("first_look.inspection").toString());

        assertThat(said.exit()).isZero();
        assertThat(said.out())
                .matches("(  as expected  .*\\n)+BENCH/first_look.inspection: (\\d+) rehearsals, \\2 as expected\\n");
    }

    @Test
    void a_rehearsal_that_surprises_shows_what_came_instead_and_why() throws IOException {
        Terminal.copyBench(here);
        String procedure = file("surprise.inspection", """
            procedure lash_only "Lash only" revision 1
            gauge leaves : leaf set
            observe lash : gap with leaves ask "Offer the leaves"
            check inside "Lash is inside" critical {
              require lash between engine.lash_min and engine.lash_max
            }
            rehearse "somebody trusts the marking" {
              engine "cards/quillan-15.json"   gauges "trays/bench-one.json"
              enter lash passes "0.05" refuses "0.10"
              expect inside passes
              expect release ready
            }
            rehearse "a card that is not there" {
              engine "cards/nobody.json"   gauges "trays/bench-one.json"
              expect inside untested
            }
            """);

        Golden.hold("cli/rehearse-surprise", Terminal.run("rehearse", procedure).whole(here));
        assertThat(Terminal.run("rehearse", here.resolve("absent.inspection").toString(), procedure)
                        .exit())
                .isEqualTo(2);
    }

    @Test
    void a_mistake_of_ours_is_owned_up_to_and_traced_only_when_asked() {
        String[] arguments = {"vet", "x.inspection"};

        String plain = failing(arguments);
        String traced = failing("--trace", "vet", "x.inspection");

        assertThat(plain)
                .startsWith("70 ")
                .contains("leafproof: a mistake of ours")
                .doesNotContain("\tat ");
        assertThat(traced).contains("\tat ").contains("disk on fire");
    }

    /** Runs a command whose standard output breaks in a way that nobody provided for. */
    private static String failing(String... arguments) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream broken = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8) {
            @Override
            public void print(String text) {
                throw new IllegalStateException("disk on fire");
            }
        };
        PrintStream errStream = new PrintStream(err, true, StandardCharsets.UTF_8);
        int exit = Leafproof.run(new Console(InputStream.nullInputStream(), broken, errStream, false), arguments);
        return exit + " " + err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void the_same_files_give_the_same_bytes() {
        List<Terminal> twice = List.of(Terminal.inspect("0412-trap.json"), Terminal.inspect("0412-trap.json"));

        assertThat(twice.get(0)).isEqualTo(twice.get(1));
    }
}

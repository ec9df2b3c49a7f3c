package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rehearsals of files and folders, as a shop and its CI server ask for them. */
class RehearseCommandTest {

    private static final String GOOD = """
            rehearse "flips freely" {
              engine "../cards/quillan-15.json"
              gauges "../trays/bench-one.json"
              enter flips 3
              expect free passes
            }
            rehearse "too stiff" {
              engine "../cards/quillan-15.json"
              gauges "../trays/bench-one.json"
              enter flips 9
              expect free fails
            }
            """;

    @TempDir
    private Path here = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void open_the_shop() throws IOException {
        Path bench = Terminal.BENCH;
        shop = Files.createDirectories(here.resolve("shop"));
        for (String file : new String[] {"cards/quillan-15.json", "trays/bench-one.json"}) {
            Files.createDirectories(here.resolve(file).getParent());
            Files.copy(bench.resolve(file), here.resolve(file));
        }
        file("parts/flips.inspection", "observe flips : count ask \"Flips\"\n");
        file("turning.inspection", procedure("turning", "use \"parts/flips.inspection\"\n") + GOOD);
        file(
                "deep/again.inspection",
                procedure("again", "observe flips : count ask \"Flips\"\n") + GOOD.replace("../", "../../"));
    }

    private static String procedure(String name, String observes) {
        return "procedure " + name + " \"Turning over\" revision 2\n" + observes
                + "check free \"Turns freely\" { require flips at most 4 }\n";
    }

    private String file(String name, String text) throws IOException {
        Path file = shop.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text).toString();
    }

    private void surprise() throws IOException {
        Path turning = shop.resolve("turning.inspection");
        Files.writeString(turning, Files.readString(turning).replace("at most 4", "at most 2"));
    }

    private void hold(String name, Terminal said) {
        Golden.hold("cli/rehearse-" + name, said.whole(here));
    }

    @Test
    void a_folder_is_rehearsed_with_all_folders_in_it_and_its_parts_stand_aside() {
        Terminal said = Terminal.run("rehearse", shop.toString());

        assertThat(said.exit()).isZero();
        hold("folder", said);
    }

    @Test
    void a_surprise_ends_in_exit_code_1_and_tells_where_the_ways_part() throws IOException {
        surprise();

        Terminal said = Terminal.run("rehearse", shop.toString());

        assertThat(said.exit()).isEqualTo(1);
        hold("folder-surprise", said);
    }

    @Test
    void a_filter_takes_titles_whatever_their_capitals() {
        Terminal said = Terminal.run("rehearse", "--filter", "TOO stiff", shop.toString());

        assertThat(said.exit()).isZero();
        hold("filter", said);
    }

    @Test
    void a_filter_takes_all_of_a_procedure_by_its_name() {
        Terminal said = Terminal.run("rehearse", "--filter", "agai", shop.toString());

        assertThat(said.exit()).isZero();
        assertThat(said.out()).contains("2 rehearsals, 2 as expected").doesNotContain("turning");
    }

    @Test
    void a_filter_that_nothing_matches_is_no_success() {
        Terminal said = Terminal.run("rehearse", "--filter", "stif f", shop.toString());

        assertThat(said.exit()).isEqualTo(2);
        hold("filter-nothing", said);
    }

    @Test
    void a_folder_without_procedures_is_told() throws IOException {
        Path empty = Files.createDirectories(here.resolve("empty"));

        Terminal said =
                Terminal.run("rehearse", empty.toString(), shop.resolve("parts").toString());

        assertThat(said.exit()).isEqualTo(2);
        hold("no-procedures", said);
    }

    @Test
    void mistakes_in_one_procedure_do_not_keep_the_others_from_being_rehearsed() throws IOException {
        file("broken.inspection", "proceedure broken \"Broken\" revision 1\n");
        file("blank.inspection", "");

        Terminal said = Terminal.run("rehearse", shop.toString());

        assertThat(said.exit()).isEqualTo(2);
        hold("mistakes", said);
    }

    @Test
    void a_card_that_is_not_there_is_told_at_each_case_that_names_it() throws IOException {
        Files.delete(here.resolve("cards/quillan-15.json"));

        Terminal said =
                Terminal.run("rehearse", shop.resolve("turning.inspection").toString());

        assertThat(said.exit()).isEqualTo(2);
        hold("no-card", said);
    }

    @Test
    void a_procedure_that_is_named_twice_is_rehearsed_once() {
        String turning = shop.resolve("turning.inspection").toString();

        assertThat(Terminal.run("rehearse", turning, shop.toString()).out())
                .containsOnlyOnce("turning.inspection: 2 rehearsals, 2 as expected")
                .startsWith("  as expected  flips freely\n  as expected  too stiff\n" + turning);
    }

    @Test
    void programs_get_it_as_json() throws IOException {
        surprise();

        Terminal said = Terminal.run("rehearse", "--json", shop.toString());

        assertThat(said.exit()).isEqualTo(1);
        hold("json", said);
    }

    @Test
    void one_output_cannot_hold_two_things() {
        Terminal said = Terminal.run("rehearse", "--json", "--coverage", shop.toString());

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).contains("cannot both go to standard output");
    }

    @Test
    void ci_servers_get_it_as_xml_beside_the_text() throws IOException {
        surprise();
        file("broken.inspection", procedure("broken", ""));
        Path xml = here.resolve("results.xml");

        Terminal said = Terminal.run("rehearse", shop.toString(), "--junit-xml", xml.toString());

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.out())
                .contains("3 procedures, 4 rehearsals: 3 as expected, 1 surprise, 1 procedure with mistakes");
        Golden.hold("cli/rehearse-xml", Files.readString(xml).replace(here.toString(), "HERE"));
    }

    @Test
    void results_are_never_written_over_what_they_were_made_from() throws IOException {
        for (String read :
                new String[] {"shop/turning.inspection", "shop/parts/flips.inspection", "cards/quillan-15.json"}) {
            Path file = here.resolve(read);
            String before = Files.readString(file);

            Terminal said = Terminal.run("rehearse", shop.toString(), "--junit-xml", file.toString());

            assertThat(said.exit()).isEqualTo(2);
            assertThat(said.err()).contains("--junit-xml would write the results over");
            assertThat(file).hasContent(before);
        }
    }

    @Test
    void results_that_cannot_be_written_are_told() {
        Path nowhere = here.resolve("not/there.xml");

        Terminal said = Terminal.run("rehearse", shop.toString(), "--junit-xml", nowhere.toString());

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains("there.xml");
    }
}

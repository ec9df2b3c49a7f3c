package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CardCommandTest {

    @TempDir
    private Path here = Path.of("");

    @BeforeEach
    void aBench() {
        Terminal.copyBench(here);
    }

    private String path(String name) {
        return here.resolve(name).toString();
    }

    private Terminal card(String... more) {
        return Terminal.run(Stream.concat(
                        Stream.of(
                                "card",
                                path("tank.inspection"),
                                "--card",
                                path("cards/quillan-15.json"),
                                "--tray",
                                path("trays/bench-one.json")),
                        Stream.of(more))
                .toArray(String[]::new));
    }

    @Test
    void a_card_is_written_where_it_is_wanted_and_is_the_same_each_time() throws IOException {
        Terminal written = card("-o", path("tank.html"));
        Terminal printed = card();

        assertThat(written)
                .isEqualTo(new Terminal(0, path("tank.html") + ": made; open it in a browser and print it\n", ""));
        assertThat(here.resolve("tank.html")).hasContent(printed.out().strip());
        Golden.hold("cli/card", printed.whole(here));
    }

    @Test
    void a_card_is_never_written_over_what_it_is_made_from() throws IOException {
        String before = Files.readString(here.resolve("parts/bench.inspection"));

        for (String input : new String[] {"cards/quillan-15.json", "tank.inspection", "parts/bench.inspection"}) {
            Terminal said = card("-o", path(input));
            assertThat(said.exit()).isEqualTo(2);
            assertThat(said.err()).contains("-o would write the work card over");
        }
        assertThat(here.resolve("parts/bench.inspection")).hasContent(before.strip());
    }

    @Test
    void what_is_wrong_with_the_files_is_told_all_at_once() throws IOException {
        Files.writeString(here.resolve("cards/quillan-15.json"), "{");
        Files.delete(here.resolve("trays/bench-one.json"));

        Terminal said = card();

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains("LP607").contains("LP601");
        assertThat(said.out()).isEmpty();
    }

    @Test
    void an_engine_card_and_a_tray_are_asked_for() {
        Terminal said = Terminal.run("card", path("tank.inspection"));

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains("--card").contains("--tray");
    }
}

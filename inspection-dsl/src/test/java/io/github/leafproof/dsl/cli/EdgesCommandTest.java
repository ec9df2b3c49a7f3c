package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code edges}, on a procedure with a gate, a window and a gauge. */
class EdgesCommandTest {

    private static final String SPRING = """
            procedure spring "Valve spring" revision 1

            gauge caliper : reading of length

            observe whole : yes/no ask "Is the spring whole, and free of rust?"
            check sound "The spring is whole" major gate { require whole }

            observe free : length with caliper ask "Its free length"
            observe turns : count optional ask "How many turns has it?"
            check long_enough "It has not set" critical {
              after sound
              require free between 18.5 mm and 20 mm
            }
            check right_spring "It is the right one" minor { require turns is 7 }
            """;

    private static final String REHEARSAL = """

            rehearse "a spring as it should be" {
              engine "cards/quillan-15.json" variant "late cam"
              gauges "trays/bench-one.json"
              enter whole yes, free 19.2 mm
              expect long_enough passes
            }
            """;

    @TempDir
    private Path here = Path.of("");

    private String procedure = "";

    @BeforeEach
    void lay_out_the_bench() throws IOException {
        for (String file : new String[] {"cards/quillan-15.json", "cards/quillan-6.json", "trays/bench-one.json"}) {
            Files.createDirectories(here.resolve(file).resolveSibling(""));
            Files.copy(Terminal.BENCH.resolve(file), here.resolve(file));
        }
        procedure = file("spring.inspection", SPRING + REHEARSAL);
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(here.resolve(name), text).toString();
    }

    @Test
    void they_are_written_as_rehearsals_and_what_has_no_edge_is_said() {
        Golden.hold("edges/spring", Terminal.run("edges", procedure).whole(here));
    }

    @Test
    void a_file_of_them_is_a_part_that_the_procedure_can_use() throws IOException {
        Path edges = here.resolve("spring_edges.inspection");

        Terminal said = Terminal.run("edges", procedure, "-o", edges.toString());

        assertThat(said).isEqualTo(new Terminal(0, edges + ": 7 rehearsals on the edges, 1 condition without\n", ""));
        String using = file("using.inspection", SPRING + "use \"spring_edges.inspection\"\n" + REHEARSAL);
        assertThat(Terminal.run("rehearse", using).exit()).isZero();
        assertThat(Terminal.run("tidy", "--check", edges.toString())).isEqualTo(new Terminal(0, "", ""));
        assertThat(Terminal.run("edges", using).out()).doesNotContain("rehearse");
    }

    @Test
    void cards_are_named_from_where_the_file_lies() throws IOException {
        Files.createDirectories(here.resolve("parts"));
        Path edges = here.resolve("parts/spring_edges.inspection");

        assertThat(Terminal.run("edges", procedure, "-o", edges.toString()).exit())
                .isZero();

        assertThat(Files.readString(edges)).contains("engine \"../cards/quillan-15.json\" variant \"late cam\"");
    }

    @Test
    void another_card_can_be_put_under_all_rehearsals() {
        Terminal said = Terminal.run(
                "edges",
                procedure,
                "--card",
                here.resolve("cards/quillan-6.json").toString(),
                "--tray",
                here.resolve("trays/bench-one.json").toString());

        assertThat(said.exit()).isZero();
        assertThat(said.out()).contains("engine \"cards/quillan-6.json\"\n").doesNotContain("late cam");
    }

    @Test
    void what_cannot_be_done_is_said() throws IOException {
        String without = file("without.inspection", SPRING);
        String tray = file("tray.json", "{ \"tray\": \"Empty\", \"gauges\": [] }");

        String all = Terminal.run("edges", without).whole(here)
                + Terminal.run("edges", procedure, "--variant", "early cam").whole(here)
                + Terminal.run("edges", procedure, "-o", procedure).whole(here)
                + Terminal.run("edges", procedure, "--tray", tray).whole(here)
                + Terminal.run("edges", here.resolve("missing.inspection").toString())
                        .whole(here);

        Golden.hold("edges/not-usable", all);
    }
}

package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code mutants}, on a procedure of two checks and two rehearsals. */
class MutantsCommandTest {

    private static final String SPRING = """
            procedure spring "Valve spring" revision 1
            decide at 95 %

            gauge caliper : reading of length

            observe whole : yes/no ask "Is the spring whole, and free of rust?"
            check sound "The spring is whole" major gate {
              require whole
            }

            observe free : length
              with caliper
              ask "Its free length"

            check long_enough "It has not set" critical {
              after sound
              require free between 18.5 mm and 20 mm
            }

            rehearse "a spring as it should be" {
              engine "cards/quillan-15.json"
              gauges "trays/bench-one.json"
              enter whole yes, free 18.55 mm
              expect sound passes, long_enough passes
              expect release ready
            }

            rehearse "a spring that has set" {
              engine "cards/quillan-15.json"
              gauges "trays/bench-one.json"
              enter whole yes, free 17 mm
              expect release reject
            }
            """;

    @TempDir
    private Path here = Path.of("");

    private String procedure = "";

    @BeforeEach
    void lay_out_the_bench() throws IOException {
        for (String file : new String[] {"cards/quillan-15.json", "trays/bench-one.json"}) {
            Files.createDirectories(here.resolve(file).resolveSibling(""));
            Files.copy(Terminal.BENCH.resolve(file), here.resolve(file));
        }
        procedure = file("spring.inspection", SPRING);
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(here.resolve(name), text).toString();
    }

    @Test
    void what_no_rehearsal_notices_is_shown_as_changed_lines() {
        Golden.hold("mutants/spring", Terminal.run("mutants", procedure).whole(here));
    }

    @Test
    void programs_are_told_the_same() {
        Golden.hold(
                "mutants/spring-json",
                Terminal.run("mutants", procedure, "--json").whole(here));
    }

    @Test
    void what_is_accepted_with_a_reason_is_not_asked_for_again() throws IOException {
        String gap = " because the caliper tells no more\n";
        StringBuilder list = new StringBuilder("// What we know of.\n");
        Terminal.run("mutants", procedure)
                .out()
                .lines()
                .filter(line -> line.startsWith("   name:    "))
                .forEach(line ->
                        list.append(line.substring("   name:    ".length())).append(gap));

        Terminal said = Terminal.run("mutants", procedure, "--accept", file("accepted.txt", list.toString()));

        Golden.hold("mutants/spring-accepted", said.whole(here));
        assertThat(said.exit()).isZero();
        assertThat(Terminal.run(
                                "mutants",
                                procedure,
                                "--json",
                                "--accept",
                                here.resolve("accepted.txt").toString())
                        .out())
                .contains("\"accepted\" : \"the caliper tells no more\"");
    }

    @Test
    void a_list_that_is_no_longer_true_is_refused() throws IOException {
        String list = file("accepted.txt", """
                spring.inspection check long_enough: critical -> major because it is not that grave
                spring.inspection check long_enough: 18.5 mm -> 17.5 mm
                spring.inspection check sound: whole -> yes because everybody sees that
                """);

        Golden.hold(
                "mutants/spring-wrong-list",
                Terminal.run("mutants", procedure, "--accept", list).whole(here));
    }

    @Test
    void rehearsals_that_surprise_beforehand_notice_nothing() throws IOException {
        String surprising = file("surprising.inspection", SPRING.replace("release ready", "release hold"));

        Golden.hold(
                "mutants/spring-surprising", Terminal.run("mutants", surprising).whole(here));
    }

    @Test
    void files_that_cannot_be_used_are_told_all_at_once() throws IOException {
        String wrong = file("wrong.inspection", SPRING.replace("require whole", "require hole"));
        String missing = here.resolve("missing.inspection").toString();

        Golden.hold(
                "mutants/not-usable",
                Terminal.run(
                                "mutants",
                                wrong,
                                missing,
                                "--accept",
                                here.resolve("none.txt").toString())
                        .whole(here));
    }
}

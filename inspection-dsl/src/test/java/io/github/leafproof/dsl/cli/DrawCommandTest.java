package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrawCommandTest {

    private static final String SHEET =
            Terminal.BENCH.resolve("sheets/0412-trap.json").toString();

    @TempDir
    private Path here = Path.of("");

    private static Terminal draw(String... more) {
        String procedure = Terminal.BENCH.resolve("first_look.inspection").toString();
        return Terminal.run(
                Stream.concat(Stream.of("draw", procedure), Stream.of(more)).toArray(String[]::new));
    }

    @ParameterizedTest
    @CsvSource({"a.svg, <?xml", "b.dot, digraph procedure {", "c.MMD, flowchart LR"})
    void the_ending_of_the_name_says_what_is_drawn(String name, String begins) throws IOException {
        Path file = here.resolve(name);

        Terminal said = draw("-o", file.toString());

        assertThat(said.exit()).isZero();
        assertThat(said.out()).isEqualTo(file + ": drawn\n");
        assertThat(Files.readString(file)).startsWith(begins);
    }

    @Test
    void without_a_file_the_picture_goes_to_standard_output_and_a_sheet_adds_outcomes() {
        assertThat(draw().out()).startsWith("<?xml").doesNotContain("PASSES");
        assertThat(draw("--sheet", SHEET).out()).contains(">PASSES</text>").contains(">OPEN</text>");
        assertThat(draw("--sheet", SHEET, "--units", "inch").out()).contains("70.5 °F");
    }

    @Test
    void a_picture_of_another_kind_cannot_be_drawn_and_everything_wrong_is_told_at_once() {
        Terminal said = draw("-o", here.resolve("x.png").toString(), "--tray", "t.json");

        assertThat(said.exit()).isEqualTo(2);
        Golden.hold("cli/draw-wrong", said.whole(here));
    }

    @Test
    void a_picture_is_never_drawn_over_what_it_is_drawn_from() throws IOException {
        Terminal.copyBench(here);
        Path procedure = here.resolve("first.svg");
        Files.move(here.resolve("first_look.inspection"), procedure);
        String before = Files.readString(procedure);

        Terminal said = Terminal.run("draw", procedure.toString(), "-o", procedure.toString());

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains("-o would write the picture over");
        assertThat(procedure).hasContent(before);
    }

    @Test
    void a_picture_that_cannot_be_written_is_bad_input() {
        Terminal said = draw("-o", here.resolve("no/such/folder.svg").toString());

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains("LP610");
    }

    @Test
    void a_procedure_or_a_sheet_with_mistakes_is_not_drawn() {
        Terminal noSheet = draw("--sheet", here.resolve("none.json").toString());
        Terminal noProcedure =
                Terminal.run("draw", here.resolve("none.inspection").toString());

        assertThat(noSheet.exit()).isEqualTo(2);
        assertThat(noSheet.out()).isEmpty();
        assertThat(noSheet.err()).contains("LP601");
        assertThat(noProcedure.exit()).isEqualTo(2);
        assertThat(noProcedure.out()).isEmpty();
    }
}

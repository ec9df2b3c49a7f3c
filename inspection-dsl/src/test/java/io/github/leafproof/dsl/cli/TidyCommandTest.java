package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TidyCommandTest {

    private static final String TIDY = """
            procedure small "Small" revision 1

            // What a look tells.
            observe sound : yes/no ask "Does it look sound?"
            check looks_sound "It looks sound" major { require sound }
            """;
    private static final String UNTIDY = TIDY.replace(" :", ":").replace("{ require sound }", "{\nrequire  sound}");
    private static final String WRONG = "procedure wrong \"Wrong\"   revision 1\ncheck a \"A\" {require b}\n";

    @TempDir
    private Path here = Path.of("");

    private Path file(String name, String text) throws IOException {
        return Files.writeString(here.resolve(name), text);
    }

    @Test
    void an_untidy_file_is_tidied_and_a_tidy_one_is_not_even_written() throws IOException {
        Path untidy = file("untidy.inspection", UNTIDY);
        Path tidy = file("tidy.inspection", TIDY);
        FileTime long_ago = FileTime.from(Instant.parse("2026-01-02T03:04:05Z"));
        Files.setLastModifiedTime(tidy, long_ago);

        Terminal said = Terminal.run("tidy", untidy.toString(), tidy.toString());

        assertThat(said).isEqualTo(new Terminal(0, untidy + ": tidied\n", ""));
        assertThat(untidy).hasContent(TIDY);
        assertThat(Files.getLastModifiedTime(tidy)).isEqualTo(long_ago);
        assertThat(Terminal.run("tidy", untidy.toString())).isEqualTo(new Terminal(0, "", ""));
    }

    @Test
    void a_check_lists_what_is_not_tidy_and_changes_nothing() throws IOException {
        Path untidy = file("untidy.inspection", UNTIDY);
        Path tidy = file("tidy.inspection", TIDY);

        Terminal said = Terminal.run("tidy", "--check", tidy.toString(), untidy.toString());

        assertThat(said).isEqualTo(new Terminal(1, untidy + ": not tidy\n", ""));
        assertThat(untidy).hasContent(UNTIDY);
        assertThat(Terminal.run("tidy", "--check", tidy.toString())).isEqualTo(new Terminal(0, "", ""));
    }

    @Test
    void a_byte_order_mark_and_line_ends_of_another_system_are_not_tidy() throws IOException {
        Path marked = file("marked.inspection", "\uFEFF" + TIDY);
        Path windows = file("windows.inspection", TIDY.replace("\n", "\r\n"));

        assertThat(Terminal.run("tidy", "--check", marked.toString(), windows.toString())
                        .exit())
                .isEqualTo(1);
        assertThat(Terminal.run("tidy", marked.toString(), windows.toString()).exit())
                .isZero();
        assertThat(Files.readAllBytes(marked)).isEqualTo(TIDY.getBytes(StandardCharsets.UTF_8));
        assertThat(Files.readAllBytes(windows)).isEqualTo(TIDY.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void a_procedure_with_mistakes_is_left_alone_and_the_others_are_tidied() throws IOException {
        Path wrong = file("wrong.inspection", WRONG);
        Path untidy = file("untidy.inspection", UNTIDY);

        Terminal said = Terminal.run("tidy", wrong.toString(), untidy.toString());

        Golden.hold("cli/tidy-with-mistakes", said.whole(here));
        assertThat(wrong).hasContent(WRONG);
        assertThat(untidy).hasContent(TIDY);
    }

    @Test
    void a_file_that_is_not_there_is_bad_input() {
        Terminal said = Terminal.run(
                "tidy", "--check", here.resolve("absent.inspection").toString());

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains("LP101");
    }
}

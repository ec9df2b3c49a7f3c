package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** The small programs do what they say. */
class ProgramsTest {

    private static String printed(Consumer<PrintStream> program) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        program.accept(new PrintStream(bytes, true, StandardCharsets.UTF_8));
        return bytes.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
    }

    @Test
    void a_procedure_is_walked_as_it_is_written() {
        assertThat(printed(out -> ListObservations.list(Project.BENCH.resolve("first_look.inspection"), out)))
                .contains("""
                        Cold
                          head, with infrared, line 35
                          room, with infrared, line 40
                        Valve lash, cold
                          lash[valve], with leaves, line 35
                        Lash against the card
                        Carburettor, dry
                          high_needle, with needle_turns, line 9
                        """);
    }

    @Test
    void a_procedure_is_drafted_for_the_valves_of_a_program() {
        assertThat(printed(out -> DraftAProcedure.draft(List.of("intake", "exhaust"), out)))
                .startsWith("procedure lashes \"Valve lash\" revision 1\n")
                .contains("for valve in intake, exhaust {\n")
                .endsWith("// checks: 2\n");
    }
}

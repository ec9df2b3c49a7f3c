package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A program that keeps a journal is killed, and not asked to end: its power is cut, so to speak. */
class JournalKilledTest {

    private static final int SHEETS = 20;
    private static final int KILLS_EACH = 5;
    private static final int MOST_ACKNOWLEDGED = 15;

    private static final JournalHead HEAD = new JournalHead(
            new JobSheet(
                    "1", "depths", 1, null, null, SheetEngine.unknown(), LocalDate.of(2026, 3, 4), null, List.of()),
            Journals.HEAD.procedure(),
            List.of(),
            Journals.HEAD.card(),
            Journals.HEAD.tray());

    @TempDir
    private Path folder = Path.of("");

    /** It acknowledges each entry by its number, in a line of its output. */
    private static Process atWork(Path sheet) throws IOException {
        return new ProcessBuilder(command(sheet))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private static List<String> command(Path sheet) {
        return List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto",
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-Xmx32m",
                "-cp",
                classPath(),
                KeepsAJournal.class.getName(),
                sheet.toString());
    }

    /** Some who run tests load them from elsewhere than the class path. */
    private static String classPath() {
        Stream<String> loaded = JournalKilledTest.class.getClassLoader() instanceof URLClassLoader loader
                ? Arrays.stream(loader.getURLs()).map(URL::getPath)
                : Stream.of();
        return Stream.concat(loaded, Stream.of(System.getProperty("java.class.path")))
                .collect(Collectors.joining(File.pathSeparator));
    }

    @Test
    void killed_a_hundred_times_in_the_middle_of_its_work_it_has_lost_nothing_that_it_acknowledged() throws Exception {
        Random random = new Random(1);
        int kills = 0;
        for (int number = 1; number <= SHEETS; number++) {
            Path sheet = folder.resolve(number + ".json");
            Journal.begin(sheet, HEAD).orElseThrow().close();
            int before = 0;
            for (int kill = 1; kill <= KILLS_EACH; kill++) {
                int acknowledged = killedAtWork(sheet, random.nextInt(MOST_ACKNOWLEDGED));
                int kept = kept(sheet);
                assertThat(kept)
                        .as("sheet " + number + ", kill " + kill)
                        .isGreaterThanOrEqualTo(Math.max(before, acknowledged));
                before = kept;
                kills++;
            }
        }
        assertThat(kills).isGreaterThanOrEqualTo(100);
    }

    /** The last entry that a program acknowledged before it was killed, at the earliest after so many. */
    private static int killedAtWork(Path sheet, int enough) throws Exception {
        Process program = atWork(sheet);
        int acknowledged = 0;
        try (BufferedReader said = program.inputReader(UTF_8)) {
            String line = said.readLine();
            for (int i = 0; i < enough && line != null; i++) {
                line = said.readLine();
            }
            assertThat(line).as("the program works until it is killed").isNotNull();
            // The process itself would close its output as well, and there may be more in it.
            program.toHandle().destroyForcibly();
            for (; line != null; line = said.readLine()) {
                // A last number may be cut off, which makes it less.
                acknowledged = Math.max(acknowledged, Integer.parseInt(line));
            }
        }
        assertThat(program.waitFor(1, TimeUnit.MINUTES)).isTrue();
        return acknowledged;
    }

    /** How many entries are there, all of them whole and in their order. */
    private static int kept(Path sheet) {
        try (Journal journal = Journal.open(sheet).orElseThrow()) {
            List<Entry> entries = journal.acts().stream()
                    .filter(Act.Entered.class::isInstance)
                    .map(act -> ((Act.Entered) act).entry())
                    .toList();
            for (int i = 0; i < entries.size(); i++) {
                assertThat(entries.get(i).given()).isEqualTo(new Given.Words((i + 1) + " mm"));
            }
            return entries.size();
        }
    }

    @Test
    void while_a_program_keeps_it_no_other_gets_at_it_and_is_told_which_one_it_is() throws Exception {
        Path sheet = folder.resolve("0412.json");
        Journal.begin(sheet, HEAD).orElseThrow().close();
        Process program = atWork(sheet);
        try (BufferedReader said = program.inputReader(UTF_8)) {
            assertThat(said.readLine()).isEqualTo("1");

            assertThat(Journal.open(sheet).problems().toString())
                    .contains("LP760", "in another program, by mk since", "(process " + program.pid() + ")");
        } finally {
            program.destroyForcibly();
        }
        assertThat(program.waitFor(1, TimeUnit.MINUTES)).isTrue();
        assertThat(kept(sheet)).isPositive();
    }

    /** A program that may write files of a few thousand bytes only meets the end of its disk soon. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void when_the_disk_is_full_it_says_so_and_has_all_that_it_acknowledged_and_nothing_by_half() throws Exception {
        Path sheet = folder.resolve("0412.json");
        Path errors = folder.resolve("errors.txt");
        Journal.begin(sheet, HEAD).orElseThrow().close();
        List<String> command = new ArrayList<>(List.of("sh", "-c", "ulimit -f 6 && exec \"$@\"", "sh"));
        command.addAll(command(sheet));

        Process program =
                new ProcessBuilder(command).redirectError(errors.toFile()).start();
        int acknowledged = 0;
        try (BufferedReader said = program.inputReader(UTF_8)) {
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                acknowledged = Integer.parseInt(line);
            }
        }

        assertThat(program.waitFor(1, TimeUnit.MINUTES)).isTrue();
        assertThat(program.exitValue()).isEqualTo(1);
        assertThat(Files.readString(errors))
                .contains("LP767: this cannot be written to the journal, and was not taken");
        assertThat(acknowledged).isPositive();
        assertThat(kept(sheet)).isEqualTo(acknowledged);
        Read<Journal> again = Journal.open(sheet);
        again.orElseThrow().close();
        assertThat(again.problems()).isEmpty();
    }
}

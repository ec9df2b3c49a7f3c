package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What docs/ci.md tells a build to run: typed in a copy of the bench, or at least understood by the program. */
class CiPageTest {

    private static final Path PAGE = Path.of("..", "docs", "ci.md");
    private static final Pattern SCRIPT = Pattern.compile("^```sh\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern COMMAND = Pattern.compile("\\bleafproof ((?:[a-z]+)(?: [^`|>\n]+)?)");

    @TempDir
    private Path bench;

    @Test
    void the_script_passes_on_the_bench() throws IOException {
        Terminal.copyBench(bench);
        Matcher script = SCRIPT.matcher(Files.readString(PAGE));
        assertThat(script.find()).isTrue();
        List<String> commands = script.group(1)
                .lines()
                .filter(line -> line.startsWith("leafproof "))
                .toList();

        for (String command : commands) {
            Terminal said = Terminal.run(typed(command.substring("leafproof ".length())));
            assertThat(said.exit()).as(command + "\n" + said.err()).isZero();
        }

        assertThat(commands).hasSize(3);
        assertThat(bench.resolve("rehearsals.xml")).isNotEmptyFile();
    }

    @Test
    void every_command_on_the_page_is_one_that_the_program_knows() throws IOException {
        List<String> unknown = new ArrayList<>();
        int asked = 0;
        Matcher command = COMMAND.matcher(Files.readString(PAGE));
        while (command.find()) {
            String verb = command.group(1).split(" ", -1)[0];
            String help = Terminal.run(verb, "--help").out();
            asked++;
            Pattern.compile("--[a-z-]+")
                    .matcher(command.group(1))
                    .results()
                    .map(option -> option.group())
                    .filter(option -> !help.contains(option))
                    .forEach(option -> unknown.add(verb + " " + option));
            if (!help.startsWith("Usage: leafproof " + verb)) {
                unknown.add(verb);
            }
        }

        assertThat(unknown).isEmpty();
        assertThat(asked).isGreaterThan(8);
    }

    /** The words of a command as a shell in the folder of the bench would hand them over. */
    private String[] typed(String command) throws IOException {
        List<String> words = new ArrayList<>();
        for (String word : command.split(" ", -1)) {
            if (word.contains("*")) {
                words.addAll(matching(word));
            } else {
                boolean file = word.equals(".") || word.endsWith(".xml");
                words.add(file ? bench.resolve(word).normalize().toString() : word);
            }
        }
        return words.toArray(String[]::new);
    }

    private List<String> matching(String glob) throws IOException {
        PathMatcher wanted = FileSystems.getDefault().getPathMatcher("glob:" + glob);
        try (Stream<Path> files = Files.list(bench)) {
            return files.filter(file -> wanted.matches(file.getFileName()))
                    .map(Path::toString)
                    .sorted()
                    .toList();
        }
    }
}

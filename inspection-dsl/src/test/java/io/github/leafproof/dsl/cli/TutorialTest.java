package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.layout.Layout;
import io.github.leafproof.dsl.source.SourceText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Does what the tutorial and other pages say, in its order, in a copy of the bench, and holds what the commands print against the page. The blocks of
 * the page say what they are: {@code inspection FILE} is a whole file, and {@code inspection-used FILE} one that others use, {@code inspection-part FILE} goes to its end,
 * {@code inspection-slip FILE} is a mistake for the next command only. {@code sh} is typed, and the {@code text} behind
 * it is printed; a line {@code […]} in it stands for what is left out.
 */
class TutorialTest {

    private static final Path PAGE = Path.of("..", "docs", "tutorial.md");
    private static final Pattern FENCE =
            Pattern.compile("^```([a-z-]+) ?(\\S*)\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);
    /** As a shell takes them: blanks part words, but not within quotes. */
    private static final Pattern WORD = Pattern.compile("(?:\"[^\"]*\"|\\S)+");

    private static final String LEFT_OUT = "[…]";

    @TempDir
    private Path bench;

    private final List<String> unlike = new ArrayList<>();
    private final Map<String, String> sound = new HashMap<>();
    private @Nullable String printed;

    @ParameterizedTest
    @ValueSource(strings = {"tutorial.md", "reckon.md", "guide.md"})
    void every_step_prints_what_the_page_says(String name) throws IOException {
        Terminal.copyBench(bench);
        Path file = PAGE.resolveSibling(name);
        String page = Files.readString(file);
        String followed = FENCE.matcher(page).replaceAll(fence -> Matcher.quoteReplacement(follow(fence)));
        if (Boolean.getBoolean("golden.write")) {
            Files.writeString(file, followed);
        }
        assertThat(unlike).isEmpty();
        assertThat(Files.readString(file)).isEqualTo(followed);
    }

    @Test
    void no_command_is_typed_without_showing_what_it_prints() throws IOException {
        List<String> kinds = FENCE.matcher(Files.readString(PAGE))
                .results()
                .map(fence -> fence.group(1))
                .toList();
        for (int i = 0; i < kinds.size(); i++) {
            if (kinds.get(i).equals("sh")) {
                assertThat(kinds.get(i + 1)).as("behind command " + i).isEqualTo("text");
            }
        }
        assertThat(kinds).contains("inspection", "inspection-part", "inspection-slip", "sh");
    }

    @Test
    void what_a_beginner_sees_is_tidy() throws IOException {
        FENCE.matcher(Files.readString(PAGE))
                .results()
                .filter(fence -> Set.of("inspection", "inspection-used", "inspection-part")
                        .contains(fence.group(1)))
                .forEach(fence ->
                        assertThat(fence.group(3)).isEqualTo(Layout.of(SourceText.of(fence.group(2), fence.group(3)))));
    }

    private String follow(MatchResult fence) {
        String content = fence.group(3);
        switch (fence.group(1)) {
            case "inspection", "inspection-used", "json" -> change(fence.group(2), before -> content);
            case "inspection-part" -> change(fence.group(2), before -> before + "\n" + content);
            case "inspection-slip" -> slip(fence.group(2), content);
            case "sh" -> {
                printed = type(content.strip());
                putRight();
            }
            case "text" -> {
                return "```text\n" + held(content, String.valueOf(printed)) + "```";
            }
            default -> unlike.add("a block of an unknown kind: " + fence.group(1));
        }
        return fence.group();
    }

    private void change(String file, UnaryOperator<String> how) {
        write(file, how.apply(sound.getOrDefault(file, "")));
        sound.put(file, read(file));
    }

    private void slip(String file, String lines) {
        write(file, withSlip(sound.getOrDefault(file, ""), lines));
    }

    /** A mistake lasts for one command. */
    private void putRight() {
        sound.forEach(this::write);
    }

    private void write(String file, String content) {
        try {
            Files.writeString(bench.resolve(file), content);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    private String read(String file) {
        try {
            return Files.readString(bench.resolve(file));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Each line takes the place of the line with the same indent and first two words, or else goes to the end. */
    private static String withSlip(String before, String slip) {
        List<String> lines = new ArrayList<>(before.lines().toList());
        for (String line : slip.lines().toList()) {
            List<Integer> places = new ArrayList<>();
            for (int i = 0; i < lines.size(); i++) {
                if (start(lines.get(i)).equals(start(line))) {
                    places.add(i);
                }
            }
            if (places.size() == 1) {
                lines.set(places.get(0), line);
            } else {
                lines.add(line);
            }
        }
        return String.join("\n", lines) + "\n";
    }

    private static List<String> start(String line) {
        // The index of a loop may be what is forgotten.
        List<String> words = Arrays.asList(line.replaceAll("\\[\\w+]", "").split("(?<=\\S)\\s+"));
        return words.subList(0, Math.min(2, words.size()));
    }

    private String type(String command) {
        List<String> words = new ArrayList<>(WORD.matcher(command)
                .results()
                .map(word -> word.group().replace("\"", ""))
                .toList());
        assertThat(words.remove(0)).isEqualTo("../leafproof");
        Set<String> endings = Set.of("inspection", "json", "pem", "html");
        int from = words.indexOf("<");
        String lines = from < 0 ? "" : read(words.get(from + 1));
        String[] arguments = (from < 0 ? words : words.subList(0, from))
                .stream()
                        .map(word -> endings.contains(word.substring(word.lastIndexOf('.') + 1)) || word.equals("shop")
                                ? bench.resolve(word).toString()
                                : word)
                        .toArray(String[]::new);
        Terminal terminal = Terminal.typing(lines, arguments);
        assertThat(terminal.exit()).as(command + "\n" + terminal.err()).isNotEqualTo(Exit.OUR_MISTAKE.code());
        return (terminal.err() + terminal.out()).replace(bench + "/", "");
    }

    /** The printed text; where the page leaves parts of it out, the page as it is, if its parts are printed in this order. */
    private String held(String shown, String real) {
        if (!shown.contains(LEFT_OUT)) {
            return real;
        }
        int at = 0;
        for (String part : shown.split("(?m)^ *" + Pattern.quote(LEFT_OUT) + "\n", -1)) {
            int found = real.indexOf(part.stripTrailing(), at);
            if (found < 0) {
                unlike.add("not printed: " + part + "\nin\n" + real);
                return shown;
            }
            at = found + part.stripTrailing().length();
        }
        return shown;
    }
}

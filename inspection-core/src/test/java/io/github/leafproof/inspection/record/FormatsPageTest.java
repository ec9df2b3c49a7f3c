package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.inspection.engine.CardFact;
import io.github.leafproof.inspection.engine.CardFact.Keeper;
import io.github.leafproof.inspection.record.Problem.Level;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The page that describes the formats says what the program does. */
class FormatsPageTest {
    private final String page = read(Path.of("..", "docs", "formats.md"));

    @ParameterizedTest
    @EnumSource(Format.class)
    void the_pages_example_of_each_format_is_a_sound_file(Format format) {
        String word = format.schema().replace(".schema.json", "");
        MatchResult block = Pattern.compile("```json " + word + "\n(.*?)```", Pattern.DOTALL)
                .matcher(page)
                .results()
                .findFirst()
                .orElseThrow();

        assertThat(format.parse("formats.md", block.group(1).getBytes(UTF_8)).problems())
                .isEmpty();
        assertThat(Schemas.complaints(format, block.group(1))).isEmpty();
    }

    @Test
    void the_page_lists_every_mistake_by_its_code() {
        assertThat(Pattern.compile("(?m)^\\| LP[67].*$").matcher(page).results().map(MatchResult::group))
                .containsExactlyElementsOf(Stream.of(FileMistake.values())
                        .map(FormatsPageTest::row)
                        .toList());
    }

    private static String row(FileMistake mistake) {
        String warning = mistake.level() == Level.WARNING ? " (warning)" : "";
        return "| " + mistake.name() + " | " + mistake.meaning() + warning + " |";
    }

    @Test
    void the_page_tells_the_meaning_of_every_fact_a_card_can_state() {
        for (CardFact fact : CardFact.all()) {
            if (fact.keeper() == Keeper.CARD) {
                assertThat(page)
                        .containsPattern(
                                "\\| `" + fact.name() + "` \\| [^|]+ \\| " + Pattern.quote(fact.meaning()) + " \\|");
            }
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

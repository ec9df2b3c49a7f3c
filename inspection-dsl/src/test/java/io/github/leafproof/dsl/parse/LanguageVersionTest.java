package io.github.leafproof.dsl.parse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.LanguageVersion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LanguageVersionTest {

    private static final String PROCEDURE = """
            procedure small "Small" revision 1
            check fine "Fine" minor { require yes }
            """;

    private static Procedure compiled(String text) {
        return Procedure.compile(SourceText.of("small.inspection", text)).orElseThrow();
    }

    @Test
    void a_procedure_that_does_not_say_is_written_in_the_current_version() {
        assertThat(compiled(PROCEDURE).languageVersion()).isEqualTo(LanguageVersion.current());
        assertThat(compiled("language 1\n" + PROCEDURE).languageVersion()).isEqualTo(new LanguageVersion(1));
    }

    @Test
    void the_current_version_is_the_last_of_those_that_are_known() {
        assertThat(LanguageVersion.known()).isSorted().last().isEqualTo(LanguageVersion.current());
        assertThat(LanguageVersion.known()).allMatch(LanguageVersion::isKnown);
        assertThat(new LanguageVersion(2)).isGreaterThan(new LanguageVersion(1)).hasToString("language 2");
        assertThat(new LanguageVersion(2).isKnown()).isFalse();
    }

    @Test
    void every_known_version_is_read_and_a_later_one_is_refused() {
        for (LanguageVersion version : LanguageVersion.known()) {
            assertThat(compiled(version + "\n" + PROCEDURE).languageVersion()).isEqualTo(version);
        }
        assertThat(Procedure.compile(SourceText.of("small.inspection", "language 2\n" + PROCEDURE))
                        .diagnostics())
                .singleElement()
                .satisfies(said -> assertThat(said.code()).hasToString("LP139"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "01", "-1", "1.0", "", "one", "12345678901"})
    void what_is_no_number_of_a_version_is_none(String digits) {
        assertThat(LanguageVersion.written(digits)).isEmpty();
    }

    @Test
    void versions_count_from_one() {
        assertThatThrownBy(() -> new LanguageVersion(0)).hasMessageContaining("count from 1");
    }
}

package io.github.leafproof.inspection.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The words of files and reports; a Turkish computer must write them no differently. */
class WordsTest {
    @Test
    void outcomes_are_spelled_as_in_a_report() {
        assertThat(Stream.of(Outcome.values()).map(Outcome::word))
                .containsExactly(
                        "passes",
                        "tolerated",
                        "fails",
                        "open",
                        "contradicted",
                        "untested",
                        "blocked",
                        "not_applicable");
        for (Outcome outcome : Outcome.values()) {
            assertThat(Outcome.named(outcome.word())).contains(outcome);
        }
        assertThat(Outcome.named("PASSES")).isEmpty();
    }

    @Test
    void severities_are_spelled_as_in_a_procedure() {
        assertThat(Stream.of(Severity.values()).map(Severity::word)).containsExactly("critical", "major", "minor");
        assertThat(Severity.named("minor")).contains(Severity.MINOR);
        assertThat(Severity.named("fatal")).isEmpty();
    }

    @Test
    void releases_are_spelled_as_in_a_report() {
        assertThat(Stream.of(Release.values()).map(Release::word))
                .containsExactly("ready", "hold", "reject", "unfinished");
        assertThat(Release.named("unfinished")).contains(Release.UNFINISHED);
        assertThat(Release.named("go")).isEmpty();
    }

    @Test
    void only_what_is_shown_or_does_not_concern_the_engine_opens_a_gate() {
        assertThat(Stream.of(Outcome.values()).filter(Outcome::letsThrough))
                .containsExactly(Outcome.PASSES, Outcome.TOLERATED, Outcome.NOT_APPLICABLE);
    }
}

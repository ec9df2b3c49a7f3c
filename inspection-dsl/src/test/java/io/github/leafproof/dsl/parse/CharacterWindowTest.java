package io.github.leafproof.dsl.parse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.leafproof.dsl.source.SourceText;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.IntStream;
import org.antlr.v4.runtime.misc.Interval;
import org.junit.jupiter.api.Test;

/** A stretch of a text reads as the parser generator's own stream reads that stretch when it stands alone. */
class CharacterWindowTest {

    @Property(tries = 300, seed = "1")
    void it_looks_ahead_and_back_as_the_generators_own_stream_does(
            @ForAll @AlphaChars @StringLength(max = 6) String before,
            @ForAll @AlphaChars @StringLength(max = 8) String within,
            @ForAll @AlphaChars @StringLength(max = 6) String behind,
            @ForAll @Size(max = 12) List<@IntRange(min = -10, max = 10) Integer> looks) {
        int start = before.length();
        CharStream window =
                new CharacterWindow(SourceText.of("any", before + within + behind), start, start + within.length());
        CharStream alone = CharStreams.fromString(within);

        for (int look : looks) {
            if (look != 0) { // What stands at 0 is nothing: the next is 1, and the last is -1.
                assertThat(window.LA(look)).isEqualTo(alone.LA(look));
            }
            assertThat(window.index() - start).isEqualTo(alone.index());
            if (alone.LA(1) != IntStream.EOF) {
                window.consume();
                alone.consume();
            }
        }
        assertThat(window.size() - start).isEqualTo(alone.size());
        assertThat(window.getText(Interval.of(start, start + within.length() - 1)))
                .isEqualTo(within);
    }

    @Test
    void nothing_is_read_past_its_end() {
        CharStream window = new CharacterWindow(SourceText.of("any", "abc"), 1, 1);

        assertThat(window.LA(1)).isEqualTo(IntStream.EOF);
        assertThatThrownBy(window::consume).isInstanceOf(IllegalStateException.class);
    }
}

package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever a file holds, it is read or refused with reasons: no exception, no endless wait, no full memory. */
class HostileFilesTest {

    @ParameterizedTest
    @EnumSource(Format.class)
    void a_file_cut_off_at_any_byte_is_refused(Format format) throws IOException {
        byte[] whole = Files.readString(Good.file(format)).strip().getBytes(UTF_8);

        for (int length = 0; length < whole.length; length++) {
            Read<?> read = format.parse("cut.json", Arrays.copyOf(whole, length));

            assertThat(read).as("cut after %d bytes", length).isInstanceOf(Read.Refused.class);
            assertThat(read.problems()).hasSize(1);
        }
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void ten_megabytes_of_noise_are_refused(Format format) {
        byte[] noise = new byte[10 * 1024 * 1024];
        new Random(15).nextBytes(noise);

        assertThat(format.parse("noise.json", noise)).isInstanceOf(Read.Refused.class);
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void ten_thousand_brackets_in_each_other_are_refused_before_the_stack_is_full(Format format) {
        for (String open : List.of("[", "{\"a\":", "[{\"a\":")) {
            Read<?> read = format.parse("deep.json", open.repeat(10_000).getBytes(UTF_8));

            assertThat(read.problems()).extracting(Problem::code).containsExactly("LP608");
        }
    }

    @Test
    void a_million_values_are_more_than_any_file_holds() {
        String many = "[" + "1,".repeat(1_500_000) + "1]";

        assertThat(SheetFile.parse("many.json", many.getBytes(UTF_8)).problems())
                .extracting(Problem::code)
                .containsExactly("LP608");
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void of_very_many_mistakes_the_first_are_told_and_that_there_are_more(Format format) {
        StringBuilder many =
                new StringBuilder("{\"format\": \"" + (format == Format.SEAL ? Seal.FORMAT : Report.FORMAT) + "\"");
        for (int i = 0; i < 20_000; i++) {
            many.append(", \"zzzzzzzzzz").append(i).append("\": 1");
        }

        List<Problem> problems = format.parse(
                        "many.json", many.append('}').toString().getBytes(UTF_8))
                .problems();

        assertThat(problems).hasSize(Findings.MOST + 1);
        assertThat(problems.get(Findings.MOST).code()).isEqualTo("LP609");
    }

    @Property(tries = 300, seed = "1")
    void no_noise_makes_a_reader_stumble(@ForAll byte[] noise) {
        for (Format format : Format.values()) {
            assertThat(format.parse("noise.json", noise)).isInstanceOf(Read.Refused.class);
        }
    }

    @Property(tries = 300, seed = "1")
    void one_byte_changed_anywhere_makes_no_reader_stumble(
            @ForAll @IntRange(max = 100_000) int where, @ForAll byte put, @ForAll @From("formats") Format format)
            throws IOException {
        byte[] bytes = Files.readAllBytes(Good.file(format));
        bytes[where % bytes.length] = put;

        Read<?> read = format.parse("changed.json", bytes);

        assertThat(read instanceof Read.Done || !read.problems().isEmpty()).isTrue();
    }

    @Provide
    Arbitrary<Format> formats() {
        return Arbitraries.of(Format.values());
    }
}

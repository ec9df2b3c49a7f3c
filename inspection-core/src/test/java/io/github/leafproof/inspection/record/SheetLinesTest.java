package io.github.leafproof.inspection.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SheetLinesTest {

    private static List<SheetLine> lines(String text, int longest) {
        InputStream bytes = new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
        List<SheetLine> lines = new ArrayList<>();
        SheetLines.of("archive.jsonl", bytes, longest).forEachRemaining(lines::add);
        return lines;
    }

    private static String sheet(String name) {
        return "{\"sheet\": \"" + name + "\", \"procedure\": \"lash\", \"revision\": 1, \"engine\": {}, "
                + "\"date\": \"2026-03-03\", \"entries\": []}";
    }

    @Test
    void each_line_is_a_sheet_and_the_last_needs_no_line_end() {
        List<SheetLine> lines = lines(sheet("1") + "\n" + sheet("2") + "\r\n\n  \n" + sheet("3"), 1000);

        assertThat(lines).extracting(SheetLine::number).containsExactly(1L, 2L, 5L);
        assertThat(lines)
                .extracting(line -> line.sheet().orElseThrow().content().sheet())
                .containsExactly("1", "2", "3");
    }

    @Test
    void an_empty_archive_has_no_sheet() {
        assertThat(lines("", 1000)).isEmpty();
        assertThat(lines("\n \n", 1000)).isEmpty();
    }

    @Test
    void a_mistake_is_told_at_its_line_of_the_archive() {
        List<SheetLine> lines = lines(sheet("1") + "\n" + sheet("2").replace("[]", "[{\"observe\": 7}]") + "\n", 1000);

        assertThat(lines.get(1).sheet().problems())
                .extracting(Problem::toString)
                .first()
                .asString()
                .startsWith("archive.jsonl:2:100 $.entries[0]: error LP651: this entry gives nothing");
        assertThat(lines.get(0).sheet().orElseThrow().place("$.date")).isEqualTo("1:74 $.date");
    }

    @Test
    void half_a_sheet_and_bytes_that_are_no_text_are_told_at_their_line() {
        List<SheetLine> lines = lines(sheet("1") + "\n" + sheet("2").substring(0, 40) + "\n" + sheet("3"), 1000);

        assertThat(lines.get(1).sheet().problems().get(0).toString())
                .isEqualTo("archive.jsonl:2:41: error LP607: the file ends in the middle\n"
                        + "   help: it was cut off, or a quote, brace or bracket was never closed");
        assertThat(lines.get(2).sheet().value()).isPresent();
        byte[] noText = {'{', '"', (byte) 0xFF};
        assertThat(SheetLine.of("archive.jsonl", 7, noText)
                        .sheet()
                        .problems()
                        .get(0)
                        .place())
                .isEqualTo("7:3");
    }

    @Test
    void a_line_longer_than_any_sheet_is_refused_and_the_next_one_is_read() {
        String huge = "{\"sheet\": \"" + "x".repeat(200_000);

        List<SheetLine> lines = lines(sheet("1") + "\n" + huge + "\n" + sheet("3"), 100_000);

        assertThat(lines.get(1).size()).isZero();
        assertThat(lines.get(1).sheet().problems())
                .extracting(Problem::toString)
                .containsExactly("archive.jsonl:2:1: error LP604: the line is larger than 100000 bytes\n"
                        + "   help: no job sheet is this large; each sheet stands in a line of its own");
        assertThat(lines.get(2).sheet().orElseThrow().content().sheet()).isEqualTo("3");
    }

    @Test
    void a_line_may_be_as_long_as_a_file() {
        byte[] oneTooMany = new byte[FileBytes.MOST + 1];

        assertThat(SheetLines.of("archive.jsonl", new ByteArrayInputStream(oneTooMany))
                        .next()
                        .sheet()
                        .problems()
                        .get(0)
                        .message())
                .isEqualTo("the line is larger than 16 MiB");
    }

    @Test
    void a_disk_that_fails_half_way_is_told_after_the_sheets_before_it() {
        InputStream failing = new InputStream() {
            private final byte[] bytes = (sheet("1") + "\n").getBytes(StandardCharsets.UTF_8);
            private int at;

            @Override
            public int read() throws IOException {
                throw new IOException("asked for one byte");
            }

            @Override
            public int read(byte[] into, int from, int most) throws IOException {
                if (at == bytes.length) {
                    throw new IOException("the disk is gone");
                }
                System.arraycopy(bytes, 0, into, from, bytes.length);
                at = bytes.length;
                return bytes.length;
            }
        };
        SheetLines lines = SheetLines.of("archive.jsonl", failing);

        assertThat(lines.next().sheet().value()).isPresent();
        assertThat(lines.next().sheet().problems().get(0).toString())
                .startsWith("archive.jsonl:2:1: error LP603: the file cannot be read any further than this line");
        assertThatThrownBy(lines::next).isInstanceOf(NoSuchElementException.class);
    }

    @Property(tries = 200)
    void the_lines_are_those_of_the_text_wherever_the_reader_has_to_stop(
            @ForAll @Size(max = 20) List<@IntRange(max = 3) Integer> kinds,
            @ForAll @IntRange(min = 1, max = 40) int step)
            throws IOException {
        List<String> texts = kinds.stream()
                .map(kind -> List.of("", "x", " \t", "ü".repeat(30)).get(kind))
                .toList();
        byte[] all = String.join("\n", texts).getBytes(StandardCharsets.UTF_8);
        InputStream inSteps = new ByteArrayInputStream(all) {
            @Override
            public int read(byte[] into, int from, int most) {
                return super.read(into, from, Math.min(step, most));
            }
        };
        SheetLines lines = SheetLines.of("archive.jsonl", inSteps);
        List<String> found = new ArrayList<>();
        lines.forEachRemaining(line -> found.add(line.number() + ":" + line.size()));

        List<String> expected = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            if (!texts.get(i).isBlank()) {
                expected.add((i + 1) + ":" + texts.get(i).getBytes(StandardCharsets.UTF_8).length);
            }
        }
        assertThat(found).isEqualTo(expected);
        assertThat(lines.taken()).isEqualTo(all.length);
    }
}

package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.DictionaryFile;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a fuzzer makes of the four formats is read or refused with reasons. A build tries the sound files and whatever
 * fuzzing has found so far; DEVELOPERS.md tells how to look further.
 */
class FuzzedFilesTest {

    private static final Pattern PLACE = Pattern.compile("(\\d+):(\\d+)(?: \\$.*)?", Pattern.DOTALL);

    static Stream<byte[]> cards() throws IOException {
        return Stream.of(Files.readAllBytes(Good.CARD));
    }

    static Stream<byte[]> trays() throws IOException {
        return Stream.of(Files.readAllBytes(Good.TRAY));
    }

    static Stream<byte[]> sheets() throws IOException {
        return Stream.of(Files.readAllBytes(Good.SHEET));
    }

    static Stream<byte[]> reports() throws IOException {
        return Stream.of(Files.readAllBytes(Good.REPORT));
    }

    @MethodSource("cards")
    @DictionaryFile(resourcePath = "words.dict")
    @FuzzTest(maxDuration = "10m")
    void card(byte[] file) {
        assertReadOrRefused(Format.ENGINE_CARD, file);
    }

    @MethodSource("trays")
    @DictionaryFile(resourcePath = "words.dict")
    @FuzzTest(maxDuration = "10m")
    void tray(byte[] file) {
        assertReadOrRefused(Format.GAUGE_TRAY, file);
    }

    @MethodSource("sheets")
    @DictionaryFile(resourcePath = "words.dict")
    @FuzzTest(maxDuration = "10m")
    void sheet(byte[] file) {
        assertReadOrRefused(Format.JOB_SHEET, file);
    }

    @MethodSource("reports")
    @DictionaryFile(resourcePath = "words.dict")
    @FuzzTest(maxDuration = "10m")
    void report(byte[] file) {
        assertReadOrRefused(Format.REPORT, file);
        ReportFile.parse("fuzzed.json", file).value().ifPresent(report -> {
            String json = ReportFile.toJson(report.content());
            Report again = ReportFile.parse("again.json", json.getBytes(UTF_8))
                    .orElseThrow()
                    .content();
            assertThat(again).isEqualTo(report.content());
            assertThat(ReportFile.toJson(again)).isEqualTo(json);
        });
    }

    private static void assertReadOrRefused(Format format, byte[] file) {
        Read<?> read = format.parse("fuzzed.json", file);

        assertThat(format.parse("fuzzed.json", file).problems()).isEqualTo(read.problems());
        List<String> lines = new String(file, UTF_8).lines().toList();
        for (Problem problem : read.problems()) {
            assertThat(FileMistake.valueOf(problem.code()).level()).isEqualTo(problem.level());
            assertThat(problem.message()).isNotBlank();
            if (!problem.place().isEmpty()) {
                assertInside(problem.place(), lines);
            }
        }
    }

    /** A place is a line of the file and a column of that line, or the place behind its last sign. */
    private static void assertInside(String place, List<String> lines) {
        Matcher matcher = PLACE.matcher(place);
        assertThat(matcher.matches()).as(place).isTrue();
        int line = Integer.parseInt(matcher.group(1));
        assertThat(line).as(place).isBetween(1, lines.size() + 1);
        String there = line > lines.size() ? "" : lines.get(line - 1);
        assertThat(Integer.parseInt(matcher.group(2)))
                .as(place)
                .isBetween(1, there.codePointCount(0, there.length()) + 2);
    }
}

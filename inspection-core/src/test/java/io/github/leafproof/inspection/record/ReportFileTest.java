package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFileTest {
    @TempDir
    private Path folder;

    @Test
    void a_report_is_written_as_agreed_to_the_byte() throws IOException {
        assertThat(ReportFile.toJson(Good.report())).isEqualTo(Files.readString(Good.REPORT));
    }

    @Test
    void a_report_read_back_is_the_report_that_was_written() {
        Path file = folder.resolve("0412.json");

        assertThat(ReportFile.write(file, Good.report())).isEmpty();

        assertThat(ReportFile.read(file).orElseThrow().content()).isEqualTo(Good.report());
    }

    @Test
    void a_report_replaces_the_one_before_and_leaves_nothing_else_behind() throws IOException {
        Path file = folder.resolve("0412.json");
        Files.writeString(file, "the old one");

        assertThat(ReportFile.write(file, Good.report())).isEmpty();

        assertThat(Files.readString(file)).isEqualTo(ReportFile.toJson(Good.report()));
        assertThat(names(folder)).containsExactly("0412.json");
    }

    @Test
    void a_report_that_cannot_take_its_place_leaves_what_is_there_whole() throws IOException {
        Path inTheWay = Files.createDirectory(folder.resolve("0412.json"));
        Path inside = Files.writeString(inTheWay.resolve("old.txt"), "the old one");

        List<String> problems = problems(inTheWay);

        assertThat(problems).hasSize(1);
        assertThat(problems.get(0))
                .endsWith("0412.json: error LP610: a folder of this name is in the way\n   help: name a file in it");
        assertThat(Files.readString(inside)).isEqualTo("the old one");
        assertThat(names(folder)).containsExactly("0412.json");
    }

    @Test
    void bytes_that_cannot_be_put_down_leave_the_old_file_whole_and_no_rest_behind() throws IOException {
        // A name at the file system's limit: the target can exist, the longer temporary name beside it cannot.
        Path file = Files.writeString(folder.resolve("r".repeat(250) + ".json"), "the old one");

        assertThat(problems(file)).singleElement().asString().contains("error LP610: the file cannot be written");

        assertThat(Files.readString(file)).isEqualTo("the old one");
        assertThat(names(folder)).containsExactly(file.getFileName().toString());
    }

    @Test
    void a_report_into_a_folder_that_is_not_there_says_so() {
        assertThat(problems(folder.resolve("reports").resolve("0412.json")))
                .singleElement()
                .asString()
                .contains("error LP610: its folder does not exist")
                .contains("help: make the folder \"");
    }

    @Test
    void half_a_character_does_not_keep_a_report_from_being_written() {
        Report report = Good.report();
        Report odd = new Report(
                report.procedure(),
                report.sheet(),
                report.card(),
                report.tray(),
                report.engine(),
                report.date(),
                report.release(),
                "half \uD83D of it",
                report.checks(),
                report.next(),
                report.cautions(),
                report.notes());
        Path file = folder.resolve("odd.json");

        assertThat(ReportFile.write(file, odd)).isEmpty();

        assertThat(ReportFile.read(file).orElseThrow().content().releaseReason())
                .isEqualTo("half ? of it");
    }

    @Test
    void what_has_nothing_to_say_may_be_left_out_of_a_report() {
        String shorter = ReportFile.toJson(Good.report())
                .replace("  \"tray\": null,\n", "")
                .replace("      \"side\": null,\n", "");

        assertThat(ReportFile.parse("0412.json", shorter.getBytes(UTF_8))
                        .orElseThrow()
                        .content())
                .isEqualTo(Good.report());
    }

    private static List<String> problems(Path file) {
        return ReportFile.write(file, Good.report()).stream()
                .map(Problem::toString)
                .toList();
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName())).toList();
        }
    }
}

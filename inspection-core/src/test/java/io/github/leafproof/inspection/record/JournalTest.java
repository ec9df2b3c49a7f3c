package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The journal beside a sheet that is being filled in: nothing that was acknowledged is lost, whatever happens. */
class JournalTest {

    @TempDir
    private Path folder = Path.of("");

    private Path sheet = Path.of("");
    private Path file = Path.of("");

    @BeforeEach
    void nameTheSheet() {
        sheet = folder.resolve("0412.json");
        file = folder.resolve("0412.json.journal");
    }

    private static List<String> said(Read<?> read) {
        return read.problems().stream().map(Problem::toString).toList();
    }

    private Read<Journal> opened(byte[] bytes) throws IOException {
        Files.write(file, bytes);
        return Journal.open(sheet);
    }

    @Test
    void every_act_is_there_again_as_it_was_done() {
        Journals.write(sheet);

        try (Journal journal = Journal.open(sheet).orElseThrow()) {
            assertThat(Journals.acts(journal)).isEqualTo(Journals.ACTS);
            assertThat(journal.head()).isEqualTo(Journals.HEAD);
        }
    }

    @Test
    void it_is_a_text_that_a_person_can_read_line_by_line() {
        Journals.write(sheet);

        List<String> lines = new String(Journals.bytes(file), UTF_8).lines().toList();
        assertThat(lines).hasSize(Journals.ACTS.size() + 1);
        assertThat(lines.get(0)).startsWith("{\"format\":\"leafproof-journal/1\",\"sheet\":{\"sheet\":\"0412\",");
        assertThat(lines.get(2))
                .matches("\\{\"act\":\"enter\",\"entry\":\\{\"observe\":\"head\",\"value\":\"21.4 °C\",\"by\":\"mk\","
                        + "\"at\":\"2026-03-04T10:12:00Z\"},\"check\":\"[0-9a-f]{16}\"}");
        assertThat(lines.get(4))
                .startsWith(
                        "{\"act\":\"bring\",\"state\":\"covers\",\"to\":\"off\",\"by\":\"mk\",\"at\":\"2026-03-04T10:12:00Z\",");
        assertThat(lines.get(13)).startsWith("{\"act\":\"later\",\"observe\":\"plug_glows\",\"at\":");
    }

    @Test
    void every_line_keeps_to_the_published_schema_and_says_what_sheets_say() {
        Journals.write(sheet);

        List<String> lines = new String(Journals.bytes(file), UTF_8).lines().toList();
        assertThat(lines)
                .allSatisfy(line ->
                        assertThat(Schemas.complaintsAboutJournalLine(line)).isEmpty());
        assertThat(Schemas.complaintsAboutJournalLine(lines.get(2).replace("enter", "dance")))
                .isNotEmpty();
        assertThat(Schemas.complaintsAboutJournalLine(lines.get(0).replace("card", "cart")))
                .isNotEmpty();
        String head = lines.get(0).replaceAll(".*\"sheet\":(\\{\"sheet\".*\\[]}),\"procedure\":\\{.*", "$1");
        String entries = lines.stream()
                .filter(line -> line.startsWith("{\"act\":\"enter\""))
                .map(line -> line.replaceAll(".*\"entry\":(.*),\"check\".*", "$1"))
                .collect(Collectors.joining(","));
        assertThat(Schemas.complaints(Format.JOB_SHEET, head.replace("[]", "[" + entries + "]")))
                .isEmpty();
    }

    @Test
    void the_example_on_the_page_of_formats_is_a_sound_journal() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "formats.md"));
        String example = Pattern.compile("```json journal\n(.*?)```", Pattern.DOTALL)
                .matcher(page)
                .results()
                .findFirst()
                .orElseThrow()
                .group(1);

        try (Journal journal = opened(example.getBytes(UTF_8)).orElseThrow()) {
            assertThat(journal.acts()).hasSize(6);
        }
        assertThat(example.lines())
                .allSatisfy(line ->
                        assertThat(Schemas.complaintsAboutJournalLine(line)).isEmpty());
    }

    @Test
    void cut_off_at_any_byte_it_has_every_act_whose_line_is_whole() throws IOException {
        Journals.write(sheet);
        byte[] all = Journals.bytes(file);
        int whole = 0;

        for (int cut = 0; cut <= all.length; cut++) {
            whole += cut > 0 && all[cut - 1] == '\n' ? 1 : 0;
            boolean isTorn = cut > 0 && all[cut - 1] != '\n';
            Read<Journal> read = opened(Arrays.copyOf(all, cut));
            if (whole == 0) {
                assertThat(said(read)).singleElement().asString().contains("LP763");
                continue;
            }
            try (Journal journal = read.orElseThrow()) {
                assertThat(Journals.acts(journal)).isEqualTo(Journals.ACTS.subList(0, whole - 1));
                assertThat(said(read)).hasSize(isTorn ? 1 : 0);
                assertThat(Files.size(file)).isEqualTo(cut - tail(all, cut));
            }
        }
        assertThat(all.length).isGreaterThan(1_000);
    }

    /** How many bytes stand behind the last line end before a cut. */
    private static int tail(byte[] all, int cut) {
        int tail = 0;
        while (cut - tail > 0 && all[cut - tail - 1] != '\n') {
            tail++;
        }
        return tail;
    }

    @Test
    void behind_a_line_that_was_cut_off_one_goes_on_as_if_it_had_never_been() throws IOException {
        Journals.write(sheet);
        byte[] all = Journals.bytes(file);

        Read<Journal> read = opened(Arrays.copyOf(all, all.length - 3));
        try (Journal journal = read.orElseThrow()) {
            assertThat(said(read))
                    .singleElement()
                    .asString()
                    .startsWith(file + ":18:1: warning LP766: the last line was cut off");
            assertThat(journal.append(Journals.ACTS.get(1))).isEmpty();
        }

        List<Act> expected = new ArrayList<>(Journals.ACTS.subList(0, Journals.ACTS.size() - 1));
        expected.add(Journals.ACTS.get(1));
        try (Journal journal = Journal.open(sheet).orElseThrow()) {
            assertThat(Journals.acts(journal)).isEqualTo(expected);
        }
    }

    @Test
    void a_byte_that_was_changed_anywhere_is_found_and_its_line_is_named() throws IOException {
        Journals.write(sheet);
        byte[] all = Journals.bytes(file);
        Random random = new Random(1);

        int line = 1;
        for (int at = 0; at < all.length; at++) {
            byte[] damaged = all.clone();
            damaged[at] = (byte) (damaged[at] ^ 1 << random.nextInt(8));
            Read<Journal> read = opened(damaged);
            boolean isLast = line == Journals.ACTS.size() + 1;
            if (read.value().isPresent()) {
                // A last line that lost its end looks like one that was cut off.
                assertThat(isLast && damaged[all.length - 1] != '\n')
                        .as("byte " + at)
                        .isTrue();
                read.orElseThrow().close();
            } else {
                assertThat(said(read)).singleElement().asString().containsPattern("LP76[349]");
                assertThat(read.problems().get(0).place()).as("byte " + at).isIn("", line + ":1");
            }
            line += all[at] == '\n' ? 1 : 0;
        }
    }

    @Test
    void a_line_that_is_missing_or_stands_elsewhere_is_found() throws IOException {
        Journals.write(sheet);
        List<String> lines = new String(Journals.bytes(file), UTF_8).lines().toList();
        for (int at = 1; at < lines.size() - 1; at++) {
            List<String> without = new ArrayList<>(lines);
            without.remove(at);
            assertThat(said(opened(text(without))))
                    .singleElement()
                    .asString()
                    .contains(":" + (at + 1) + ":1: error LP764");

            List<String> swapped = new ArrayList<>(lines);
            Collections.swap(swapped, at, at + 1);
            assertThat(said(opened(text(swapped))))
                    .singleElement()
                    .asString()
                    .contains(":" + (at + 1) + ":1: error LP764");
        }
    }

    private static byte[] text(List<String> lines) {
        return (String.join("\n", lines) + "\n").getBytes(UTF_8);
    }

    @Test
    void where_the_damaged_line_and_all_below_it_are_taken_out_one_can_go_on_from_what_is_whole() throws IOException {
        Journals.write(sheet);
        List<String> lines = new String(Journals.bytes(file), UTF_8).lines().toList();

        try (Journal journal = opened(text(lines.subList(0, 6))).orElseThrow()) {
            assertThat(Journals.acts(journal)).isEqualTo(Journals.ACTS.subList(0, 5));
        }
    }

    @Test
    void a_journal_of_another_form_and_what_is_no_journal_are_told_apart_from_damage() throws IOException {
        assertThat(said(opened("{\"format\":\"leafproof-journal/2\"}\n{}\n".getBytes(UTF_8))))
                .singleElement()
                .asString()
                .contains("LP769", "leafproof-journal/2");
        assertThat(said(opened("my notes\nof today\n".getBytes(UTF_8))))
                .singleElement()
                .asString()
                .contains("LP769: the file is no journal");
        assertThat(said(opened(new byte[0]))).singleElement().asString().contains("LP763");
        assertThat(said(opened(new byte[] {0, 0, 0, '\n'})))
                .singleElement()
                .asString()
                .contains("LP769");
    }

    @Test
    void a_line_that_is_sound_and_says_what_no_act_is_is_refused_like_a_mistake_in_any_file() throws IOException {
        Journals.write(sheet);
        byte[] all = Journals.bytes(file);
        String check = String.valueOf(JournalLine.checkOf(Arrays.copyOf(all, all.length - 1)));
        byte[] more = JournalLine.bytes(
                new JsonWriting.ObjectBuilder().put("act", "dance").done(), check);
        byte[] longer = Arrays.copyOf(all, all.length + more.length);
        System.arraycopy(more, 0, longer, all.length, more.length);

        assertThat(said(opened(longer))).singleElement().asString().contains(":19:8 $.act: error LP619");
    }

    @Test
    void a_second_session_in_the_same_program_is_refused_under_whatever_name_and_told_who_has_it() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("elsewhere"), folder);
        try (Journal journal = Journal.begin(sheet, Journals.HEAD).orElseThrow()) {
            assertThat(journal.append(Journals.ACTS.get(0))).isEmpty();

            assertThat(said(Journal.open(sheet)))
                    .containsExactly(
                            file + ": error LP760: the sheet is being filled in already: in this program, by mk since"
                                    + " 2026-03-04 10:12 (process 4711)\n   help: go on there, or end that session first; if its"
                                    + " program hangs, end it, and nothing is lost");
            assertThat(said(Journal.open(link.resolve("0412.json"))))
                    .singleElement()
                    .asString()
                    .contains("LP760");
            assertThat(said(Journal.begin(sheet, Journals.HEAD)))
                    .singleElement()
                    .asString()
                    .contains("LP760");
            assertThat(Journal.isBegun(sheet)).isTrue();
            assertThat(journal.append(Journals.ACTS.get(1))).isEmpty();
        }
        try (Journal journal = Journal.open(sheet).orElseThrow()) {
            assertThat(Journals.acts(journal)).hasSize(2);
        }
    }

    @Test
    void what_was_begun_is_not_begun_again_unless_nothing_was_acknowledged() throws IOException {
        assertThat(Journal.isBegun(sheet)).isFalse();
        assertThat(said(Journal.open(sheet))).singleElement().asString().contains("LP763: no session was begun");
        Journals.write(sheet);
        assertThat(Journal.isBegun(sheet)).isTrue();
        assertThat(said(Journal.begin(sheet, Journals.HEAD)))
                .singleElement()
                .asString()
                .contains("LP762");

        Files.writeString(file, "{\"format\":\"leafproof-jour");
        assertThat(Journal.isBegun(sheet)).isFalse();
        Journals.write(sheet);
        assertThat(Journal.open(sheet).map(Journal::acts).orElseThrow()).hasSize(Journals.ACTS.size());
    }

    @Test
    void where_nothing_can_be_written_it_says_so_and_is_not_begun() throws IOException {
        assertThat(said(Journal.begin(folder.resolve("missing/0412.json"), Journals.HEAD)))
                .singleElement()
                .asString()
                .contains("LP767: the folder of the sheet does not exist");
        Files.createDirectory(file);
        assertThat(said(Journal.begin(sheet, Journals.HEAD)))
                .singleElement()
                .asString()
                .contains("LP767");
        assertThat(said(Journal.open(sheet))).singleElement().asString().contains("LP767");
    }

    @Test
    void what_somebody_else_changed_behind_its_back_is_noticed_before_anything_is_acknowledged() throws IOException {
        try (Journal journal = Journal.begin(sheet, Journals.HEAD).orElseThrow()) {
            assertThat(journal.append(Journals.ACTS.get(0))).isEmpty();
            Files.writeString(file, "x", StandardOpenOption.APPEND);

            assertThat(journal.append(Journals.ACTS.get(1)).orElseThrow().toString())
                    .contains("LP767: something else has moved or changed");
            assertThat(journal.append(Journals.ACTS.get(1)).orElseThrow().toString())
                    .contains("can no longer be written");
        }
        Path other = folder.resolve("0413.json");
        try (Journal journal = Journal.begin(other, Journals.HEAD).orElseThrow()) {
            Files.delete(Journal.beside(other));

            assertThat(journal.append(Journals.ACTS.get(0))).isPresent();
        }
    }

    @Test
    void an_interrupt_meant_for_somebody_else_does_not_end_it() {
        try (Journal journal = Journal.begin(sheet, Journals.HEAD).orElseThrow()) {
            Thread.currentThread().interrupt();
            assertThat(journal.append(Journals.ACTS.get(0))).isEmpty();
            assertThat(Thread.interrupted()).isTrue();
            assertThat(journal.append(Journals.ACTS.get(1))).isEmpty();
        }
    }

    @Test
    void when_it_is_closed_nothing_is_taken_any_more() {
        Journal journal = Journal.begin(sheet, Journals.HEAD).orElseThrow();
        journal.close();

        assertThat(journal.append(Journals.ACTS.get(0))).isPresent();
    }
}

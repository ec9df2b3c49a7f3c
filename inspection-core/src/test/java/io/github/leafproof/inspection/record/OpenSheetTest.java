package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.quantity.Quantity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NoSuchElementException;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A sheet that is filled in says at each moment what its file would be read back as, to the line and the column. */
class OpenSheetTest {

    private static JobSheet heading(@Nullable Quantity running) {
        return new JobSheet(
                "0422",
                "first_look",
                3,
                null,
                null,
                SheetEngine.unknown(),
                LocalDate.of(2026, 3, 4),
                running,
                List.of());
    }

    private static Read<Document<JobSheet>> readBack(JobSheet sheet) {
        return SheetFile.parse("0422.json", SheetFile.toJson(sheet).getBytes(UTF_8));
    }

    private static OpenSheet begun(@Nullable Quantity running) {
        return OpenSheet.of(readBack(heading(running)).orElseThrow());
    }

    private static Entry entry(String observe, Given given) {
        return new Entry(observe, given, false, null, null, null, null, "");
    }

    private static Entry correcting(String observe, Given given) {
        return new Entry(observe, given, true, null, null, null, null, "");
    }

    @Provide
    Arbitrary<List<Entry>> entries() {
        Arbitrary<Given> given = Arbitraries.of(
                new Given.Words("21.4 °C"),
                new Given.Words(" "),
                new Given.Words("two\nlines and a 😀"),
                new Given.Flag(true),
                new Given.Count(new BigDecimal("1e3")),
                new Given.Count(new BigDecimal("1e200")),
                new Given.Items(List.of()),
                new Given.Items(List.of("engine", "manual")),
                new Given.Series(List.of("3", "4")),
                new Given.Cannot("the cover sticks"),
                new Given.Adjusted(null),
                new Given.Adjusted(Quantity.parse("45 deg")),
                new Given.Trials(List.of(
                        new TrialGiven(List.of("0.05 mm"), TrialResult.PASSES, ""),
                        new TrialGiven(List.of("0.05 mm", "0.04 mm"), TrialResult.REFUSES, ""))));
        Arbitrary<String> note = Arbitraries.of("", "it rattles", "none", "none", "none");
        Arbitrary<Integer> minute = Arbitraries.integers().between(-1, 5);
        Arbitrary<Integer> running = Arbitraries.integers().between(-4, 4);
        return Combinators.combine(
                        Arbitraries.of("head", "lash"),
                        given,
                        Arbitraries.of(true, false, false),
                        note,
                        minute,
                        running)
                .as((name, what, corrects, remark, at, hours) -> new Entry(
                        name,
                        what,
                        corrects && !(what instanceof Given.Adjusted),
                        "mk",
                        at < 0 ? null : OffsetDateTime.parse("2026-03-04T10:0" + at + ":00Z"),
                        remark.equals("none") ? null : remark,
                        hours < 0 ? null : Quantity.parse(hours + " h"),
                        ""))
                .list()
                .ofMaxSize(9);
    }

    @Property(tries = 300)
    void entry_by_entry_it_is_what_its_file_is_read_back_as(
            @ForAll("entries") List<Entry> entries, @ForAll boolean hasRun) {
        OpenSheet sheet = begun(hasRun ? Quantity.parse("1 h") : null);
        for (Entry entry : entries) {
            List<Entry> taken = new ArrayList<>(sheet.entries());
            taken.add(entry);
            Read<OpenSheet> longer = sheet.with(entry);
            Read<Document<JobSheet>> whole = readBack(sheet.heading().withEntries(taken));

            assertThat(longer.value().isPresent()).isEqualTo(whole.value().isPresent());
            if (longer.value().isPresent()) {
                sheet = longer.orElseThrow();
                assertThat(sheet.document()).isEqualTo(whole.orElseThrow());
                assertThat(sheet.entries())
                        .isEqualTo(whole.orElseThrow().content().entries());
                assertThat(told(whole)).endsWith(told(longer).toArray(String[]::new));
            } else {
                assertThat(told(whole)).containsAll(told(longer));
            }
        }
        while (sheet.size() > 0) {
            sheet = sheet.withoutLast();
            assertThat(sheet.document())
                    .isEqualTo(readBack(sheet.heading().withEntries(sheet.entries()))
                            .orElseThrow());
        }
    }

    private static List<String> told(Read<?> read) {
        return read.problems().stream().map(Problem::toString).toList();
    }

    @Property(tries = 100)
    void a_sheet_that_was_read_is_gone_on_with_like_one_that_was_begun(@ForAll("entries") List<Entry> entries) {
        OpenSheet begun = begun(null);
        for (Entry entry : entries) {
            OpenSheet read = OpenSheet.of(begun.document());
            assertThat(told(read.with(entry))).isEqualTo(told(begun.with(entry)));
            begun = begun.with(entry).value().orElse(begun);
        }
        OpenSheet read = OpenSheet.of(begun.document());
        while (begun.size() > 0) {
            begun = begun.withoutLast();
            read = read.withoutLast();
            assertThat(read.document()).isEqualTo(begun.document());
        }
    }

    @Test
    void what_cannot_be_written_and_read_again_is_refused_at_the_place_where_it_would_stand() {
        OpenSheet sheet =
                begun(null).with(entry("gear", new Given.Words("oiled"))).orElseThrow();

        assertThat(told(sheet.with(entry("gear", new Given.Words(" ")))))
                .singleElement()
                .asString()
                .startsWith("0422.json:14:16 $.entries[1].value: error LP615");
        assertThat(told(sheet.with(correcting("lash", new Given.Words("oiled")))))
                .singleElement()
                .asString()
                .startsWith("0422.json:15:7 $.entries[1].corrects: error LP653");
        assertThat(sheet.size()).isOne();
    }

    @Test
    void a_sheet_never_becomes_larger_than_can_be_read() {
        Given readings = new Given.Series(Collections.nCopies(200_000, "0.123456789"));
        OpenSheet sheet = begun(null);
        Read<OpenSheet> longer = sheet.with(entry("wear", readings));
        for (int more = 0; more < 9 && longer.value().isPresent(); more++) {
            sheet = longer.orElseThrow();
            longer = sheet.with(entry("wear", readings));
        }

        assertThat(longer.problems()).extracting(Problem::code).containsExactly("LP604");
        assertThat(sheet.document().content().entries()).hasSize(sheet.size());
    }

    @Test
    void of_two_sheets_it_is_told_what_was_taken_back_and_what_was_added() {
        OpenSheet one =
                begun(null).with(entry("gear", new Given.Words("oiled"))).orElseThrow();
        OpenSheet two = one.with(entry("head", new Given.Words("21 °C"))).orElseThrow();
        OpenSheet other = one.with(entry("room", new Given.Words("20 °C"))).orElseThrow();

        SheetChange grown = SheetChange.between(one, two);
        assertThat(grown.takenBack()).isEmpty();
        assertThat(grown.names()).containsExactly("head");
        SheetChange exchanged = SheetChange.between(two, other);
        assertThat(exchanged.takenBack()).extracting(Entry::observe).containsExactly("head");
        assertThat(exchanged.added()).extracting(Entry::observe).containsExactly("room");
        assertThat(SheetChange.between(OpenSheet.of(two.document()), OpenSheet.of(other.document())))
                .isEqualTo(exchanged);
        OpenSheet read = OpenSheet.of(two.document());
        assertThat(SheetChange.between(read, read.withoutLast().withoutLast()).takenBack())
                .isEqualTo(read.entries());
    }

    @Test
    void from_an_empty_sheet_nothing_is_taken_back() {
        assertThat(begun(null).last()).isEmpty();
        assertThatThrownBy(() -> begun(null).withoutLast())
                .isInstanceOf(NoSuchElementException.class)
                .hasMessage("nothing is entered on the sheet");
    }
}

package io.github.leafproof.dsl.session;

import static io.github.leafproof.dsl.session.SmallBench.HEADING;
import static io.github.leafproof.dsl.session.SmallBench.MK;
import static io.github.leafproof.dsl.session.SmallBench.ahead;
import static io.github.leafproof.dsl.session.SmallBench.next;
import static io.github.leafproof.dsl.session.SmallBench.said;
import static io.github.leafproof.dsl.session.SmallBench.trials;
import static io.github.leafproof.dsl.session.SmallBench.words;
import static io.github.leafproof.dsl.session.SmallBench.yes;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.record.Act;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Journal;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.SheetFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A session that is kept on disk: it can be gone on with wherever it ended. */
class KeptSessionTest {

    private static final Basis BASIS = SmallBench.basis(SmallBench.DECLARATIONS);

    @TempDir
    private Path folder = Path.of("");

    private Path sheet = Path.of("");

    @BeforeEach
    void nameTheSheet() {
        sheet = folder.resolve("0412.json");
    }

    private Session begun() {
        return Session.begin(BASIS, HEADING, MK, sheet).orElseThrow();
    }

    private Session resumed() {
        return Session.resume(BASIS, MK, sheet).orElseThrow();
    }

    /** Something of everything. */
    private static void work(Session session) {
        session.enter("marks", words("Q15-4"), Remark.of("worn")).orElseThrow();
        session.enter("head", words("41 °C")).orElseThrow();
        session.correct("head", words("21 °C")).orElseThrow();
        session.enter("room", words("20 °C")).orElseThrow();
        session.later("rattle").orElseThrow();
        session.bring("covers", "off").orElseThrow();
        session.enter("gear", words("rusty")).orElseThrow();
        session.undo().orElseThrow();
        session.enter("lash", trials("passes 0.15 mm")).orElseThrow();
        session.adjust("lash", Quantity.parse("50 deg")).orElseThrow();
        session.enter("lash", trials("passes 0.05 mm", "refuses 0.08 mm")).orElseThrow();
        session.cannot("thread", "the plug is seized").orElseThrow();
        session.skip("primes").orElseThrow();
    }

    private static String told(Standing standing) {
        return SheetFile.toJson(standing.sheet().content()) + ahead(standing) + standing.progress();
    }

    @Test
    void one_goes_on_where_one_was() {
        String told;
        try (Session session = begun()) {
            work(session);
            told = told(session.standing());
        }
        try (Session session = resumed()) {
            assertThat(told(session.standing())).isEqualTo(told);
            assertThat(next(session.undo().orElseThrow())).isEqualTo("primes");
            session.enter("gear", words("oiled")).orElseThrow();
        }
        try (Session session = resumed()) {
            assertThat(session.standing().entries("gear")).hasSize(1);
        }
    }

    @Test
    void a_sheet_that_tells_how_long_the_engine_had_run_is_written_again_as_the_same() {
        Remark ranTenHours = new Remark(null, Quantity.parse("10 h"));
        String digest;
        try (Session session = begun()) {
            session.enter("head", words("21 °C"), ranTenHours).orElseThrow();
            session.enter("room", words("20 °C")).orElseThrow();
            session.enter("marks", words("Q15-4"), ranTenHours).orElseThrow();
            digest = session.finish().orElseThrow().sheet().sha256();
            assertThat(session.finish().orElseThrow().sheet().sha256()).isEqualTo(digest);
        }
        assertThat(SheetFile.read(sheet).orElseThrow().sha256()).isEqualTo(digest);
        try (Session session = resumed()) {
            assertThat(session.finish().orElseThrow().sheet().sha256()).isEqualTo(digest);
        }
    }

    @Test
    void a_journal_cut_off_at_any_byte_gives_back_every_act_that_was_acknowledged() throws IOException {
        try (Session session = begun()) {
            work(session);
        }
        Path journal = Journal.beside(sheet);
        byte[] all = Files.readAllBytes(journal);
        List<Act> acts = acts();

        int cuts = 0;
        int lines = 0;
        for (int cut = 1; cut <= all.length; cut++) {
            lines += all[cut - 1] == '\n' ? 1 : 0;
            if (lines == 0) {
                continue;
            }
            Files.write(journal, Arrays.copyOf(all, cut));
            Read<Session> read = Session.resume(BASIS, MK, sheet);
            try (Session session = read.orElseThrow()) {
                assertThat(session.standing().acts())
                        .as("cut behind byte " + cut)
                        .isEqualTo(Course.of(acts.subList(0, lines - 1)).acts());
                assertThat(session.standing().sheet().content().entries())
                        .hasSameSizeAs(Course.of(acts.subList(0, lines - 1)).entries());
                assertThat(read.problems()).hasSize(all[cut - 1] == '\n' ? 0 : 1);
                cuts++;
            }
        }
        assertThat(cuts).isGreaterThan(1_000);
    }

    private List<Act> acts() {
        try (Journal journal = Journal.open(sheet).orElseThrow()) {
            return journal.acts();
        }
    }

    @Test
    void a_session_is_begun_once_and_gone_on_with_by_one_at_a_time() {
        assertThat(Session.isBegun(sheet)).isFalse();
        assertThat(said(Session.resume(BASIS, MK, sheet)))
                .singleElement()
                .asString()
                .contains("LP763");
        try (Session session = begun()) {
            assertThat(Session.isBegun(sheet)).isTrue();
            assertThat(said(Session.begin(BASIS, HEADING, MK, sheet)))
                    .singleElement()
                    .asString()
                    .contains(
                            "LP760",
                            "in this program, by mk since 2026-03-04 10:12 (process "
                                    + ProcessHandle.current().pid());
            assertThat(said(Session.resume(BASIS, MK, sheet)))
                    .singleElement()
                    .asString()
                    .contains("LP760");
            session.enter("marks", words("Q15-4")).orElseThrow();
        }
        assertThat(said(Session.begin(BASIS, HEADING, MK, sheet)))
                .singleElement()
                .asString()
                .contains("LP762");
        resumed().close();
    }

    @Test
    void other_files_than_it_was_begun_with_are_refused_each_by_name() {
        begun().close();
        Basis other = new Basis(
                SmallBench.basis(SmallBench.DECLARATIONS + "// mended\n").procedure(),
                new Document<>(BASIS.card().content(), "card.json", "c".repeat(64)),
                new Document<>(BASIS.tray().content(), "tray.json", "d".repeat(64)));

        assertThat(said(Session.resume(other, MK, sheet)))
                .hasSize(3)
                .allMatch(problem -> problem.contains("0412.json.journal:1:1: error LP765"))
                .satisfiesExactly(
                        procedure -> assertThat(procedure)
                                .contains(
                                        "the procedure is not the one that this sheet was begun with: that was trial"),
                        card -> assertThat(card).contains("the engine card is not the one"),
                        tray -> assertThat(tray).contains("the gauge tray is not the one"));
        resumed().close();
    }

    @Test
    void a_sheet_that_is_there_is_never_written_over_unless_this_session_wrote_it() throws IOException {
        Files.writeString(sheet, "mine");
        assertThat(said(Session.begin(BASIS, HEADING, MK, sheet)))
                .singleElement()
                .asString()
                .contains("LP761: a file of this name is there already");
        Files.delete(sheet);

        try (Session session = begun()) {
            session.enter("marks", words("Q15-4")).orElseThrow();
            Finished first = session.finish().orElseThrow();
            assertThat(SheetFile.read(sheet).orElseThrow()).isEqualTo(first.sheet());
            session.enter("rattle", yes(false)).orElseThrow();
            assertThat(session.finish().orElseThrow().sheet().content().entries())
                    .hasSize(2);

            Files.writeString(sheet, Files.readString(sheet).replace("Q15-4", "Q15-5"));
            assertThat(said(session.finish()))
                    .singleElement()
                    .asString()
                    .contains("LP761", "not as this session has written it");
            assertThat(Files.readString(sheet)).contains("Q15-5");
        }
        assertThat(said(Session.resume(BASIS, MK, sheet)))
                .singleElement()
                .asString()
                .contains("LP761");
        Files.delete(sheet);
        try (Session session = resumed()) {
            session.finish().orElseThrow();
            assertThat(Files.readString(sheet)).contains("Q15-4");
        }
    }

    @Test
    void a_program_that_ended_between_writing_the_sheet_and_saying_so_can_go_on() throws IOException {
        try (Session session = begun()) {
            session.enter("marks", words("Q15-4")).orElseThrow();
            Files.writeString(sheet, SheetFile.toJson(session.standing().sheet().content()));
        }
        try (Session session = resumed()) {
            session.enter("rattle", yes(false)).orElseThrow();
            // What was never said to be written counts as somebody else's once it is no longer what would be written.
            assertThat(said(session.finish())).singleElement().asString().contains("LP761");
            session.undo().orElseThrow();
            session.finish().orElseThrow();
            session.enter("rattle", yes(false)).orElseThrow();
            session.finish().orElseThrow();
        }
    }

    @Test
    void what_a_finished_sheet_shows_cannot_be_taken_back_after_a_crash_either() {
        try (Session session = begun()) {
            session.enter("marks", words("Q15-4")).orElseThrow();
            session.finish().orElseThrow();
        }
        try (Session session = resumed()) {
            assertThat(said(session.undo())).singleElement().asString().contains("LP768");
        }
    }

    @Test
    void what_was_taken_back_is_not_on_the_sheet_and_stays_in_the_journal() throws IOException {
        try (Session session = begun()) {
            session.enter("head", words("41 °C")).orElseThrow();
            session.undo().orElseThrow();
            session.enter("head", words("21 °C")).orElseThrow();
            session.finish().orElseThrow();
        }

        assertThat(Files.readString(sheet)).doesNotContain("41 °C").doesNotContain("corrects");
        assertThat(Files.readString(Journal.beside(sheet))).contains("41 °C", "\"act\":\"undo\"");
    }

    @Test
    void an_entry_that_cannot_be_kept_is_not_taken() throws IOException {
        try (Session session = begun()) {
            session.enter("marks", words("Q15-4")).orElseThrow();
            Files.delete(Journal.beside(sheet));
            Standing before = session.standing();

            assertThat(said(session.enter("rattle", yes(false))))
                    .singleElement()
                    .asString()
                    .contains("LP767");
            assertThat(session.standing()).isSameAs(before);
        }
    }

    @Test
    void a_heading_that_makes_no_sense_leaves_no_journal_behind() {
        assertThat(said(Session.begin(BASIS, Heading.of(" ", HEADING.date()), MK, sheet)))
                .singleElement()
                .asString()
                .contains("LP615");
        assertThat(Session.isBegun(sheet)).isFalse();
        assertThat(Journal.beside(sheet)).doesNotExist();
    }
}

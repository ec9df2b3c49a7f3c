package io.github.leafproof.dsl.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.type;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.archive.CheckMoved.Change;
import io.github.leafproof.dsl.archive.Comparison.CameOut;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReplayTest {

    private static final String FREE = "{\"observe\": \"free\", \"value\": true}";

    /** By the tray of the workshop the leaf of 0.08 mm measures 0.081 mm: enough for 0.10 mm, not for 0.06 mm. */
    private static final String MIDDLING = Kept.felt("7", "0.05", "0.08");

    private static Comparison compare(String old, String now, String sheet) {
        return Kept.replay(old, now).compare(Kept.filed(1, sheet));
    }

    private static Comparison.Differs differs(String old, String now, String sheet) {
        return assertThat(compare(old, now, sheet))
                .asInstanceOf(type(Comparison.Differs.class))
                .actual();
    }

    private static CheckMoved only(Comparison.Differs differs) {
        assertThat(differs.checks()).hasSize(1);
        return differs.checks().get(0);
    }

    private static String changed(String written, String instead) {
        assertThat(Kept.OLD).contains(written);
        return Kept.OLD.replace(written, instead);
    }

    @Test
    void a_narrower_limit_holds_an_engine_that_was_ready() {
        Comparison.Differs differs = differs(Kept.OLD, Kept.NEW, MIDDLING);

        assertThat(differs.job().serial()).isEqualTo("Q15-7");
        assertThat(differs.before())
                .isEqualTo(new CameOut.Judged(Release.READY, "Every check that applies to this engine is met."));
        assertThat(differs.after().word()).isEqualTo("hold");
        CheckMoved moved = only(differs);
        assertThat(moved.name()).isEqualTo("lash_within");
        assertThat(moved.wordBefore() + " → " + moved.wordAfter()).isEqualTo("passes → open");
        assertThat(moved.changes())
                .containsExactly(new Change(
                        "requires",
                        "lash between 0.03 mm (engine.lash_min) and 0.10 mm (engine.lash_max)",
                        "lash between 0.03 mm (engine.lash_min) and 0.06 mm"));
        CheckMoved.Found after = Objects.requireNonNull(moved.after());
        assertThat(after.value()).isEqualTo("0.0500 mm to 0.0810 mm");
        assertThat(after.reasons())
                .containsExactly("nothing shows that lash is at most 0.06 mm: the thinnest leaf that refuses"
                        + " measures 0.0810 mm");
    }

    @Test
    void what_a_narrower_limit_still_lets_pass_is_the_same() {
        assertThat(compare(Kept.OLD, Kept.NEW, Kept.felt("1", "0.04", "0.05")))
                .isInstanceOfSatisfying(
                        Comparison.Same.class,
                        same -> assertThat(same.release()).isEqualTo(Release.READY));
    }

    @Test
    void a_failure_on_the_other_side_is_a_difference() {
        String above = changed("between engine.lash_min and engine.lash_max", "at least 0.15 mm");
        String below = changed("between engine.lash_min and engine.lash_max", "at most 0.03 mm");

        CheckMoved moved = only(differs(above, below, MIDDLING));

        assertThat(moved.wordBefore()).isEqualTo("fails low");
        assertThat(moved.wordAfter()).isEqualTo("fails high");
    }

    @Test
    void a_sheet_of_any_revision_is_judged_by_both() {
        String third = MIDDLING.replace("\"revision\": 1", "\"revision\": 3");

        assertThat(differs(Kept.OLD, Kept.NEW, third).job().revision()).isEqualTo(3);
    }

    @Test
    void a_sheet_of_another_procedure_is_left_alone() {
        String other = MIDDLING.replace("\"lash\", \"revision\"", "\"tank\", \"revision\"");

        assertThat(compare(Kept.OLD, Kept.NEW, other))
                .isEqualTo(new Comparison.OtherProcedure(new Filed.Place("kept.jsonl", 1), "tank"));
    }

    @Test
    void what_only_the_old_revision_observes_is_a_difference_and_no_failure() {
        String without = changed("observe turning : one of freely, stiffly ask \"How does it turn?\" optional\n", "")
                .replace("check turns \"It turns freely\" { require turning is freely }\n", "");
        String sheet =
                Kept.sheet("1", FREE, Kept.lash("0.05", "0.08"), "{\"observe\": \"turning\", \"value\": \"freely\"}");

        Comparison.Differs dropped = differs(Kept.OLD, without, sheet);

        assertThat(dropped.onlyOldKnows()).containsExactly("turning");
        assertThat(dropped.onlyNewKnows()).isEmpty();
        assertThat(dropped.before().word()).isEqualTo(dropped.after().word());
        assertThat(only(dropped).wordAfter()).isEqualTo("no such check");
        assertThat(differs(without, Kept.OLD, sheet).onlyNewKnows()).containsExactly("turning");
        // Where nothing of it was entered it does not apply, which says no more of an engine than not being there.
        assertThat(compare(Kept.OLD, without, MIDDLING)).isInstanceOf(Comparison.Same.class);
    }

    @Test
    void an_entry_that_neither_revision_knows_is_a_slip_of_the_pen() {
        String sheet = Kept.sheet("1", FREE, Kept.lash("0.05", "0.08").replace("\"lash\"", "\"lsah\""));

        assertThat(compare(Kept.OLD, Kept.NEW, sheet))
                .isInstanceOfSatisfying(
                        Comparison.Damaged.class,
                        damaged -> assertThat(damaged.problems())
                                .extracting(Problem::toString)
                                .containsExactly("kept.jsonl:1:195 $.entries[1]: error LP676: the procedure observes"
                                        + " nothing called lsah\n   help: did you mean lash?"));
    }

    @Test
    void what_one_revision_cannot_judge_is_a_difference() {
        String counted = changed("free : yes/no", "free : count").replace("require free", "require free at least 1");

        Comparison.Differs differs = differs(Kept.OLD, counted, MIDDLING);

        assertThat(differs.before().word()).isEqualTo("ready");
        assertThat(differs.after().word()).isEqualTo("not judged");
        assertThat(differs.after())
                .isInstanceOfSatisfying(
                        CameOut.NotJudged.class,
                        not -> assertThat(not.problems())
                                .extracting(Problem::code)
                                .containsExactly("LP678"));
        assertThat(differs.checks()).isEmpty();
        assertThat(differs(counted, Kept.OLD, MIDDLING).before().word()).isEqualTo("not judged");
    }

    @Test
    void a_gauge_that_the_tray_lacks_and_an_engine_it_is_not_for_keep_one_revision_from_judging() {
        String other = Kept.OLD.replace("leaves :", "thin_leaves :").replace("with leaves", "with thin_leaves");
        String larger = changed("decide at", "applies when engine.displacement at least 20 cm3\ndecide at");

        assertThat(differs(Kept.OLD, other, MIDDLING).after().word()).isEqualTo("not judged");
        assertThat(differs(Kept.OLD, larger, MIDDLING).after().word()).isEqualTo("not judged");
        assertThat(compare(other, larger, MIDDLING))
                .isInstanceOfSatisfying(
                        Comparison.Damaged.class,
                        damaged -> assertThat(damaged.problems())
                                .extracting(Problem::code)
                                .containsExactly("LP673", "LP669"));
    }

    @Test
    void a_gate_that_was_put_before_a_check_is_named() {
        String gated = changed("check turns \"It turns freely\"", "check turns \"It turns freely\" gate")
                .replace("after rocks", "after rocks, turns");
        String stiff =
                Kept.sheet("1", FREE, Kept.lash("0.05", "0.08"), "{\"observe\": \"turning\", \"value\": \"stiffly\"}");

        CheckMoved moved = only(differs(Kept.OLD, gated, stiff));

        assertThat(moved.wordAfter()).isEqualTo("blocked");
        assertThat(moved.changes()).containsExactly(new Change("waits for", "rocks", "rocks, turns"));
        assertThat(Objects.requireNonNull(moved.after()).missing())
                .containsExactly("waits for turns (It turns freely)");
    }

    @Test
    void a_check_behind_a_gate_that_came_out_otherwise_has_not_changed_itself() {
        String seized = changed("require free", "require turning is freely");
        String stiff =
                Kept.sheet("1", FREE, Kept.lash("0.05", "0.08"), "{\"observe\": \"turning\", \"value\": \"stiffly\"}");

        List<CheckMoved> moved = differs(Kept.OLD, seized, stiff).checks();

        assertThat(moved).extracting(CheckMoved::name).containsExactly("rocks", "lash_within");
        assertThat(moved.get(0).changes()).containsExactly(new Change("requires", "free is yes", "turning is freely"));
        assertThat(moved.get(1).changes()).isEmpty();
        assertThat(moved.get(1).wordAfter()).isEqualTo("blocked");
    }

    @Test
    void how_sure_one_has_to_be_is_named() {
        String reading = changed("gap with leaves", "length with depth")
                .replace("gauge leaves : leaf set", "gauge depth : reading of length");
        String sheet = Kept.sheet("1", FREE, "{\"observe\": \"lash\", \"value\": \"0.085 mm\"}");

        CheckMoved moved = only(differs(reading, reading.replace("decide at 95 %", "decide at 80 %"), sheet));

        assertThat(moved.wordBefore() + " → " + moved.wordAfter()).isEqualTo("open → passes");
        assertThat(moved.changes()).containsExactly(new Change("decided", "at 95 % confidence", "at 80 % confidence"));
    }

    @Test
    void a_value_that_is_computed_otherwise_is_named_with_both_results() {
        String half = changed(
                        "require lash between engine.lash_min and engine.lash_max", "require slack at most 0.05 mm")
                .replace("gap with leaves", "length")
                .replace("check rocks", "let slack = lash / 2\ncheck rocks");
        String sheet = Kept.sheet("1", FREE, "{\"observe\": \"lash\", \"value\": \"0.08 mm\"}");

        CheckMoved moved = only(differs(half, half.replace("lash / 2", "lash * 2"), sheet));

        assertThat(moved.changes()).extracting(Change::what).containsExactly("how slack comes about", "slack");
        assertThat(moved.changes().get(0)).isEqualTo(new Change("how slack comes about", "lash / 2", "lash * 2"));
        assertThat(moved.changes().get(1).before()).startsWith("0.04 mm");
        assertThat(moved.changes().get(1).after()).startsWith("0.16 mm");
    }

    @Test
    void the_body_of_a_function_is_followed_to_the_first_step_that_differs() {
        String applied = changed(
                        "require lash between engine.lash_min and engine.lash_max",
                        "require slack(lash) at most 0.05 mm")
                .replace("gap with leaves", "length")
                .replace("check rocks", "define slack(gap : length) = gap / 2\ncheck rocks");
        String sheet = Kept.sheet("1", FREE, "{\"observe\": \"lash\", \"value\": \"0.08 mm\"}");

        CheckMoved moved = only(differs(applied, applied.replace("gap / 2", "gap * 2"), sheet));

        assertThat(moved.changes()).extracting(Change::what).containsExactly("first step that differs");
        assertThat(moved.changes().get(0).before()).startsWith("gap / 2: 0.04 mm");
        assertThat(moved.changes().get(0).after()).startsWith("gap * 2: 0.16 mm");
    }

    @Test
    void evidence_that_disagrees_with_itself_has_no_probability() {
        String sheet = Kept.felt("1", "0.08", "0.04");
        String looser =
                changed("critical {\n  after rocks", "critical {\n  after rocks\n  when engine.lash_min at least 1 mm");

        CheckMoved moved = only(differs(Kept.OLD, looser, sheet));

        CheckMoved.Found before = Objects.requireNonNull(moved.before());
        assertThat(before.outcome()).isEqualTo(Outcome.CONTRADICTED);
        assertThat(before.probability()).isNull();
        assertThat(moved.wordAfter()).isEqualTo("not_applicable");
        assertThat(moved.changes()).containsExactly(new Change("applies when", null, "engine.lash_min at least 1 mm"));
    }

    @Test
    void two_procedures_are_no_revisions_of_one() {
        String other = changed("procedure lash", "procedure clearance");

        assertThat(Replay.areRevisionsOfOne(Kept.procedure(Kept.OLD), Kept.procedure(other)))
                .isFalse();
        assertThatThrownBy(() -> Kept.replay(Kept.OLD, other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("lash and clearance are two procedures");
    }

    @Test
    void comparisons_come_in_the_order_of_the_sheets_however_many_work_on_them() {
        List<String> sheets = IntStream.range(0, 2_000)
                .mapToObj(i -> i % 7 == 3 ? "{" : Kept.felt(String.valueOf(i), "0.05", i % 2 == 0 ? "0.08" : "0.10"))
                .toList();

        List<Comparison> compared =
                Kept.replay(Kept.OLD, Kept.NEW).compare(Kept.filed(sheets)).toList();

        assertThat(compared).extracting(each -> each.place().line()).isEqualTo(lines(2_000));
        assertThat(compared.get(3)).isInstanceOf(Comparison.Damaged.class);
        assertThat(compared.get(4)).isInstanceOf(Comparison.Differs.class);
        assertThat(compared.get(5)).isInstanceOf(Comparison.Same.class);
    }

    private static List<Long> lines(int last) {
        return IntStream.rangeClosed(1, last).mapToObj(Long::valueOf).toList();
    }

    @Test
    void a_card_is_read_once_and_a_missing_one_damages_the_sheets_that_name_it(@TempDir Path here) throws IOException {
        Path card = Files.writeString(here.resolve("card.json"), Workshop.of("").card());
        Files.writeString(here.resolve("tray.json"), Workshop.of("").tray());
        Path sheet = Files.writeString(here.resolve("1.json"), MIDDLING);
        Replay replay =
                Replay.of(Kept.procedure(Kept.OLD), Kept.procedure(Kept.NEW), Cabinet.ofFiles(), UnitSystem.METRIC);

        assertThat(replay.compare(Filed.of(sheet))).isInstanceOf(Comparison.Differs.class);
        Files.delete(card);
        assertThat(replay.compare(Filed.of(sheet))).isInstanceOf(Comparison.Differs.class);
        Replay fresh =
                Replay.of(Kept.procedure(Kept.OLD), Kept.procedure(Kept.NEW), Cabinet.ofFiles(), UnitSystem.METRIC);
        assertThat(fresh.compare(Filed.of(sheet)))
                .isInstanceOfSatisfying(
                        Comparison.Damaged.class,
                        damaged -> assertThat(damaged.problems())
                                .extracting(Problem::code)
                                .containsExactly("LP601"));
    }

    @Test
    void a_sheet_that_names_no_card_is_judged_with_the_one_that_is_given() {
        String without = MIDDLING.replace("\"card\": \"card.json\", ", "");
        Cabinet cabinet = Cabinet.holding(Map.of(
                "given.json", Kept.bytes(Workshop.of("").card()),
                "tray.json", Kept.bytes(Workshop.of("").tray())));

        assertThat(compare(Kept.OLD, Kept.NEW, without))
                .isInstanceOfSatisfying(
                        Comparison.Damaged.class,
                        damaged -> assertThat(damaged.problems())
                                .extracting(Problem::toString)
                                .containsExactly("kept.jsonl:1:1 $.card: error LP613: the sheet names no card\n"
                                        + "   help: name it there, or with --card"));
        assertThat(Replay.of(
                                Kept.procedure(Kept.OLD),
                                Kept.procedure(Kept.NEW),
                                cabinet.withCard(Path.of("given.json")),
                                UnitSystem.METRIC)
                        .compare(Kept.filed(1, without)))
                .isInstanceOf(Comparison.Differs.class);
    }
}

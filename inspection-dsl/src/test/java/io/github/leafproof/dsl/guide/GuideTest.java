package io.github.leafproof.dsl.guide;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.session.Basis;
import io.github.leafproof.dsl.session.Finished;
import io.github.leafproof.dsl.session.Heading;
import io.github.leafproof.dsl.session.Inspector;
import io.github.leafproof.dsl.session.Session;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.TrayFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Conversations at the bench, word for word; a person has read each of them. */
class GuideTest {

    private static final Path BENCH = Path.of("..", "examples", "bench");
    private static final Path CONVERSATIONS = Path.of("src", "test", "resources", "conversations");
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-04T10:12:00Z"), ZoneOffset.UTC);

    /** A bench that keeps sessions in memory, and what was handed over. */
    private static final class InMemory implements Surroundings {
        private final UnitSystem units;
        private @Nullable Session session;
        private @Nullable Finished finished;

        InMemory(UnitSystem units) {
            this.units = units;
        }

        @Override
        public String title() {
            return "First look, before the stand: Quillan Q15-4";
        }

        @Override
        public Read<Session> begin(Heading heading, @Nullable String by) {
            Read<Session> begun = Session.inMemory(
                    basis(), heading, Inspector.named(by).byClock(CLOCK).inUnits(units));
            session = begun.value().orElse(null);
            return begun;
        }

        @Override
        public String handOver(Finished handedOver) {
            finished = handedOver;
            return "The sheet:  0500.json\n";
        }

        @Override
        public String howToGoOn() {
            return "Everything that was entered is kept. The same command goes on where it was left.";
        }

        JobSheet sheet() {
            return Objects.requireNonNull(session).standing().sheet().content();
        }
    }

    private static Basis basis() {
        return new Basis(
                Procedure.read(BENCH.resolve("first_look.inspection")).orElseThrow(),
                CardFile.read(BENCH.resolve("cards/quillan-15.json")).orElseThrow(),
                TrayFile.read(BENCH.resolve("trays/bench-one.json")).orElseThrow());
    }

    private final InMemory bench = new InMemory(UnitSystem.METRIC);

    private static Guide guide(InMemory around, Look look) {
        Opening opening = Opening.of(
                "0500",
                LocalDate.of(2026, 3, 4),
                CardFile.read(BENCH.resolve("cards/quillan-15.json"))
                        .orElseThrow()
                        .content());
        return Guide.beginning(opening, around, look);
    }

    /** Both sides of a conversation, until it is over or nobody types any more. */
    private static String talked(Guide guide, List<String> lines) {
        StringBuilder both = new StringBuilder();
        Said said = guide.greet();
        both.append(said.text());
        for (String line : lines) {
            assertThat(said.isOver()).as("over before: " + line).isFalse();
            both.append(said.prompt()).append(line).append('\n');
            said = guide.hear(line);
            both.append(said.text());
        }
        return (said.isOver()
                        ? both
                        : both.append(said.prompt())
                                .append("\n")
                                .append(guide.leave().text()))
                .toString();
    }

    /** A guide that stands at an observation of a late cam engine, cold and on the right stroke. */
    private Guide at(String observation) {
        Guide guide = guide(bench, Look.plain());
        guide.greet();
        List<String> lines = new ArrayList<>(List.of("mk", "", "", "", "late", "", "y"));
        lines.addAll(List.of("go head", "21.0 °C", "go room", "21.0 °C", "go rockers_free", "y"));
        lines.add("go " + observation);
        lines.forEach(guide::hear);
        return guide;
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-look", "slips", "too-wide"})
    void a_conversation_is_as_a_person_has_read_it(String name) throws IOException {
        Path folder = CONVERSATIONS.resolve(name);
        List<String> typed = Files.readAllLines(folder.resolve("typed.txt"));

        String both = talked(guide(bench, Look.plain()), typed);

        Path said = folder.resolve("said.txt");
        if (Boolean.getBoolean("golden.write")) {
            Files.writeString(said, both);
        }
        assertThat(both).isEqualTo(Files.readString(said));
    }

    @Test
    void a_first_look_from_nothing_to_the_end_leaves_a_sheet_that_is_ready() throws IOException {
        talked(
                guide(bench, Look.plain()),
                Files.readAllLines(CONVERSATIONS.resolve("first-look").resolve("typed.txt")));

        Finished finished = Objects.requireNonNull(bench.finished);
        assertThat(finished.report().release().word()).isEqualTo("ready");
        assertThat(finished.sheet().content().entries()).hasSizeGreaterThan(40);
        assertThat(finished.sheet().content().engine().variant()).isEqualTo("late cam");
    }

    @Test
    void the_trap_is_told_as_soon_as_it_is_entered_and_the_stack_that_settles_it() {
        Guide guide = at("lash[intake]");

        assertThat(guide.hear("0.05 passes, 0.10 refuses").text())
                .contains(">> OPEN: Lash of the intake valve (0.0500 mm to 0.1100 mm)")
                .contains("the thinnest leaf that refuses measures")
                .contains("Offer 0.05 + 0.04 mm together (0.0920 mm)");
        assertThat(guide.hear("refuses").text()).contains("ok: Lash of the intake valve (0.0500 mm to 0.0920 mm)");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0.05 passes, 0.08 refuses",
                "0.05 p 0.08 r",
                "passes 0.05 refuses 0.08",
                "0.05 mm passes; 0.08 mm refuses",
                "0.05 goes and 0.08 stops",
                "0.050 Passes, 0.08 REFUSES"
            })
    void leaves_are_spoken_of_as_people_speak(String line) {
        assertThat(at("lash[intake]").hear(line).text())
                .contains("ok: Lash of the intake valve (0.0500 mm to 0.0810 mm)");
    }

    @Test
    void a_unit_that_is_missing_is_asked_for_and_none_is_guessed() {
        Guide guide = at("arm_thickness");

        assertThat(guide.hear("1.50").text()).isEqualTo("  1.50 of what: mm, thou or in?\n");
        assertThat(guide.hear("mm").text()).contains("ok: The throttle arm is the one");
        assertThat(bench.sheet().entries().get(4).given()).hasToString("Words[text=1.50 mm]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.5 mm", "0.059 in", "59 thou", "24.5 mm - 23 mm"})
    void an_amount_may_be_given_in_any_unit_and_as_a_sum(String line) {
        assertThat(at("arm_thickness").hear(line).text()).contains("ok: The throttle arm is the one");
    }

    @ParameterizedTest
    @ValueSource(strings = {"3 °C", "long", "6,0 mm", "6 parsec", "6 mm ± 1 mm"})
    void what_is_no_such_amount_is_told_and_asked_again(String line) {
        Said said = at("arm_thickness").hear(line);

        assertThat(said.text()).startsWith("  ? ");
        assertThat(said.prompt()).isEqualTo("arm_thickness> ");
    }

    @Test
    void numbers_are_shown_as_the_shop_likes_them() {
        InMemory inch = new InMemory(UnitSystem.INCH);
        Guide guide = guide(inch, Look.plain());
        guide.greet();
        List.of("mk", "", "", "", "late", "", "y", "go arm_thickness").forEach(guide::hear);

        assertThat(guide.hear("1.5").text()).isEqualTo("  1.5 of what: mm, thou or in?\n");
        assertThat(guide.hear("mm").text()).contains("in (u ");
    }

    @Test
    void what_is_left_undone_is_asked_again_when_the_guide_goes_on_with_its_session() {
        at("plug_length").hear("6 mm");
        Session session = Objects.requireNonNull(bench.session);

        Said said = Guide.resuming(session, bench, Look.plain()).greet();

        assertThat(said.text()).contains("Going on where it was left.").contains("5 done");
        assertThat(said.prompt()).isEqualTo("build_evidence> ");
    }

    @Test
    void no_line_is_wider_than_a_narrow_terminal_as_far_as_words_can_be_parted() throws IOException {
        String both = talked(
                guide(bench, new Look(40, false)),
                Files.readAllLines(CONVERSATIONS.resolve("first-look").resolve("typed.txt")));

        assertThat(both.lines()
                        .filter(line -> !line.contains("> ") && line.strip().contains(" ")))
                .allMatch(line -> line.length() <= 44, "fits");
    }

    @Test
    void what_is_begun_can_be_completed() {
        Guide guide = at("lash[intake]");

        assertThat(guide.completions("0.05")).contains("0.05 passes", "0.05 refuses", "0.05 drags");
        assertThat(guide.completions("0.05 passes, 0.1")).containsExactly("0.05 passes, 0.10");
        assertThat(guide.completions("la")).containsExactly("later");
        assertThat(guide.completions("go lash[e")).containsExactly("go lash[exhaust]");
        guide.hear("go plug_length");
        assertThat(guide.completions("6.01")).containsExactly("6.01 mm", "6.01 thou", "6.01 in");
        assertThat(guide.completions("6.01 t")).containsExactly("6.01 thou");
        guide.hear("go push_rods");
        assertThat(guide.completions("of")).containsExactly("off its seat");
    }

    @Test
    void nothing_that_is_typed_ends_in_an_exception() {
        Guide guide = at("lash[intake]");
        for (String line : List.of(
                "",
                "=",
                "= (",
                "+",
                "passes",
                "0.05 +",
                "+ + passes",
                "//",
                " // ",
                "go",
                "go nowhere",
                "why nothing",
                "correct",
                "correct x",
                "adjust",
                "adjust x y",
                "cannot",
                "",
                "undo",
                "undo",
                "undo",
                "back",
                "back",
                "next",
                "skip",
                "later",
                "list",
                "report",
                "HELP",
                "?",
                "\u0000",
                "\"",
                "a".repeat(5_000),
                "0.05 passes".repeat(50))) {
            Said said = guide.hear(line);
            assertThat(said.isOver()).as(line).isFalse();
        }
    }
}

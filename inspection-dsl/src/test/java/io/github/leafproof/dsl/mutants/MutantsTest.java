package io.github.leafproof.dsl.mutants;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.source.SourceText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Which slips are made of which words. */
class MutantsTest {

    private static final Path BENCH = Path.of("..", "examples", "bench");

    private static List<Mutant> mutants(String declarations) {
        SourceText text =
                SourceText.of("folder/trial.inspection", "procedure trial \"A trial\" revision 1\n" + declarations);
        return Mutants.of(Procedure.compile(text).orElseThrow().written());
    }

    /** Their names, without the file's. */
    private static List<String> slips(String declarations) {
        return mutants(declarations).stream()
                .map(mutant -> mutant.name().replace("trial.inspection ", ""))
                .toList();
    }

    @Test
    void a_limit_is_shifted_by_a_tenth_and_by_its_last_digit_at_least() {
        assertThat(Shift.ofAmount("4000 rpm")).containsExactly("4400 rpm", "3600 rpm");
        assertThat(Shift.ofAmount("9 500 rpm")).containsExactly("10400 rpm", "8600 rpm");
        assertThat(Shift.ofAmount("0.25 turns")).containsExactly("0.27 turns", "0.23 turns");
        assertThat(Shift.ofAmount("0.05 mm")).containsExactly("0.06 mm", "0.04 mm");
        assertThat(Shift.ofAmount("160 °C")).containsExactly("170 °C", "150 °C");
        assertThat(Shift.ofAmount("8")).containsExactly("9", "7");
        assertThat(Shift.ofAmount("0 K")).containsExactly("1 K", "-1 K");
        assertThat(Shift.ofAmount("23e-6")).containsExactly("0.000025", "0.000021");
        assertThat(Shift.ofDay("2024-02-28")).containsExactly("2024-02-29", "2024-02-27");
    }

    @Test
    void a_window_loses_a_side_and_has_its_limits_shifted() {
        assertThat(slips("""
                gauge depth : reading of length
                observe step : length with depth ask "Step"
                check small "Small" { require step between 2 mm and 30 mm tolerate to 35 mm }
                """))
                .containsExactlyInAnyOrder(
                        "check small: major -> critical",
                        "check small: between 2 mm and 30 mm tolerate to 35 mm -> at least 2 mm",
                        "check small: between 2 mm and 30 mm tolerate to 35 mm -> at most 30 mm tolerate to 35 mm",
                        "check small: 2 mm -> 3 mm",
                        "check small: 2 mm -> 1 mm",
                        "check small: 30 mm -> 33 mm",
                        "check small: 30 mm -> 27 mm",
                        "check small: tolerate to 35 mm -> nothing",
                        "check small: 35 mm -> 38 mm",
                        "check small: 35 mm -> 32 mm");
    }

    @Test
    void within_becomes_one_sided() {
        assertThat(slips("""
                observe head : temperature ask "Head"
                observe room : temperature ask "Room"
                check cold "Cold" minor { require head - room within 3 K of 0 K }
                """))
                .containsExactlyInAnyOrder(
                        "check cold: minor -> critical",
                        "check cold: within 3 K of 0 K -> at least 0 K - 3 K",
                        "check cold: within 3 K of 0 K -> at most 0 K + 3 K",
                        "check cold: 3 K -> 4 K",
                        "check cold: 3 K -> 2 K");
    }

    @Test
    void only_what_can_lie_on_a_limit_is_held_to_it_more_strictly() {
        assertThat(slips("""
                gauge depth : reading of length
                observe flips : count ask "Flips"
                observe step : length with depth ask "Step"
                let twice = step * 2
                check few "Few" { require flips at most 4 }
                check small "Small" { require twice at most 4 mm }
                """))
                .contains(
                        "check few: at most -> <", "check few: at most -> at least", "check small: at most -> at least")
                .doesNotContain("check small: at most -> <");
    }

    @Test
    void conditions_are_joined_otherwise_and_lose_a_part() {
        assertThat(slips("""
                observe cold : yes/no ask "Cold?"
                observe oil : one of clear, amber, black ask "Oil"
                check fine "Fine" { require not cold and (oil is one of clear, amber or oil is not black) }
                """))
                .contains(
                        "check fine: not cold and (oil is one of clear, amber or oil is not black) -> not cold",
                        "check fine: not cold -> cold",
                        "check fine: oil is one of clear, amber or oil is not black"
                                + " -> oil is one of clear, amber and oil is not black",
                        "check fine: clear -> no option",
                        "check fine: amber -> no option",
                        "check fine: is not -> is");
    }

    @Test
    void gates_occasions_and_what_may_be_left_out_are_dropped() {
        assertThat(slips("""
                observe a : yes/no ask "A?"
                observe b : yes/no optional when a ask "optional"
                observe c : grade low < high ask "C"
                check one "One" gate { require a }
                check two "Two" critical gate { require a is yes }
                stage "Then" {
                  after one
                  check three "Three" minor {
                    after one, two
                    when b
                    at 99 %
                    require b
                    require c at least high
                  }
                }
                """))
                .contains(
                        "observe b: optional -> nothing",
                        "observe b: when a -> nothing",
                        "check one: major -> critical",
                        "check two: critical -> major",
                        "stage \"Then\": after one -> nothing",
                        "check three: after one -> nothing",
                        "check three: after two -> nothing",
                        "check three: when b -> nothing",
                        "check three: at 99 % -> nothing",
                        "check three: require b -> nothing",
                        "check three: require c at least high -> nothing",
                        "check one: a -> yes",
                        "check one: a -> not a");
    }

    @Test
    void answers_change_places_where_they_decide() {
        String choice = """
                observe arm : one of metal, plastic, glass ask "Arm"
                observe low : length ask "Needle"
                let datum = choose arm { metal: 0 mm   plastic: 1 mm   otherwise: 2 mm }
                let word = choose arm { metal: "flush"   otherwise: "recessed" }
                let slack = if arm is metal then 0.2 mm else 0.3 mm
                check at_datum "At its datum" {
                  require low within slack of datum
                  if fails advise "{word}"
                }
                """;
        assertThat(slips(choice))
                .contains(
                        "let datum: 0 mm plastic: 1 mm -> 1 mm plastic: 0 mm",
                        "let datum: 1 mm otherwise: 2 mm -> 2 mm otherwise: 1 mm",
                        "let datum: plastic: 1 mm -> nothing",
                        "let slack: 0.2 mm else 0.3 mm -> 0.3 mm else 0.2 mm")
                .noneMatch(name -> name.startsWith("let word"));
    }

    @Test
    void a_release_loses_its_lines_and_the_outcomes_in_them() {
        assertThat(slips("""
                observe a : yes/no ask "A?"
                check one "One" minor { require a }
                check two "Two" { require not a }
                release {
                  reject when any minor fails
                  hold when one fails or open, any untested and two blocked
                  ready otherwise
                }
                """))
                .contains(
                        "release: reject when any minor fails -> nothing",
                        "release: one fails or open: fails -> nothing",
                        "release: one fails or open: open -> nothing",
                        "release: any untested and two blocked -> any untested or two blocked",
                        "release: any untested and two blocked -> nothing",
                        "check one: minor -> critical",
                        "check two: major -> minor");
    }

    @Test
    void a_confidence_becomes_the_usual_one_beside_it() {
        assertThat(slips("decide at 95 %\nobserve a : yes/no ask \"A?\"\ncheck one \"One\" { require a }\n"))
                .contains("decide: decide at 95 % -> decide at 90 %", "decide: decide at 95 % -> decide at 99 %");
    }

    @Test
    void a_mutant_shows_the_lines_that_it_changes() {
        Mutant mutant = mutants("""
                observe a : yes/no ask "A?"
                check one "One" gate { require a }
                check two "Two" {
                  after one
                  require a
                }
                """).stream()
                .filter(each -> each.kind() == Mutant.Kind.GATE)
                .findFirst()
                .orElseThrow();

        assertThat(mutant.place()).isEqualTo("folder/trial.inspection:5:3");
        assertThat(mutant.before()).containsExactly("  after one");
        assertThat(mutant.after()).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> an_edit_undone_gives_the_text_as_it_was() throws IOException {
        try (Stream<Path> files = Files.list(BENCH)) {
            return files.filter(file -> file.toString().endsWith(".inspection")).sorted().toList().stream()
                    .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> {
                        List<Mutant> all =
                                Mutants.of(Procedure.read(file).orElseThrow().written());
                        assertThat(all).hasSizeGreaterThan(20);
                        assertThat(all).extracting(Mutant::name).doesNotHaveDuplicates();
                        assertThat(all).allSatisfy(MutantsTest::canBeUndone);
                    }));
        }
    }

    private static void canBeUndone(Mutant mutant) {
        String before = mutant.span().source().text();
        String edited = mutant.text().text();
        int end = mutant.span().start() + mutant.instead().length();
        assertThat(edited).isNotEqualTo(before);
        assertThat(edited.substring(mutant.span().start(), end)).isEqualTo(mutant.instead());
        assertThat(edited.substring(0, mutant.span().start())
                        + mutant.span().source().of(mutant.span())
                        + edited.substring(end))
                .isEqualTo(before);
        assertThat(mutant.after()).isNotEqualTo(mutant.before());
    }
}

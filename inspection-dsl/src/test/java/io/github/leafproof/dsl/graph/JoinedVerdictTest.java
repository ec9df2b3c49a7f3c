package io.github.leafproof.dsl.graph;

import static io.github.leafproof.inspection.verdict.Outcome.BLOCKED;
import static io.github.leafproof.inspection.verdict.Outcome.FAILS;
import static io.github.leafproof.inspection.verdict.Outcome.NOT_APPLICABLE;
import static io.github.leafproof.inspection.verdict.Outcome.OPEN;
import static io.github.leafproof.inspection.verdict.Outcome.PASSES;
import static io.github.leafproof.inspection.verdict.Outcome.TOLERATED;
import static io.github.leafproof.inspection.verdict.Outcome.UNTESTED;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.inspection.verdict.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Conditions joined (Kleene's three-valued logic, docs/judging.md), gates, and what need not be observed. */
class JoinedVerdictTest {

    /** Each of the two is yes, no, open or not entered; a depth of 1.00 mm against 1 mm is open. */
    private static final Workshop TWO = Workshop.of("""
            gauge depth : reading of length
            observe a : length with depth ask "Measure a"
            observe b : length with depth ask "Measure b"
            check both "Both" major { require a at most 1 mm and b at most 1 mm }
            check lines "In two lines" major {
              require a at most 1 mm
              require b at most 1 mm
            }
            check either "Either" major { require a at most 1 mm or b at most 1 mm }
            check neither "Neither" major { require not (a at most 1 mm or b at most 1 mm) }
            """);

    private static Workshop entered(Workshop workshop, String name, String word) {
        return switch (word) {
            case "yes" -> workshop.observe(name, "\"0.5 mm\"");
            case "no" -> workshop.observe(name, "\"1.5 mm\"");
            case "open" -> workshop.observe(name, "\"1.00 mm\"");
            default -> workshop;
        };
    }

    @ParameterizedTest(name = "{0} and {1} is {2}, {0} or {1} is {3}")
    @CsvSource({
        "yes,  yes,  PASSES,   PASSES",
        "yes,  no,   FAILS,    PASSES",
        "no,   no,   FAILS,    FAILS",
        "yes,  open, OPEN,     PASSES",
        "no,   open, FAILS,    OPEN",
        "open, open, OPEN,     OPEN",
        "yes,  none, UNTESTED, PASSES",
        "no,   none, FAILS,    UNTESTED",
        "open, none, UNTESTED, UNTESTED",
        "none, none, UNTESTED, UNTESTED",
    })
    void one_that_decides_alone_decides_whatever_is_open_or_lacking_beside_it(
            String first, String second, Outcome and, Outcome or) {
        Workshop straight = entered(entered(TWO, "a", first), "b", second);
        Workshop crossed = entered(entered(TWO, "a", second), "b", first);

        for (Workshop entered : new Workshop[] {straight, crossed}) {
            assertThat(entered.outcome("both")).isEqualTo(and);
            assertThat(entered.outcome("lines")).isEqualTo(and);
            assertThat(entered.outcome("either")).isEqualTo(or);
            assertThat(entered.outcome("neither")).isEqualTo(or == PASSES ? FAILS : or == FAILS ? PASSES : or);
        }
    }

    @Test
    void a_joined_requirement_is_explained_part_by_part_and_keeps_its_parentheses() {
        Workshop three = Workshop.of("""
                observe a : yes/no ask "a"
                observe b : yes/no ask "b"
                observe c : count ask "c"
                check mixed "Mixed" major { require (a or b) and c at least 2 }
                check turned "Turned" major { require not (a and c at least 2) }
                """);
        Workshop entered = three.observe("a", "true").observe("b", "false").observe("c", "1");

        assertThat(entered.check("mixed").requirement()).isEqualTo("(a is yes or b is yes) and c at least 2");
        assertThat(entered.check("mixed").value()).isEqualTo("a yes; b no; c 1");
        assertThat(entered.check("mixed").evidence()).contains("c is 1, below 2");
        assertThat(entered.check("turned").requirement()).isEqualTo("not (a is yes and c at least 2)");
        assertThat(entered.outcome("turned")).isEqualTo(PASSES);
    }

    @Test
    void a_tolerated_part_leaves_the_whole_tolerated() {
        Workshop margin = Workshop.of("""
                observe hold : time ask "How long?"
                observe clean : yes/no ask "Clean?"
                let holds = hold at least 3 s tolerate to 2 s
                check fit "Fit" major { require holds and clean }
                check derived "Derived" minor { require holds }
                """).observe("hold", "\"2.5 s\"").observe("clean", "true");

        assertThat(margin.outcome("fit")).isEqualTo(TOLERATED);
        assertThat(margin.check("derived").value()).isEqualTo("yes, within what is tolerated");
    }

    private static final Workshop GATED = Workshop.of("""
            observe cold : yes/no ask "Is it cold?"
            observe dry  : yes/no ask "Is it dry?"
            observe free : yes/no when dry ask "Does it turn?"
            check is_cold "Cold" major gate { require cold if untested advise "Look whether it is cold." }
            check is_dry "Dry" minor gate { after is_cold require dry if blocked advise "First let it cool." }
            stage "By hand" {
              after is_dry
              check turns "It turns" critical { after is_cold require free }
            }
            """);

    @Test
    void behind_a_gate_that_does_not_pass_a_check_is_blocked_and_never_a_fail() {
        Workshop warm = GATED.observe("cold", "false").observe("dry", "true").observe("free", "false");

        assertThat(warm.outcome("is_cold")).isEqualTo(FAILS);
        assertThat(warm.outcome("turns")).isEqualTo(BLOCKED);
        assertThat(warm.check("turns").missing())
                .containsExactlyInAnyOrder("waits for is_cold (Cold)", "waits for is_dry (Dry)");
        assertThat(warm.check("is_dry").advice()).containsExactly("First let it cool.");
        assertThat(warm.check("turns").probability()).isNull();
    }

    @Test
    void a_gate_that_nobody_looked_at_blocks_as_well() {
        assertThat(GATED.outcome("turns")).isEqualTo(BLOCKED);
        assertThat(GATED.check("is_cold").advice()).containsExactly("Look whether it is cold.");
    }

    @Test
    void once_the_gates_let_through_it_is_judged() {
        Workshop cold = GATED.observe("cold", "true").observe("dry", "true");

        assertThat(cold.observe("free", "true").outcome("turns")).isEqualTo(PASSES);
        assertThat(cold.observe("free", "false").outcome("turns")).isEqualTo(FAILS);
    }

    @Test
    void a_gate_that_does_not_apply_lets_through() {
        Workshop skipped = Workshop.of("""
                observe shuts : yes/no when engine.choke ask "Does the choke shut?"
                observe draws : yes/no ask "Does it draw?"
                check choke "Choke" major gate { require shuts }
                check drawing "Draws" critical { after choke require draws }
                """).observe("draws", "true");

        assertThat(skipped.outcome("choke")).isEqualTo(NOT_APPLICABLE);
        assertThat(skipped.outcome("drawing")).isEqualTo(PASSES);
    }

    @Test
    void when_its_condition_does_not_hold_a_check_does_not_apply() {
        Workshop when = Workshop.of("""
                gauge depth : reading of length
                observe worn : length with depth ask "Wear"
                observe sound : yes/no ask "Sound?"
                check only_new "Only where it is little worn" major {
                  when worn at most 1 mm
                  require sound
                }
                """).observe("sound", "true");

        assertThat(when.observe("worn", "\"2 mm\"").outcome("only_new")).isEqualTo(NOT_APPLICABLE);
        assertThat(when.observe("worn", "\"0.5 mm\"").outcome("only_new")).isEqualTo(PASSES);
        assertThat(when.outcome("only_new")).isEqualTo(UNTESTED);
        assertThat(when.observe("worn", "\"1.00 mm\"").outcome("only_new")).isEqualTo(OPEN);
        assertThat(when.observe("worn", "\"1.00 mm\"").check("only_new").missing())
                .containsExactly("only_new may or may not apply: it cannot be told");
    }

    @Test
    void what_may_be_left_out_and_was_makes_its_check_not_apply() {
        Workshop remark = Workshop.of("observe remark : text optional ask \"Anything odd?\"\n"
                + "check remarked \"Nothing odd\" minor { require remark is \"nothing\" }");

        assertThat(remark.outcome("remarked")).isEqualTo(NOT_APPLICABLE);
        assertThat(remark.observe("remark", "\"nothing\"").outcome("remarked")).isEqualTo(PASSES);
        assertThat(remark.observe("remark", "\"a rattle\"").outcome("remarked")).isEqualTo(FAILS);
    }

    @Test
    void what_was_left_out_hides_nothing_that_stands_beside_it() {
        Workshop beside = Workshop.of("""
                gauge depth : reading of length
                observe step : length with depth ask "Step"
                observe rattle : yes/no optional ask "Rattle?"
                check sound "Sound" critical gate { require step at most 1 mm and not rattle }
                check lone "Lone" minor { require not rattle }
                """);

        assertThat(beside.observe("step", "\"1.00 mm\"").outcome("sound")).isEqualTo(OPEN);
        assertThat(beside.observe("step", "\"0.5 mm\"").outcome("sound")).isEqualTo(PASSES);
        assertThat(beside.observe("step", "\"1.5 mm\"").outcome("sound")).isEqualTo(FAILS);
        assertThat(beside.outcome("sound")).isEqualTo(UNTESTED);
        assertThat(beside.outcome("lone")).isEqualTo(NOT_APPLICABLE);
    }

    @Test
    void what_hangs_on_something_left_out_is_left_out_with_it() {
        Workshop chain = Workshop.of("""
                observe shuts : yes/no when engine.choke ask "Does the choke shut?"
                observe springs : yes/no when shuts ask "Does it spring back?"
                observe alike : yes/no when springs ask "Both times alike?"
                check spring "Spring" major { require springs }
                check twice "Alike" major { require alike }
                """);

        assertThat(chain.outcome("spring")).isEqualTo(NOT_APPLICABLE);
        assertThat(chain.outcome("twice")).isEqualTo(NOT_APPLICABLE);
        assertThat(chain.card("\"choke\": false", "\"choke\": true").outcome("spring"))
                .isEqualTo(UNTESTED);
    }

    @Test
    void a_value_chosen_by_something_open_is_open_and_by_something_missing_untested() {
        Workshop chosen = Workshop.of("""
                gauge depth : reading of length
                observe step : length with depth ask "Step"
                observe arm : one of metal, plastic ask "Arm"
                let most = if step at most 1 mm then 2 mm else 3 mm
                let datum = choose arm { metal: 0 mm   plastic: 1 mm }
                check wide "Wide" minor { require engine.lash_max at most most }
                check deep "Deep" minor { require step at least datum }
                check either "Either" minor { require if arm is metal then step at most 1 mm else step at most 2 mm }
                """);

        assertThat(chosen.observe("step", "\"1.00 mm\"").outcome("wide")).isEqualTo(OPEN);
        assertThat(chosen.observe("step", "\"0.5 mm\"").outcome("wide")).isEqualTo(PASSES);
        assertThat(chosen.observe("step", "\"0.5 mm\"").outcome("deep")).isEqualTo(UNTESTED);
        Workshop plastic = chosen.observe("step", "\"1.5 mm\"").observe("arm", "\"plastic\"");
        assertThat(plastic.outcome("deep")).isEqualTo(PASSES);
        assertThat(plastic.outcome("either")).isEqualTo(PASSES);
        assertThat(plastic.check("either").requirement()).isEqualTo("step at most 2 mm");
        assertThat(chosen.observe("step", "\"1.5 mm\"").check("either").requirement())
                .isEqualTo("if arm is metal then step at most 1 mm else step at most 2 mm");
        assertThat(chosen.observe("step", "\"1.5 mm\"")
                        .observe("arm", "\"metal\"")
                        .outcome("either"))
                .isEqualTo(FAILS);
    }
}

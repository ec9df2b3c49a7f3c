package io.github.leafproof.dsl.meaning;

import static io.github.leafproof.dsl.meaning.Bench15.assertJudged;
import static io.github.leafproof.dsl.meaning.Bench15.check;
import static io.github.leafproof.dsl.meaning.Bench15.compiled;
import static io.github.leafproof.dsl.meaning.Bench15.diagnostics;
import static io.github.leafproof.dsl.meaning.Bench15.graph;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.graph.BenchState;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Hazard;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import io.github.leafproof.inspection.verdict.Severity;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What becomes of loops, stages, gates, functions and rules once a procedure is understood. */
class StructureOfProceduresTest {

    private static final String FREE = "observe free : yes/no\n";

    private static List<String> gatesOf(String name, String text) {
        CheckGraph graph = graph(text);
        return check(name, text).after().stream()
                .map(gate -> graph.checks().get(gate).name())
                .toList();
    }

    @Test
    void loops_in_loops_say_their_body_once_for_each_pair_of_values() {
        String text = """
                for cylinder in front, rear { for valve in intake, exhaust {
                observe lash[cylinder][valve] : length ask "Lash of {cylinder} {valve}"
                check ok[cylinder][valve] "{valve} valve, {cylinder}" { require lash[cylinder][valve] at most 1 mm }
                } }
                let most = max(lash[front][intake], lash[rear][exhaust])
                check both "Both" { require most at most 2 mm }""";

        assertThat(graph(text).observations())
                .extracting(Node.Observation::name)
                .containsExactly(
                        "lash[front][intake]", "lash[front][exhaust]", "lash[rear][intake]", "lash[rear][exhaust]");
        assertThat(check("ok[rear][intake]", text).title()).isEqualTo("intake valve, rear");
        assertJudged(
                text,
                "lash[front][intake] 0.5 mm, lash[front][exhaust] 2 mm, lash[rear][intake] 0.5 mm, lash[rear][exhaust] 3 mm",
                "ok[front][intake] passes, ok[front][exhaust] fails, ok[rear][exhaust] fails, both fails");
    }

    @Test
    void the_variable_of_a_loop_can_be_asked_about_and_chosen_by() {
        String text = """
                for valve in intake, exhaust {
                observe lash[valve] : length
                let widest[valve] = choose valve { intake: 0.1 mm   exhaust: 0.2 mm }
                let also[valve] = if valve is intake then 0.1 mm else 0.2 mm
                check a[valve] "A" { require lash[valve] at most widest[valve] and lash[valve] at most also[valve] }
                }""";

        assertJudged(text, "lash[intake] 0.15 mm, lash[exhaust] 0.15 mm", "a[intake] fails, a[exhaust] passes");
    }

    @Test
    void a_gate_in_a_loop_stands_before_the_check_of_its_own_round() {
        String text = """
                for side in left, right {
                observe free[side] : yes/no
                check turns[side] "T" gate { require free[side] }
                check later[side] "L" { after turns[side] require free[side] }
                }
                check both "B" { after turns[left], turns[right] require free[left] }""";

        assertThat(gatesOf("later[right]", text)).containsExactly("turns[right]");
        assertThat(gatesOf("both", text)).containsExactly("turns[left]", "turns[right]");
        assertJudged(
                text,
                "free[left] yes, free[right] no",
                "later[left] passes, turns[right] fails, later[right] blocked, both blocked");
    }

    @Test
    void the_gates_of_a_stage_stand_before_every_check_in_it_but_themselves() {
        String text = FREE + """
                check cold "C" gate { require free }
                stage "By hand" {
                 after cold, dry, wiped
                check dry "D" gate { require free }
                check wiped "W" gate { after dry require free }
                check turns "T" { require free }
                }
                """;

        assertThat(gatesOf("cold", text)).isEmpty();
        assertThat(gatesOf("dry", text)).isEmpty();
        assertThat(gatesOf("wiped", text)).containsExactly("dry");
        assertThat(gatesOf("turns", text)).containsExactly("cold", "dry", "wiped");
        assertThat(check("turns", text).stage()).isEqualTo("By hand");
    }

    @Test
    void a_gate_named_twice_is_waited_for_once() {
        String text = FREE + """
                check cold "C" gate { require free }
                stage "S" { after cold
                check turns "T" { after cold, cold require free } }""";

        assertThat(gatesOf("turns", text)).containsExactly("cold");
    }

    @Test
    void a_check_has_its_own_confidence_or_that_of_the_procedure() {
        String text = "decide by simple acceptance\n" + FREE + """
                check a "A" { require free }
                check b "B" { at 99 % require free }
                check c "C" { at 99.99 % require free }
                check d "D" { at 50 % require free }""";

        assertThat(graph(text).rule()).isEqualTo(DecisionRule.simpleAcceptance());
        assertThat(check("a", text).rule()).isEqualTo(DecisionRule.simpleAcceptance());
        assertThat(check("b", text).rule()).isEqualTo(DecisionRule.guarded(0.99));
        assertThat(check("c", text).rule()).isEqualTo(DecisionRule.guarded(99.99 / 100));
        assertThat(check("d", text).rule()).isEqualTo(DecisionRule.simpleAcceptance());
        assertThat(check("a", text.replace("decide by simple acceptance", "")).rule())
                .isEqualTo(DecisionRule.guarded(0.95));
    }

    /**
     * The tray's depth gauge is within ±0.03 mm and shows 0.01 mm: half-widths 0.03 and 0.005, u = √(0.03² + 0.005²)/√3
     * = 0.0176 mm. 0.965 mm is 1.99 u below 1 mm: at 95 % (1.645 u, one side) shown to hold, at 99 % (2.326 u) not.
     */
    @Test
    void what_is_sure_enough_at_95_percent_may_be_open_at_99() {
        String text = """
                gauge depth : reading of length
                observe wear : length with depth
                check a "A" { require wear at most 1 mm }
                check b "B" { at 99 % require wear at most 1 mm }""";

        assertJudged(text, "wear 0.965 mm", "a passes, b open");
        assertJudged(text, "wear 0.94 mm", "a passes, b passes");
    }

    @Test
    void several_requirements_of_a_check_must_all_hold() {
        String text = FREE + "observe dry : yes/no\ncheck a \"A\" { require free require dry }";

        assertJudged(text, "free yes, dry yes", "a passes");
        assertJudged(text, "free yes, dry no", "a fails");
    }

    @Test
    void severity_is_major_unless_it_is_said() {
        String text = FREE + """
                check a "A" { require free }
                check b "B" critical { require free }
                check c "C" minor { require free because "the card" }""";

        assertThat(check("a", text).severity()).isEqualTo(Severity.MAJOR);
        assertThat(check("b", text).severity()).isEqualTo(Severity.CRITICAL);
        assertThat(check("c", text).severity()).isEqualTo(Severity.MINOR);
        assertThat(check("c", text).because()).containsExactly("the card");
    }

    @Test
    void functions_may_apply_others_and_take_options_conditions_gaps_and_texts() {
        String text = "gauge leaves : leaf set\nobserve lash : gap with leaves\nobserve arm : one of metal, plastic\n"
                + FREE
                + """
                define datum(kind : one of metal, plastic) = choose kind { metal: 0.1 mm   plastic: 0.2 mm }
                define widest(kind : one of metal, plastic, ok : yes/no) = if ok then datum(kind) else datum(metal)
                define inside(what : gap, most : length) = what at most most
                define said(word : text) = "It is {word}."
                check a "A" { require inside(lash, widest(arm, free)) if fails advise said("wide") }
                check b "B" { require inside(lash, datum(plastic)) if open advise next_leaf(lash, 0.1 mm, 0.2 mm) }""";

        assertThat(diagnostics(text)).isEmpty();
        assertJudged(text, "lash passes \"0.06\" refuses \"0.08\", arm metal, free no", "a passes, b passes");
        assertJudged(text, "lash passes \"0.06\", arm plastic, free yes", "a open, b open");
    }

    @Test
    void a_value_may_stand_below_its_users_and_comes_before_them_in_the_graph() {
        String text = """
                observe wear : length
                let a = b + 1 mm
                let b = c + c
                let c = wear / 2
                check d "D" { require a at most 3 mm }""";

        assertThat(graph(text).derived()).extracting(Node.Derived::name).containsExactly("c", "b", "a");
        assertThat(graph(text).observationsOf(check("d", text)))
                .extracting(Node.Observation::name)
                .containsExactly("wear");
        assertJudged(text, "wear 2 mm", "d passes");
        assertJudged(text, "wear 2.1 mm", "d fails");
    }

    @Test
    void what_need_not_be_observed_and_was_not_does_not_apply() {
        String text = """
                observe stop : yes/no when engine.throttle_stop
                observe remark : text optional
                observe must : yes/no
                check a "A" { require stop }
                check b "B" { require remark is "none" }
                check c "C" { require must }
                check d "D" { when engine.choke require must }""";

        Node.Observation remark = (Node.Observation) graph(text).node("remark").orElseThrow();
        assertThat(remark.optional()).isTrue();
        // Card of the 15: no throttle stop, no choke.
        assertJudged(
                text + FREE + "check e \"E\" { require free }",
                "free yes",
                "a not_applicable, b not_applicable, c untested, d not_applicable, e passes");
    }

    @Test
    void a_procedure_for_other_engines_says_so_from_facts_of_the_engine_alone() {
        String text = "applies when engine.displacement at most 20 cm3 and engine.maker is \"Quillan\"\n" + FREE
                + "check a \"A\" { require free }";

        assertThat(graph(text).applies()).isPresent();
        assertThat(graph(text).facts())
                .extracting(Node.Fact::name)
                .containsExactly("engine.displacement", "engine.maker");
        assertThat(graph(text.replaceFirst("applies.*\n", "")).applies()).isEmpty();
    }

    @Test
    void without_a_release_the_usual_rule_decides() {
        String text = FREE + "check a \"A\" { require free }";

        assertThat(graph(text).release()).isEqualTo(ReleaseRule.usual());
        assertJudged(text, "free yes", "release ready");
        assertJudged(text, "free no", "release hold");
    }

    @Test
    void the_first_line_of_a_release_that_holds_decides() {
        String text = FREE + """
                observe dry : yes/no
                check a "A" critical { require free }
                check b "B" minor { require dry }
                release {
                 reject when any critical fails and b fails
                 hold when a fails, b untested
                 unfinished when any minor fails or open
                 ready otherwise
                }""";

        assertJudged(text, "free no, dry no", "release reject");
        assertJudged(text, "free no, dry yes", "release hold");
        assertJudged(text, "free yes", "release hold");
        assertJudged(text, "free yes, dry no", "release unfinished");
        assertJudged(text, "free yes, dry yes", "release ready");
    }

    @Test
    void an_observation_knows_its_states_hazards_gauge_and_notes() {
        String text = """
                hazard solvent "Open the door."
                setup covers starts on { on -> off "Lift them" hazard solvent  while off hazard eyes }
                gauge clock : reading of pressure per time
                gauge clicks : counter
                observe leak : pressure per time with clock setup covers off hazard fuel, solvent note "Wait." note "Look."
                observe flips : count with clicks ask "Of {engine.model}"
                check a "A" { require leak at most 1 kPa/min and flips at most 3 }""";

        Node.Observation leak = (Node.Observation) graph(text).node("leak").orElseThrow();
        assertThat(leak.needs()).containsExactly(new BenchState.Need("covers", "off"));
        assertThat(leak.hazards()).extracting(Hazard::name).containsExactly("fuel", "solvent");
        assertThat(leak.notes()).containsExactly("Wait.", "Look.");
        assertThat(leak.ask().words()).isEqualTo("leak");
        assertThat(graph(text).states().get(0).hazardsWhile("off"))
                .extracting(Hazard::name)
                .containsExactly("eyes");
    }

    @Test
    void types_may_be_quotients_of_dimensions() {
        String text = """
                observe a : length per turn
                observe b : pressure per minute
                observe c : volume per hour per second
                observe d : length per degree
                check e "E" { require a at most 1 mm per turn and b at most 1 kPa/min and d at most 1 mm per deg }
                check f "F" { require c at most 1 mL/h/s }""";

        assertThat(diagnostics(text)).isEmpty();
    }

    @Test
    void what_is_looked_up_by_mistake_in_a_loop_is_said_once() {
        String text =
                "for v in a, b, c, d { observe x[v] : length  check k[v] \"K\" { require x[v] at most nothing_known } }";

        assertThat(compiled(text).diagnostics()).hasSize(1);
    }

    @Test
    void a_value_that_makes_no_sense_leaves_its_users_in_peace() {
        String text = """
                observe x : length
                let a = x + 3 K
                let b = a / 2
                define f(q : length) = q + a
                check c "C" { require b at most f(3 mm) and a at most b }""";

        assertThat(compiled(text).diagnostics()).hasSize(1);
    }
}

package io.github.leafproof.dsl.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Cost;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Occasion;
import io.github.leafproof.dsl.layout.GraphWords;
import io.github.leafproof.dsl.parts.Shelf;
import io.github.leafproof.dsl.rehearsal.Rehearsed;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import io.github.leafproof.inspection.verdict.Severity;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A procedure drafted by a program is the one that a person writes. */
class ProcedureDraftTest {

    private static final CheckGraph FIRST_LOOK = Procedure.read(
                    Path.of("src", "test", "resources", "build", "first_look.inspection"))
            .orElseThrow()
            .graph();

    /** The core of a first look, from its covers to its fuel, told in Java. */
    private static ProcedureDraft core() {
        return ProcedureDraft.named("first_look", "First look, before the stand", 4)
                .appliesWhen("engine.displacement between 5 cm3 and 35 cm3")
                .decideAt("95 %")
                .gauge("leaves", "leaf set")
                .gauge("infrared", "reading of temperature")
                .setup(
                        "covers",
                        "fitted",
                        covers -> covers.change("fitted", "off", "Lift the rocker covers; mind the gaskets")
                                .change("off", "fitted", "Refit the rocker covers"))
                .setup(
                        "piston",
                        "free",
                        piston -> piston.change(
                                        "free",
                                        "at_top",
                                        "Turn it the way it runs until compression is felt, then about a quarter turn on: top dead"
                                                + " centre with both valves shut")
                                .change("at_top", "free", "Let the engine turn again"))
                .setup(
                        "fuel",
                        "none",
                        fuel -> fuel.change(
                                        "none",
                                        "offered",
                                        "Bring a tank with a little fuel to the inlet, its level with the jet",
                                        "fuel")
                                .change(
                                        "offered",
                                        "none",
                                        "Pinch the line, take the tank away and drain what is left",
                                        "fuel")
                                .whileIn("offered", "fuel", "fire"))
                .stage("Valve lash, cold", ProcedureDraftTest::lash)
                .stage(
                        "Fuel at the inlet",
                        stage -> stage.after("lash_within[intake]", "lash_within[exhaust]")
                                .observe(
                                        "column_fall",
                                        "length",
                                        fall -> fall.setup("fuel", "offered")
                                                .hazard("eyes")
                                                .ask("How far does it fall back in 60 s?"))
                                .check(
                                        "column_stands",
                                        "The fuel does not fall back",
                                        Severity.CRITICAL,
                                        check -> check.require("column_fall at most 2 mm")
                                                .because("common practice")))
                .release(rules -> rules.when(Release.REJECT, "any critical fails")
                        .when(Release.HOLD, "any fails or open or contradicted")
                        .when(Release.UNFINISHED, "any untested or blocked")
                        .otherwise(Release.READY));
    }

    private static void lash(StageDraft stage) {
        stage.let("lash_aim", "(engine.lash_min + engine.lash_max) / 2")
                .let(
                        "lever",
                        "choose engine.rocker_side_of_adjuster" + " { \"push rod\": engine.rocker_ratio   valve: 1 }")
                .observe(
                        "head",
                        "temperature",
                        head -> head.with("infrared")
                                .ask("Temperature of the cylinder head, on a matt black patch")
                                .note("Bare bright metal reads far too cold."))
                .observe(
                        "room",
                        "temperature",
                        room -> room.with("infrared").ask("Temperature of the bench beside it, on a matt black patch"))
                .gate(
                        "cold",
                        "The engine is at room temperature",
                        Severity.MAJOR,
                        check -> check.require("head - room within 3 K of 0 K")
                                .advise(
                                        Occasion.FAILS,
                                        "Let it stand, overnight if need be: lash is true on a cold engine only.")
                                .because("common practice: cylinder, push rod and valve grow by different amounts"))
                .observe(
                        "rockers_free",
                        "yes/no",
                        rockers -> rockers.setup("covers", "off", "piston", "at_top")
                                .ask("Rock the crank a little both ways: do both rockers keep their free play?"))
                .gate(
                        "right_stroke",
                        "Top dead centre with both valves shut, not the overlap",
                        Severity.MAJOR,
                        check -> check.require("rockers_free")
                                .advise(
                                        Occasion.FAILS,
                                        "Turn the crank one whole turn and look again. If a rocker is held there too, its"
                                                + " valve may be held open.")
                                .because("common practice: at the top of the overlap neither valve is quite shut, and a"
                                        + " good engine seems to have no lash"))
                .forEach(
                        "valve",
                        List.of("intake", "exhaust"),
                        each -> each.observe(
                                        "lash[valve]",
                                        "gap",
                                        lash -> lash.with("leaves")
                                                .setup("covers", "off", "piston", "at_top")
                                                .ask(
                                                        "Offer the leaves to the {valve} valve, thinnest first, flat and wiped"))
                                .gate(
                                        "lash_within[valve]",
                                        "Lash of the {valve} valve",
                                        Severity.CRITICAL,
                                        check -> check.after("cold", "right_stroke")
                                                .require("lash[valve] between engine.lash_min and engine.lash_max")
                                                .adviseBy(
                                                        Occasion.OPEN,
                                                        "next_leaf(lash[valve], engine.lash_min, engine.lash_max)")
                                                .adviseBy(
                                                        Occasion.HIGH,
                                                        "adjuster_turn(lash[valve], lash_aim, engine.adjuster_pitch, lever)")
                                                .adviseBy(
                                                        Occasion.LOW,
                                                        "adjuster_turn(lash[valve], lash_aim, engine.adjuster_pitch, lever)")
                                                .advise(
                                                        Occasion.CONTRADICTED,
                                                        "Wipe the leaves and the gap and offer both leaves again; one of the two was"
                                                                + " misread.")
                                                .because(
                                                        "the engine card; what a card tolerates on an engine that runs well cannot be"
                                                                + " claimed before it has run")));
    }

    @Test
    void drafted_in_java_it_has_the_observations_values_and_checks_of_the_file() {
        CheckGraph drafted = core().compile().orElseThrow().graph();

        assertThat(core().compile().diagnostics()).isEmpty();
        assertThat(drafted.identity().title()).isEqualTo(FIRST_LOOK.identity().title());
        for (String name :
                List.of("head", "room", "rockers_free", "lash[intake]", "lash[exhaust]", "lash_aim", "lever")) {
            assertThat(told(drafted, name)).isEqualTo(told(FIRST_LOOK, name));
        }
        for (String name : List.of("cold", "right_stroke", "lash_within[intake]", "lash_within[exhaust]")) {
            Node.Check check = (Node.Check) drafted.node(name).orElseThrow();
            Node.Check inFile = (Node.Check) FIRST_LOOK.node(name).orElseThrow();
            assertThat(words(check)).isEqualTo(words(inFile));
        }
        assertThat(GraphWords.of(drafted.states()))
                .isEqualTo(GraphWords.of(
                        List.of(FIRST_LOOK.state("covers"), FIRST_LOOK.state("piston"), FIRST_LOOK.state("fuel"))));
    }

    /** A node without its number, which hangs on what else a procedure holds. */
    private static String told(CheckGraph graph, String name) {
        return GraphWords.of(graph.node(name).orElseThrow())
                .replaceAll("(slot|number) \\d+", "$1")
                .replaceAll("gauges? .*?\\)", "");
    }

    private static String words(Node.Check check) {
        return List.of(
                        check.title(),
                        check.stage(),
                        check.severity(),
                        check.gate(),
                        check.requirement().words(),
                        check.rule(),
                        check.advice().stream()
                                .map(advice -> advice.occasion() + advice.text().words())
                                .toList(),
                        check.because())
                .toString();
    }

    @Test
    void what_it_wrote_is_a_procedure_like_any_other() {
        Procedure drafted = core().compile().orElseThrow();

        assertThat(drafted.source().text()).isEqualTo(core().text()).startsWith("procedure first_look");
        assertThat(Procedure.compile(drafted.source()).orElseThrow().tidied()).isEqualTo(drafted.tidied());
    }

    @Test
    void everything_else_that_a_procedure_can_say_is_said() {
        Compiled compiled = ProcedureDraft.named("small", "Small", 2)
                .decideBySimpleAcceptance()
                .hazard("solvent", "Open the door.")
                .define("half", "size : length", "size / 2")
                .observe(
                        "clean",
                        "yes/no",
                        clean -> clean.hazard("solvent").ask("Clean?").optional())
                .observe("width", "length", width -> width.when("clean").ask("How wide?"))
                .check(
                        "fits",
                        "It fits",
                        Severity.MINOR,
                        check -> check.when("clean")
                                .require("half(width) at most 2 mm")
                                .at("99 %"))
                .compile();

        assertThat(compiled.diagnostics()).isEmpty();
        CheckGraph graph = compiled.orElseThrow().graph();
        Node.Check fits = graph.checks().get(0);
        assertThat(fits.rule().confidence()).isEqualTo(0.99);
        assertThat(graph.rule().confidence()).isEqualTo(0.5);
        assertThat(fits.when()).isNotNull();
        assertThat(graph.observations().get(0).optional()).isTrue();
    }

    private static final Shelf PARTS = Shelf.of(Map.of("leaves.inspection", "gauge leaves : leaf set\n"));

    /** With everything that a procedure can say, as a person writes it. */
    private static final String WRITTEN = """
            procedure whole "Whole" revision 3
            use "leaves.inspection"
            card tank_offset : length
            applies when engine.displacement at least 5 cm3
            decide by simple acceptance
            hazard solvent "Open the door."
            gauge infrared : reading of temperature
            define half(size : length) = size / 2
            setup covers starts fitted {
              fitted -> off "Lift them" hazard eyes
              off -> fitted "Put them back"
              while off hazard solvent
            }
            stage "Before" {
              observe heads : series of temperature with infrared ask "Head, three times"
              observe bought : date optional ask "Bought on"
              check settled "It has settled" major gate {
                require slope(heads) within 0.5 K of 0 K and mean(heads) at most 30 degC (u 0.2 K)
                at 90 %
                if fails advise "Wait: {heads}."
                because "common practice"
              }
              check young "It is not old" minor { when engine.tank_offset at most 1 m  require bought is after 2020-01-01 }
            }
            stage "Lash" {
              after settled
              for valve in intake, exhaust {
                observe lash[valve] : gap
                  with leaves
                  setup covers off
                  hazard propeller
                  ask "Offer the leaves to the {valve} valve"
                  note "Flat and wiped"
                let twice[valve] = 2 * half(engine.lash_max)
                check inside[valve] "Lash of the {valve} valve" critical {
                  require lash[valve] at most twice[valve]
                  if open advise next_leaf(lash[valve], engine.lash_min, engine.lash_max)
                }
              }
            }
            release {
              reject when any critical fails
              hold when any fails or open
              ready otherwise
            }
            rehearse "as it should be" {
              engine "cards/quillan-15.json" variant "late cam"
              gauges "trays/bench-one.json"
              enter heads series 21 degC, 21.1 degC, 21.0 degC
              enter bought cannot "no papers"
              enter lash[intake] passes "0.05" refuses "0.08"
              enter lash[exhaust] passes "0.10"
              expect settled passes
              expect inside[exhaust] fails
              expect release reject
            }
            """;

    /** The same, told in Java. */
    private static ProcedureDraft whole() {
        return ProcedureDraft.named("whole", "Whole", 3)
                .use("leaves.inspection")
                .card("tank_offset", "length")
                .appliesWhen("engine.displacement at least 5 cm3")
                .decideBySimpleAcceptance()
                .hazard("solvent", "Open the door.")
                .gauge("infrared", "reading of temperature")
                .define("half", "size : length", "size / 2")
                .setup(
                        "covers",
                        "fitted",
                        covers -> covers.change("fitted", "off", "Lift them", "eyes")
                                .change("off", "fitted", "Put them back")
                                .whileIn("off", "solvent"))
                .stage("Before", ProcedureDraftTest::before)
                .stage("Lash", ProcedureDraftTest::bothValves)
                .release(rules -> rules.when(Release.REJECT, "any critical fails")
                        .when(Release.HOLD, "any fails or open")
                        .otherwise(Release.READY))
                .rehearse(
                        "as it should be",
                        rehearsal -> rehearsal
                                .engine("cards/quillan-15.json", "late cam")
                                .gauges("trays/bench-one.json")
                                .series("heads", "21 degC", "21.1 degC", "21.0 degC")
                                .cannot("bought", "no papers")
                                .enter("lash[intake]", "passes \"0.05\" refuses \"0.08\"")
                                .enter("lash[exhaust]", "passes \"0.10\"")
                                .expect("settled", Outcome.PASSES)
                                .expect("inside[exhaust]", Outcome.FAILS)
                                .expect(Release.REJECT));
    }

    private static void before(StageDraft stage) {
        stage.observe(
                        "heads",
                        "series of temperature",
                        heads -> heads.with("infrared").ask("Head, three times"))
                .observe("bought", "date", bought -> bought.optional().ask("Bought on"))
                .gate(
                        "settled",
                        "It has settled",
                        Severity.MAJOR,
                        check -> check.require(
                                        "slope(heads) within 0.5 K of 0 K and mean(heads) at most 30 degC (u 0.2 K)")
                                .at("90 %")
                                .advise(Occasion.FAILS, "Wait: {heads}.")
                                .because("common practice"))
                .check(
                        "young",
                        "It is not old",
                        Severity.MINOR,
                        check -> check.when("engine.tank_offset at most 1 m").require("bought is after 2020-01-01"));
    }

    private static void bothValves(StageDraft stage) {
        stage.after("settled")
                .forEach(
                        "valve",
                        List.of("intake", "exhaust"),
                        each -> each.observe(
                                        "lash[valve]",
                                        "gap",
                                        lash -> lash.with("leaves")
                                                .setup("covers", "off")
                                                .hazard("propeller")
                                                .ask("Offer the leaves to the {valve} valve")
                                                .note("Flat and wiped"))
                                .let("twice[valve]", "2 * half(engine.lash_max)")
                                .check(
                                        "inside[valve]",
                                        "Lash of the {valve} valve",
                                        Severity.CRITICAL,
                                        check -> check.require("lash[valve] at most twice[valve]")
                                                .adviseBy(
                                                        Occasion.OPEN,
                                                        "next_leaf(lash[valve], engine.lash_min, engine.lash_max)")));
    }

    @Test
    void drafted_in_java_the_whole_graph_to_its_last_formula_is_that_of_the_file() {
        Procedure written = Procedure.compile(SourceText.of("whole.inspection", WRITTEN), PARTS)
                .orElseThrow();
        Compiled drafted = whole().compile(PARTS);

        assertThat(drafted.diagnostics()).isEmpty();
        // A source of uncertainty is known by where its number stands, and the two texts have other lines.
        assertThat(places(GraphWords.of(drafted.orElseThrow().graph())))
                .isEqualTo(places(GraphWords.of(written.graph())));
        assertThat(drafted.orElseThrow().graph().identity().parts())
                .isEqualTo(written.graph().identity().parts());
        assertThat(GraphWords.of(drafted.orElseThrow().rehearsals())).isEqualTo(GraphWords.of(written.rehearsals()));
        assertThat(Cost.of(drafted.orElseThrow().graph())).isEqualTo(Cost.of(written.graph()));
    }

    private static String places(String words) {
        return words.replaceAll("line \\d+, column \\d+", "line");
    }

    @Test
    void its_rehearsals_run_as_those_of_a_file_do() {
        Procedure drafted = whole().compile(PARTS).orElseThrow();

        assertThat(Rehearsing.run(drafted, Path.of("..", "examples", "bench")))
                .singleElement()
                .matches(Rehearsed::isAsExpected);
    }

    @Test
    void what_it_uses_and_nobody_hands_over_is_missed_as_in_a_file() {
        assertThat(whole().compile().diagnostics())
                .extracting(said -> said.code().name())
                .containsExactly("LP160");
    }

    @Test
    void a_card_without_a_variant_serves_a_rehearsal_too() {
        assertThat(ProcedureDraft.named("small", "Small", 1)
                        .rehearse("a case", rehearsal -> rehearsal.engine("cards/quillan-15.json"))
                        .text())
                .endsWith("rehearse \"a case\" {\n  engine \"cards/quillan-15.json\"\n}\n");
    }

    @Test
    void the_number_on_the_engine_stands_behind_its_card() {
        assertThat(ProcedureDraft.named("small", "Small", 1)
                        .rehearse(
                                "a case",
                                rehearsal -> rehearsal
                                        .engine("cards/quillan-15.json", "late cam")
                                        .serial("Q15-20417"))
                        .text())
                .endsWith("  engine \"cards/quillan-15.json\" variant \"late cam\"\n  serial \"Q15-20417\"\n}\n");
    }

    @Test
    void mistakes_are_told_as_in_a_file_at_their_place_in_what_was_written() {
        Compiled compiled = ProcedureDraft.named("small", "Small", 1)
                .observe("width", "length", width -> width.ask("How wide?"))
                .check("fits", "It fits", Severity.MINOR, check -> check.require("widht at most 2 K"))
                .compile();

        assertThat(compiled.procedure()).isEmpty();
        assertThat(compiled.diagnostics())
                .extracting(said -> said.code().name() + " "
                        + said.span()
                                .source()
                                .text()
                                .substring(said.span().start(), said.span().end()))
                .contains("LP301 widht");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "yes } check evil \"Evil\" minor { require no",
                "yes\ncheck evil",
                "yes // and nothing else",
                "(yes",
                "choose x { a: 1 ]",
                "x is \"open",
                "x is \"{hole\"",
                " "
            })
    void no_expression_reaches_beyond_its_place(String expression) {
        assertThatThrownBy(() -> ProcedureDraft.named("small", "Small", 1)
                        .check("fits", "It fits", Severity.MINOR, check -> check.require(expression)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"two words", "a\"b", "", "a{", "a[", "a]", "1st", "a[b c]"})
    void no_name_does_either(String name) {
        assertThatThrownBy(() -> ProcedureDraft.named(name, "Small", 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"two\nlines", "a hole {without its end", "ends in \\", "a hole {with \"half a text}"})
    void nor_does_a_text(String text) {
        assertThatThrownBy(() -> ProcedureDraft.named("small", text, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_bench_state_has_a_name_and_a_state() {
        assertThatThrownBy(
                        () -> ProcedureDraft.named("small", "Small", 1).observe("x", "length", x -> x.setup("covers")))
                .hasMessageContaining("in turn");
    }

    @Test
    void words_are_taken_literally_where_that_is_asked_for() {
        String words = "a \"quoted\" {brace} and a \\ stroke";
        Procedure drafted = ProcedureDraft.named("small", ProcedureDraft.literally(words), 1)
                .check("fine", "It is \"fine\"", Severity.MINOR, check -> check.require("yes"))
                .compile()
                .orElseThrow();

        assertThat(drafted.graph().identity().title()).isEqualTo(words);
        assertThat(drafted.graph().checks().get(0).title()).isEqualTo("It is \"fine\"");
    }
}

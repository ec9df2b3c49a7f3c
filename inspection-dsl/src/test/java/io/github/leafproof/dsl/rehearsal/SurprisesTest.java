package io.github.leafproof.dsl.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Golden;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.report.Parting;
import io.github.leafproof.dsl.report.PartingWays;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of each kind of surprise: what was expected, what came, and the first link where the two ways part. */
class SurprisesTest {

    private static final Path BENCH = Path.of("..", "examples", "bench");

    private static final String PROCEDURE = """
            procedure trial "A trial" revision 1
            card cap_material : one of metal, plastic
            gauge infrared : reading of temperature
            gauge leaves : leaf set
            observe plate : yes/no ask "Is it the engine of the card?"
            observe head : temperature with infrared ask "Head"
            observe room : temperature with infrared ask "Bench"
            observe lash : gap with leaves ask "Lash"
            observe rest : gap with leaves ask "The other lash"
            observe arm : one of metal, plastic ask "Which arm?"
            observe depth : length ask "Depth of the needle"
            observe damp : yes/no ask "Damp?"
            observe smell : yes/no ask "Does it smell of fuel?"
            observe flips : count ask "Flips"
            observe cap : yes/no optional ask "Is there a cap?"
            let warmth = head - room
            let wet = damp and smell
            let datum = choose arm { metal: 1.0 mm   plastic: 3.0 mm }
            check right "The right engine" gate { require plate }
            check cold "Cold" gate { after right require warmth within 3 K of 0 K }
            check inside "Lash" critical {
              after cold
              require lash between engine.lash_min and engine.lash_max tolerate to 0.14 mm
            }
            check second "The other lash" {
              require rest between 0.03 mm and 0.10 mm and flips at most 9
            }
            check dry "Dry" minor { require not wet and flips at least 2 }
            check set "Needle" minor { require depth at most datum }
            check either "One of them" minor { require damp or smell or flips at least 9 }
            check capped "Cap" minor { when flips at least 3 require cap }
            check made "Cap material" minor { require engine.cap_material is metal }
            check turned "Turned" minor {
              require if flips at least 5 then depth at most 1 mm else depth at most 2 mm
            }
            """;

    static Played played(String steps) {
        String rehearsal = """
                rehearse "a case" {
                  engine "cards/quillan-15.json" variant "late cam"
                  gauges "trays/bench-one.json"
                """ + steps.strip().indent(2) + "}\n";
        Compiled compiled = Procedure.compile(SourceText.of("trial.inspection", PROCEDURE + rehearsal));
        return Rehearsing.of(compiled.orElseThrow(), BENCH).play().get(0);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            passes-got-open         | enter plate yes, head 21 degC, room 21 degC, lash passes "0.05" refuses "0.06+0.10" | expect inside passes
            passes-got-fails        | enter plate yes, head 21 degC, room 21 degC, lash passes "0.06+0.10"                | expect inside passes
            passes-got-blocked      | enter plate yes, head 33 degC, room 21 degC, lash passes "0.05" refuses "0.08" | expect inside passes
            passes-got-blocked-far  | enter plate no, head 21 degC, room 21 degC, lash passes "0.05" refuses "0.08"  | expect inside passes
            passes-got-untested     | enter plate yes, head 21 degC, lash passes "0.05" refuses "0.08"               | expect cold passes
            passes-got-cannot       | enter plate cannot "the plate is painted over"                                 | expect right passes
            passes-got-unstated     | enter flips 1                                                                  | expect made passes
            passes-got-contradicted | enter plate yes, head 21 degC, room 21 degC, lash passes "0.10" refuses "0.05" | expect inside passes
            passes-got-tolerated    | enter plate yes, head 21 degC, room 21 degC, lash passes "0.05" refuses "0.05+0.08" | expect inside passes
            passes-got-not-applicable | enter flips 2, cap yes                                                       | expect capped passes
            passes-got-fails-in-one-of-two | enter rest passes "0.05" refuses "0.08", flips 12                       | expect second passes
            passes-got-none-of-three | enter damp no, smell no, flips 3                                              | expect either passes
            passes-got-fails-by-the-arm | enter arm metal, depth 2.5 mm                                              | expect set passes
            passes-got-fails-by-the-case | enter flips 6, depth 1.5 mm                                               | expect turned passes
            fails-got-passes        | enter plate yes, head 21 degC, room 21 degC, lash passes "0.05" refuses "0.08" | expect inside fails
            fails-got-passes-by-value | enter damp no, smell yes, flips 4                                            | expect dry fails
            fails-got-open          | enter head 24 degC, room 21 degC, plate yes                                    | expect cold fails
            tolerated-got-passes    | enter plate yes, head 21 degC, room 21 degC, lash passes "0.05" refuses "0.08" | expect inside tolerated
            open-got-passes         | enter plate yes, head 21 degC, room 21 degC, lash passes "0.05" refuses "0.08" | expect inside open
            contradicted-got-open   | enter rest passes "0.05", flips 2                                              | expect second contradicted
            blocked-got-passes      | enter plate yes, head 21 degC, room 21 degC                                    | expect cold blocked
            untested-got-passes     | enter plate yes                                                                | expect right untested
            untested-got-fails      | enter flips 12                                                                 | expect second untested
            not-applicable-got-fails | enter flips 4, cap no                                                         | expect capped not_applicable
            not-applicable-got-passes | enter flips 4, cap yes                                                       | expect capped not_applicable
            release-ready-got-hold  | enter plate yes, head 21 degC, room 21 degC, lash passes "0.05" refuses "0.06+0.10" | expect release ready
            release-hold-got-unfinished | enter plate yes                                                            | expect release hold
            release-unfinished-got-reject | enter plate yes, head 21 degC, room 21 degC, lash passes "0.06+0.10"          | expect release unfinished
            """)
    void each_kind_of_surprise_tells_where_the_ways_part(String kind, String enter, String expect) {
        Played played = played(enter + "\n" + expect);

        assertThat(played.problems()).isEmpty();
        assertThat(played.isAsExpected()).isFalse();
        assertThat(played.rehearsed().surprises())
                .singleElement()
                .satisfies(
                        surprise -> assertThat(surprise.way().links().stream().filter(Parting.Link::parts))
                                .hasSize(1));
        Golden.hold("rehearsal/" + kind, RehearsalText.why(played));
    }

    @Test
    void whatever_else_might_have_been_expected_the_ways_part_at_one_link() {
        Judgement judgement = played("""
                enter plate yes, head 24 degC, room 21 degC, lash passes "0.05" refuses "0.06+0.10"
                enter arm plastic, depth 2 mm, damp yes, flips 3, cap no
                expect release hold
                """).judgement().orElseThrow();

        Stream<Parting> checks = judgement.verdicts().stream()
                .flatMap(verdict -> Stream.of(Outcome.values())
                        .filter(other -> other != verdict.outcome())
                        .map(other -> PartingWays.of(judgement, verdict.check(), other)));
        Stream<Parting> releases = Stream.of(Release.values())
                .filter(other -> other != judgement.release().release())
                .map(other -> PartingWays.of(judgement, other));

        List<Parting> all = Stream.concat(checks, releases).toList();
        assertThat(all).hasSize(10 * 7 + 3).allSatisfy(each -> {
            assertThat(each.links().stream().filter(Parting.Link::parts)).hasSize(1);
            assertThat(each.first().parts()).isTrue();
        });
    }

    @Test
    void where_nothing_surprised_no_ways_part() {
        Judgement judgement =
                played("enter plate yes\nexpect right passes").judgement().orElseThrow();

        assertThatThrownBy(() -> PartingWays.of(
                        judgement, judgement.verdict("right").orElseThrow().check(), Outcome.PASSES))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PartingWays.of(judgement, Release.UNFINISHED))
                .isInstanceOf(IllegalArgumentException.class);
    }
}

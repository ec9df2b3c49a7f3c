package io.github.leafproof.dsl.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.formula.Calculation;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The steps from what was entered to a verdict, each with its numbers. */
class CalculationTest {

    private static List<String> steps(String declarations, String check, Workshop... entered) {
        Judgement judgement = entered.length > 0
                ? entered[0].judged()
                : Workshop.of(declarations).judged();
        Node.Check found = (Node.Check) judgement.graph().node(check).orElseThrow();
        return Calculation.of(found.requirement(), judgement.frame(found)).stream()
                .map(step -> "  ".repeat(step.depth()) + step.words() + " = " + step.value())
                .toList();
    }

    @Test
    void a_number_is_computed_step_by_step_and_of_a_choice_only_what_counts_is_shown() {
        assertThat(steps("""
                        check big "Big" minor {
                          require (if engine.choke then 1 mm else 2 mm + 3 mm) / 2 at most 1 mm
                        }
                        """, "big"))
                .containsExactly(
                        "2 mm + 3 mm = 5 mm",
                        "if engine.choke then 1 mm else 2 mm + 3 mm = 5 mm",
                        "(if engine.choke then 1 mm else 2 mm + 3 mm) / 2 = 2.5 mm",
                        "(if engine.choke then 1 mm else 2 mm + 3 mm) / 2 at most 1 mm = no");
    }

    @Test
    void of_a_condition_that_holds_the_steps_to_it_and_to_its_arm_are_shown() {
        assertThat(steps("""
                        check big "Big" minor {
                          require if 1 mm + 1 mm at most 3 mm then 4 mm + 1 mm at most 9 mm else 2 mm + 3 mm at most 1 mm
                        }
                        """, "big"))
                .startsWith(
                        "1 mm + 1 mm = 2 mm",
                        "1 mm + 1 mm at most 3 mm = yes",
                        "4 mm + 1 mm = 5 mm",
                        "4 mm + 1 mm at most 9 mm = yes")
                .hasSize(5);
    }

    @Test
    void of_a_choice_the_steps_to_its_subject_and_to_the_arm_that_counts_are_shown() {
        String rules = """
                observe arm : one of metal, plastic ask "Arm"
                define kind(given : one of metal, plastic) = given
                check thick "Thick" minor {
                  require choose kind(arm) { metal: 1 mm + 1 mm   plastic: 2 mm + 2 mm } at most 9 mm
                }
                """;

        assertThat(steps(rules, "thick", Workshop.of(rules).observe("arm", "\"plastic\"")))
                .containsExactly(
                        "  given = plastic",
                        "kind(arm) = plastic",
                        "2 mm + 2 mm = 4 mm",
                        "the choice by kind(arm) = 4 mm",
                        "the choice by kind(arm) at most 9 mm = yes");
        assertThat(steps(rules, "thick"))
                .endsWith(
                        "the choice by kind(arm) = not known: arm was not entered",
                        "the choice by kind(arm) at most 9 mm = not known: arm was not entered");
    }

    @Test
    void inside_a_function_its_parameters_have_the_values_they_were_given() {
        assertThat(steps("""
                        define half(size : length) = size / 2
                        check small "Small" minor { require half(3 mm + 1 mm) at most 3 mm }
                        """, "small"))
                .containsExactly(
                        "3 mm + 1 mm = 4 mm",
                        "  size = 4 mm",
                        "  size / 2 = 2 mm",
                        "half(3 mm + 1 mm) = 2 mm",
                        "half(3 mm + 1 mm) at most 3 mm = yes");
    }

    @Test
    void a_calculation_of_the_trade_tells_its_formula_what_it_assumes_and_on_whose_word() {
        Judgement judgement = Workshop.of("""
                        check ratio "Ratio" minor { require ratio_with_gasket(27.5 mm, 9, 0.2 mm) at least 8 }
                        """).judged();
        Node.Check check = (Node.Check) judgement.graph().node("ratio").orElseThrow();
        Calculation.Step step =
                Calculation.of(check.requirement(), judgement.frame(check)).get(0);

        assertThat(step.words()).isEqualTo("ratio_with_gasket(27.5 mm, 9, 0.2 mm)");
        assertThat(step.details())
                .containsExactly(
                        "by 1 + stroke / (stroke/(ratio − 1) + gasket)",
                        "assuming: the gasket's hole is as wide as the bore",
                        "source: the definition of the ratio; the bore falls out");
    }

    @Test
    void a_reading_tells_how_far_it_is_from_each_limit_and_how_probable_it_is_to_lie_beyond() {
        // u = 0.01 mm; 0.02 mm is two of them. The normal law leaves 2.275 % beyond two (Φ(-2) = 0.02275, tables of the
        // normal distribution).
        Workshop bench = Workshop.of("""
                        gauge depth : reading of length
                        observe step : length with depth ask "Step"
                        check inside "Inside" minor { require step at most 0.5 mm }
                        """).observe("step", "\"0.48 mm\"");
        Judgement judgement = bench.judged();
        Node.Check check = (Node.Check) judgement.graph().node("inside").orElseThrow();

        assertThat(Calculation.of(check.requirement(), judgement.frame(check))
                        .get(0)
                        .details())
                .containsExactly(
                        "above the upper limit 0.50 mm with a probability of 3 %: it is 0.02 mm inside of it, which is 2.0"
                                + " times their standard uncertainty of 0.010 mm",
                        "the uncertainty comes from depth 0.010 mm", "probability that it holds: 97 %");
    }

    @Test
    void a_tolerated_limit_is_told_and_so_is_a_side_that_no_leaf_speaks_for() {
        Workshop bench = Workshop.of("""
                        gauge leaves : leaf set
                        observe lash : gap with leaves ask "Lash"
                        check inside "Inside" minor {
                          require lash between engine.lash_min and engine.lash_max tolerate to engine.lash_tolerated
                        }
                        """).feel("lash", "passes 0.05 mm");
        Judgement judgement = bench.judged();
        Node.Check check = (Node.Check) judgement.graph().node("inside").orElseThrow();

        assertThat(Calculation.of(check.requirement(), judgement.frame(check))
                        .get(0)
                        .details())
                .containsExactly(
                        "at least 0.03 mm is shown with a probability of 100 % by the leaf 0.05 mm, which passes: it"
                                + " measures 0.0500 mm (u 0.0010 mm)",
                        "the uncertainty of that comes from leaves 0.05 mm 0.0010 mm",
                        "at most 0.10 mm: no leaf has refused",
                        "beyond that tolerated up to 0.14 mm",
                        "probability that it holds: from 0 % to 100 %");
    }

    @Test
    void what_is_lacking_is_told_where_it_is_lacking() {
        assertThat(steps("""
                        observe width : length ask "Width"
                        check small "Small" minor { require width * 2 at most 3 mm }
                        """, "small"))
                .containsExactly(
                        "width * 2 = not known: width was not entered",
                        "width * 2 at most 3 mm = not known: width was not entered");
    }

    @Test
    void a_calculation_that_nobody_would_read_is_cut_short_and_still_ends_in_its_result() {
        String all = IntStream.range(0, 300)
                .mapToObj(number -> number + " mm at most 1 m")
                .collect(Collectors.joining(" and "));

        List<String> steps = steps("check small \"Small\" minor { require " + all + " }", "small");

        // Two hundred, the remark, and the result.
        assertThat(steps).hasSize(202);
        assertThat(steps.get(steps.size() - 2)).startsWith("and further steps");
        assertThat(steps.get(steps.size() - 1)).endsWith("299 mm at most 1 m = yes");
    }

    @Test
    void what_adds_to_an_uncertainty_is_told_by_source() {
        Workshop bench = Workshop.of("""
                        gauge infrared : reading of temperature
                        gauge depth : reading of length
                        observe head : temperature with infrared ask "Head"
                        observe step : length with depth ask "Step"
                        observe other : length with depth ask "Other"
                        let area = step * (other + 1 mm)
                        let warm = head - 20 degC
                        check small "Small" minor { require area at most 3 mm2 and warm at most 3 K }
                        """)
                .observe("head", "\"21 °C\"")
                .observe("step", "\"1 mm\"")
                .observe("other", "\"1 mm\"");
        Judgement judgement = bench.judged();

        Explanation explanation = Explaining.of(
                judgement, (Node.Check) judgement.graph().node("small").orElseThrow());

        // d(area) = (other + 1 mm) du + step du, one depth gauge for both: 2 mm · 0.01 mm + 1 mm · 0.01 mm.
        assertThat(explanation.values())
                .extracting(
                        Explanation.Computed::name,
                        Explanation.Computed::value,
                        value -> value.sources().get(0))
                .contains(tuple("area", "2.000 mm² (u 0.030 mm²)", "depth 0.030 mm²"));
    }

    @Test
    void a_gap_is_shown_against_an_uncertain_limit_drawn_in_as_far_as_the_verdict_draws_it_in() {
        // z = 1.645 for 95 % on one side (tables of the normal distribution): 0.10 mm - 1.645 * 0.02 mm = 0.0671 mm.
        Workshop bench = Workshop.of("""
                        gauge leaves : leaf set
                        observe lash : gap with leaves ask "Lash"
                        check inside "Inside" minor { require lash at most 0.10 mm (u 0.02 mm) }
                        """).feel("lash", "refuses 0.08 mm");
        Judgement judgement = bench.judged();
        Node.Check check = (Node.Check) judgement.graph().node("inside").orElseThrow();

        assertThat(Calculation.of(check.requirement(), judgement.frame(check))
                        .get(0)
                        .details())
                .containsExactly(
                        "at most 0.067 mm (the limit of 0.100 mm (u 0.020 mm), drawn in by what it may be off) is shown"
                                + " with a probability of 0 % by the leaf 0.08 mm, which refuses: it measures 0.0810 mm"
                                + " (u 0.0010 mm)",
                        "the uncertainty of that comes from leaves 0.08 mm 0.0010 mm",
                        "probability that it holds: from 0 % to 100 %");
        assertThat(bench.check("inside").evidence().get(0))
                .startsWith("nothing shows that lash is at most 0.100 mm: the thinnest leaf that refuses");
    }

    @Test
    void every_source_of_a_number_that_has_no_name_is_told_where_it_is_held_against_its_limits() {
        Workshop bench = Workshop.of("""
                        gauge depth : reading of length
                        gauge infrared : reading of temperature
                        observe step : length with depth ask "Step"
                        observe head : temperature with infrared ask "Head"
                        check small "Small" minor {
                          require step * (head - 20 degC) / 1 K between 0 mm (u 0.001 mm) and 3 mm
                        }
                        """).observe("step", "\"1 mm\"").observe("head", "\"21 °C\"");
        Judgement judgement = bench.judged();
        Node.Check check = (Node.Check) judgement.graph().node("small").orElseThrow();
        List<Calculation.Step> steps = Calculation.of(check.requirement(), judgement.frame(check));

        assertThat(steps.get(steps.size() - 1).details())
                .filteredOn(detail -> detail.startsWith("the uncertainty comes from"))
                .allSatisfy(detail -> assertThat(detail).contains("infrared").contains("depth"))
                .hasSize(2)
                .anySatisfy(detail -> assertThat(detail).contains("the u of line"));
    }

    @Test
    void each_step_is_written_as_the_procedure_writes_it() {
        String rules = """
                observe n : count ask "How many?"
                observe free : yes/no ask "Free?"
                observe dry : yes/no ask "Dry?"
                observe remark : text ask "Remark"
                define told(word : text) = "It is {word}."
                check number "Number" minor { require not (n is 2) and not (free or dry) }
                check unit "Unit" minor { require 2.54 mm in thou at most 3 mm }
                check words "Words" minor { require remark is told("free") }
                """;
        Workshop bench = Workshop.of(rules)
                .observe("n", "3")
                .observe("free", "false")
                .observe("dry", "false")
                .observe("remark", "\"It is free.\"");

        assertThat(steps(rules, "number", bench))
                .containsExactly(
                        "n is 2 = no",
                        "not n is 2 = yes",
                        "free or dry = no",
                        "not (free or dry) = yes",
                        "not n is 2 and not (free or dry) = yes");
        assertThat(steps(rules, "unit", bench)).contains("2.54 mm in thou = 100 thou");
        assertThat(steps(rules, "words", bench))
                .contains("  \"It is {word}.\" = It is free.", "told(free) = It is free.");
    }
}

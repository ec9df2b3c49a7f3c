package io.github.leafproof.dsl.meaning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Range;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Source;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.DecisionRule;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** What is called impossible never happens: conditions by chance, judged by the judge's own formulas. */
public class PossibilitiesTest {

    private static final String ASKED = """
        observe n : count
        observe m : count
        observe left_out : count optional
        observe x : number
        observe y : number
        observe p : one of a, b, c
        observe q : one of a, b, c
        observe g : grade low < mid < top
        observe t : yes/no
        observe maybe : yes/no optional
        define twice(v : number) = v + v
        define odd(v : number, w : yes/no) = if w then -v else v
        """;

    /** Conditions by chance. */
    private record Chance(Random random) {

        private String one(String... these) {
            return these[random.nextInt(these.length)];
        }

        String number(int deep) {
            if (deep == 0 || random.nextInt(3) == 0) {
                return one("n", "m", "x", "y", "left_out", "0", "1", "2.5", "4", "7", "(-3)");
            }
            return switch (random.nextInt(9)) {
                case 0 -> "(" + number(deep - 1) + " + " + number(deep - 1) + ")";
                case 1 -> "(" + number(deep - 1) + " - " + number(deep - 1) + ")";
                case 2 -> "(" + number(deep - 1) + " * " + number(deep - 1) + ")";
                case 3 -> "(" + number(deep - 1) + " / " + number(deep - 1) + ")";
                case 4 -> one("min", "max") + "(" + number(deep - 1) + ", " + number(deep - 1) + ")";
                case 5 -> one("abs", "sqrt", "twice") + "(" + number(deep - 1) + ")";
                case 6 -> "(" + number(deep - 1) + " ^ " + one("2", "3", "-1", "0") + ")";
                case 7 ->
                    "(if " + condition(deep - 1) + " then " + number(deep - 1) + " else " + number(deep - 1) + ")";
                default -> one("choose p { a: 1  b: n  otherwise: x }", "odd(" + number(deep - 1) + ", t)");
            };
        }

        String condition(int deep) {
            if (deep == 0 || random.nextInt(4) == 0) {
                return one(
                        "t",
                        "maybe",
                        "p is a",
                        "p is not b",
                        "(p is one of a, c)",
                        "g at least mid",
                        "g < mid",
                        "n is 2",
                        "x is 2.5",
                        "n at most 3",
                        "n > 3",
                        "left_out < 2");
            }
            return switch (random.nextInt(9)) {
                case 0 -> "(" + condition(deep - 1) + " and " + condition(deep - 1) + ")";
                case 1 -> "(" + condition(deep - 1) + " or " + condition(deep - 1) + ")";
                case 2 -> "(not " + condition(deep - 1) + ")";
                case 3 ->
                    "(" + number(deep - 1) + one(" at least ", " at most ", " < ", " > ") + number(deep - 1) + ")";
                case 4 -> "(" + number(deep - 1) + " between 1 and " + one("2", "4") + ")";
                case 5 -> "(" + number(deep - 1) + " within " + one("1", "2") + " of " + number(deep - 1) + ")";
                case 6 -> "(" + number(deep - 1) + " at most 2 tolerate to 4)";
                case 7 -> "(if " + condition(deep - 1) + " then " + condition(deep - 1) + " else t)";
                default -> "(" + number(deep - 1) + one(" is ", " is not ") + one("2", "4") + ")";
            };
        }

        Value value(Node.Observation observation) {
            if (random.nextInt(8) == 0) {
                Value.Lack.Kind kind = observation.optional() ? Value.Lack.Kind.NOT_ASKED : Value.Lack.Kind.NOT_ENTERED;
                return Value.Missing.of(kind, observation.name(), "is not there");
            }
            return switch (observation.name()) {
                case "n", "m", "left_out" -> Value.Amount.of(Estimate.exact(random.nextInt(7), Dimension.RATIO));
                case "x", "y" -> Value.Amount.of(reading(observation.name()));
                case "p", "q" -> pick(List.of("a", "b", "c"));
                case "g" -> pick(List.of("low", "mid", "top"));
                default -> Value.Judged.certain(random.nextBoolean());
            };
        }

        private Estimate reading(String name) {
            double value = random.nextInt(2) == 0 ? random.nextInt(12) - 4 : random.nextDouble() * 12 - 4;
            double[] uncertainties = {0, 0.05, 0.5, 20};
            double u = uncertainties[random.nextInt(4)];
            return u == 0
                    ? Estimate.exact(value, Dimension.RATIO)
                    : Estimate.of(value, Dimension.RATIO, u, new Source(name, 3 + random.nextInt(9)));
        }

        private Value pick(List<String> options) {
            int option = random.nextInt(options.size());
            return new Value.Pick(option, options.get(option));
        }
    }

    /** Two conditions over the same values, both named and not. */
    private static CheckGraph graph(String first, String second, String named) {
        return Bench15.compiled(ASKED + "let named = " + named + "\nlet first = " + first + "\nlet second = " + second
                        + "\ncheck c \"C\" { require first and second and named }")
                .orElseThrow()
                .graph();
    }

    private static Ground ground(CheckGraph graph) {
        return new Ground(
                graph.facts(),
                graph.observations(),
                graph.derived(),
                graph.checks().size());
    }

    private static Formula formula(CheckGraph graph, String name) {
        return ((Node.Derived) graph.node(name).orElseThrow()).formula();
    }

    @Property(tries = 400)
    void what_happens_was_possible_also_where_another_condition_holds_or_fails(@ForAll long seed) {
        Chance chance = new Chance(new Random(seed));
        String named = chance.condition(1);
        String first = chance.condition(2) + (chance.random.nextBoolean() ? " and named" : "");
        CheckGraph graph = graph(first, chance.condition(3), named);
        Possibilities all = new Possibilities(ground(graph));
        Optional<Possibilities> where = all.where(formula(graph, "first"));
        Optional<Possibilities> whereNot = all.whereNot(formula(graph, "first"));
        for (int engine = 0; engine < 60; engine++) {
            Value[] slots = new Value[graph.slots()];
            graph.observations().forEach(each -> slots[each.slot()] = chance.value(each));
            double[] confidences = {0.5, 0.8, 0.95};
            Frame frame =
                    Frame.of(slots, DecisionRule.guarded(confidences[chance.random.nextInt(3)]), UnitSystem.METRIC);
            graph.derived().forEach(each -> slots[each.slot()] = each.formula().value(frame));
            Value one = formula(graph, "first").value(frame);
            Value two = formula(graph, "second").value(frame);
            assertPossible(all, formula(graph, "first"), one, slots);
            assertPossible(all, formula(graph, "second"), two, slots);
            if (one instanceof Value.Judged judged && judged.holds()) {
                assertPossible(where.orElseThrow(), formula(graph, "second"), two, slots);
            } else if (one instanceof Value.Judged judged && Fate.of(judged).fails()) {
                assertPossible(whereNot.orElseThrow(), formula(graph, "second"), two, slots);
            }
        }
    }

    private static void assertPossible(Possibilities possibilities, Formula condition, Value value, Value[] slots) {
        if (value instanceof Value.Judged judged) {
            assertThat(possibilities.fates(condition))
                    .as(() -> condition.words() + " for " + List.of(slots))
                    .contains(Fate.of(judged));
        }
    }

    private static String fates(String asked, String condition) {
        CheckGraph graph = Bench15.compiled(asked + "\nlet c = " + condition + "\ncheck k \"K\" { require c }")
                .orElseThrow()
                .graph();
        return new Possibilities(ground(graph))
                .fates(formula(graph, "c")).stream().sorted().map(Fate::name).collect(Collectors.joining(" "));
    }

    @Test
    void a_count_is_never_below_nought_and_never_open() {
        assertThat(fates("observe n : count", "n at least 0")).isEqualTo("PASSES");
        assertThat(fates("observe n : count", "n < 0")).isEqualTo("FAILS HIGH");
        assertThat(fates("observe n : count", "n at most 3")).isEqualTo("PASSES FAILS HIGH");
    }

    @Test
    void a_reading_may_stay_open_and_fails_only_on_a_side_that_has_a_limit() {
        assertThat(fates("observe x : length", "x at most 3 mm")).isEqualTo("PASSES OPEN FAILS HIGH");
        assertThat(fates("observe x : length", "x at least 3 mm tolerate to 2 mm"))
                .isEqualTo("PASSES TOLERATED OPEN FAILS LOW");
    }

    @Test
    void only_a_gap_can_contradict_itself() {
        assertThat(fates("gauge leaves : leaf set\nobserve x : gap with leaves", "x at most 3 mm"))
                .isEqualTo("PASSES OPEN CONTRADICTED FAILS HIGH");
    }

    @Test
    void temperatures_begin_at_the_absolute_nought() {
        assertThat(fates("observe t : temperature", "t - 0 degC at most -274 K"))
                .isEqualTo("OPEN FAILS HIGH");
    }

    @Test
    void what_is_known_of_parts_is_known_of_what_is_computed_from_them() {
        Map<String, Range> known = Map.of(
                "n + 3", new Range(3, Double.POSITIVE_INFINITY),
                "min(n, 4)", new Range(0, 4),
                "abs(min(n, 4) - 6)", new Range(2, 6),
                "12 / (min(n, 4) + 2)", new Range(2, 6),
                "(min(n, 4) - 3) ^ 2", new Range(0, 9),
                "sqrt(min(n, 4))", new Range(0, 2),
                "choose p { a: 1  b: 2 }", new Range(1, 2));
        known.forEach((words, range) -> {
            CheckGraph graph = Bench15.compiled("observe n : count\nobserve p : one of a, b\nlet v = " + words
                            + "\ncheck k \"K\" { require v at most 1 and p is a and n is 1 }")
                    .orElseThrow()
                    .graph();
            assertThat(new Possibilities(ground(graph)).range(formula(graph, "v")))
                    .as(words)
                    .isEqualTo(range);
        });
    }
}

package io.github.leafproof.dsl.graph;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.formula.Applied;
import io.github.leafproof.dsl.formula.Constant;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.IfElse;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.Not;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import io.github.leafproof.inspection.verdict.Severity;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** What judging takes is known before any engine is on the bench. */
class CostTest {

    private static Cost cost(String procedure) {
        return Cost.of(Workshop.of(procedure).compiled().graph());
    }

    @Test
    void each_value_read_computed_or_compared_is_a_step() {
        assertThat(cost("observe free : yes/no\ncheck c \"C\" { require free }").words())
                .isEqualTo("1 check, 1 observation; judging takes at most 1 step");
        // not, and, two readings
        assertThat(cost("observe a : yes/no\nobserve b : yes/no\ncheck c \"C\" { require not a and b }")
                        .steps())
                .isEqualTo(4);
        // the comparison, the reading, and the limit twice
        assertThat(cost("observe a : length\ncheck c \"C\" { require a at most 2 mm }")
                        .steps())
                .isEqualTo(4);
    }

    @Test
    void of_two_arms_only_the_longer_counts() {
        String asked = "observe a : yes/no\nobserve n : count\nlet v = ";
        long plain = cost(asked + "n\ncheck c \"C\" { require a and v is 1 }").steps();
        long either = cost(asked + "if a then n + n + n else 0\ncheck c \"C\" { require a and v is 1 }")
                .steps();
        // the choice, its condition, and of the longer arm three readings and their sum, in place of one reading
        assertThat(either - plain).isEqualTo(5);
    }

    @Test
    void whether_an_observation_falls_away_is_asked_once_however_they_hang_on_each_other() {
        String text = """
            observe a : yes/no
            observe b : yes/no when a
            observe c : yes/no when b
            check d "D" { require c }\
            """;
        // two conditions and the check
        assertThat(cost(text).steps()).isEqualTo(2 + 1);
    }

    /** Counts how often it is asked. */
    private record Asked(Value answer, AtomicInteger times) implements Formula {
        @Override
        public Value value(Frame frame) {
            times.incrementAndGet();
            return answer;
        }

        @Override
        public String words() {
            return "asked";
        }

        @Override
        public List<Formula> parts() {
            return List.of();
        }
    }

    private static CheckGraph graph(Formula requirement) {
        return CheckGraph.of(
                new CheckGraph.Identity("p", "P", 1, "", List.of()),
                new CheckGraph.Parts(
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(new Node.Check(
                                0,
                                "c",
                                "C",
                                "",
                                Severity.MAJOR,
                                false,
                                List.of(),
                                null,
                                requirement,
                                DecisionRule.guarded(0.95),
                                List.of(),
                                List.of())),
                        null,
                        DecisionRule.guarded(0.95),
                        ReleaseRule.usual()));
    }

    /** A function that applies another twice, and so on: each doubles what it takes. */
    private static Formula doubled(int times) {
        Formula body = new Constant(Value.Judged.YES, "yes");
        for (int i = 0; i < times; i++) {
            Formula once = new Applied("f" + i, body, List.of());
            body = new Joined(true, List.of(once, once));
        }
        return body;
    }

    @Test
    void however_large_the_number_of_steps_it_never_runs_over() {
        // 1 + 2(1 + s) steps, from 1: four times 2^n less three.
        assertThat(Cost.of(graph(doubled(3))).steps()).isEqualTo(4 * 8 - 3);
        assertThat(Cost.of(graph(doubled(60))).steps()).isEqualTo(4 * (1L << 60) - 3);
        assertThat(Cost.of(graph(doubled(62))).steps()).isEqualTo(Long.MAX_VALUE);
    }

    @Test
    void judging_asks_no_more_often_than_was_said() {
        AtomicInteger times = new AtomicInteger();
        Value two = Value.Amount.of(Estimate.exact(2, Dimension.RATIO));
        Formula number = new Asked(two, times);
        Formula yes = new Asked(Value.Judged.YES, times);
        Formula held = new LimitsHeld(
                number,
                number,
                number,
                List.of(number),
                false,
                new LimitsHeld.Wording("between %s and %s", List.of(number, number)));
        Formula branch = new IfElse(yes, held, new Constant(Value.Judged.NO, "no"));
        Formula requirement = new Joined(true, List.of(branch, new Not(yes), held));
        CheckGraph graph = graph(requirement);
        requirement.value(Frame.of(new Value[0], DecisionRule.guarded(0.95), UnitSystem.METRIC));
        // the two comparisons, the choice, the denial and the row itself are steps as well
        assertThat(times.get() + 5L).isEqualTo(Cost.of(graph).steps());
    }

    @Test
    void of_several_arms_only_the_longest_counts() {
        String asked = "observe p : one of a, b, c\nobserve n : count\nlet v = ";
        String check = "\ncheck c \"C\" { require v is 1 and p is a }";
        long plain = cost(asked + "n" + check).steps();

        // the choice, its subject, and of the longest arm three readings and their sum, in place of one reading
        assertThat(cost(asked + "choose p { a: 0  b: n + n + n  c: n }" + check).steps() - plain)
                .isEqualTo(5);
    }

    @Test
    void what_falls_away_by_a_value_computed_from_what_may_fall_away_is_settled_once_like_all_else() {
        String text = """
            observe a : yes/no
            observe b : yes/no when a
            let also = not b
            observe c : yes/no when also
            check d "D" { require c }\
            """;
        // two conditions and a denial of one reading; and the check
        assertThat(cost(text).steps()).isEqualTo(4 + 1);
        String apart = text.replace("not b", "not a");
        assertThat(cost(apart.replace("require c", "require c and b")).steps()).isEqualTo(4 + 3);
    }
}

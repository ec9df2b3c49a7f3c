package io.github.leafproof.dsl.parse;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Declaration.Condition;
import io.github.leafproof.dsl.syntax.Declaration.Entered;
import io.github.leafproof.dsl.syntax.Declaration.Step;
import io.github.leafproof.dsl.syntax.TypeWords;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A procedure in which every construct occurs, and what becomes of it. */
class WholeLanguageTest {

    private static final Parsed PARSED = ProcedureParser.parse(SourceText.of("whole.inspection", Example.TEXT));

    @Test
    void everything_can_be_said() {
        assertThat(PARSED.problems()).isEmpty();
        assertThat(PARSED.tree().declarations()).hasSize(33);
        assertThat(PARSED.tree().source().name()).isEqualTo("whole.inspection");
    }

    @Test
    void every_declaration_knows_its_place() {
        PARSED.tree().declarations().forEach(declaration -> {
            String written = Example.TEXT.substring(
                    declaration.span().start(), declaration.span().end());
            assertThat(written)
                    .matches("(?s)(language|procedure|applies|decide|use|card|hazard|gauge|setup|stage|observe|let"
                            + "|define|check|for|release|rehearse) .*\\S");
        });
    }

    @Test
    void simple_acceptance_is_a_confidence_of_fifty_per_cent() {
        assertThat(all(Declaration.Decide.class))
                .map(decide -> decide.confidence().percent())
                .containsExactly("95", "50");
    }

    @Test
    void an_observation_keeps_all_its_clauses() {
        Declaration.Observe runs = all(Declaration.Observe.class).get(1);

        assertThat(runs.target()).hasToString("runs");
        assertThat(((TypeWords.Series) runs.type()).of().words()).isEqualTo("rotational speed");
        assertThat(runs.gauge()).hasToString("tacho");
        assertThat(runs.hazards()).map(Object::toString).containsExactly("hot", "eyes");
        assertThat(runs.notes()).map(note -> note.plain()).containsExactly("n", "m");
        assertThat(runs.optional()).isTrue();
        assertThat(runs.when()).isNotNull();
    }

    @Test
    void a_type_is_words_a_choice_a_grade_or_yes_and_no() {
        assertThat(all(Declaration.Observe.class))
                .map(Declaration.Observe::type)
                .anySatisfy(type -> assertThat(((TypeWords.Grade) type).options())
                        .map(option -> option.text())
                        .containsExactly("none", "soft", "very firm"));
        assertThat(all(Declaration.CardFact.class))
                .map(fact -> fact.type().getClass().getSimpleName())
                .containsExactly("Named", "OneOf", "YesNo");
        assertThat(all(Declaration.Gauge.class))
                .map(Declaration.Gauge::kind)
                .containsExactly(Declaration.GaugeWords.values());
    }

    @Test
    void a_check_keeps_all_its_clauses() {
        Declaration.Check check = all(Declaration.Check.class).get(0);

        assertThat(check.severity()).hasToString("critical");
        assertThat(check.gate()).isTrue();
        assertThat(check.after()).map(Object::toString).containsExactly("a", "b[valve]");
        assertThat(check.when()).isNotNull();
        assertThat(check.requirements()).hasSize(5);
        assertThat(check.confidence())
                .satisfies(confidence -> assertThat(confidence.percent()).isEqualTo("99"));
        assertThat(check.advice()).map(advice -> advice.outcome().text()).containsExactly("fails", "high");
        assertThat(check.because()).map(text -> text.plain()).containsExactly("s", "t { \" \\");
    }

    @Test
    void and_binds_tighter_than_the_comma_in_a_release_rule() {
        Declaration.Release release = all(Declaration.Release.class).get(0);

        Condition.Joined reject = joined(release, 0);
        assertThat(reject.and()).isFalse();
        assertThat(((Condition.AnyCheck) reject.left()).outcomes())
                .map(Object::toString)
                .containsExactly("fails", "open");
        assertThat(((Condition.Joined) reject.right()).and()).isTrue();
        assertThat(((Condition.AnyCheck) joined(release, 1).left()).severity()).isNull();
        assertThat(release.rules().get(2).condition()).isNull();
    }

    private static Condition.Joined joined(Declaration.Release release, int rule) {
        return (Condition.Joined)
                Objects.requireNonNull(release.rules().get(rule).condition());
    }

    @Test
    void a_rehearsal_enters_and_expects_one_thing_a_step() {
        List<Step> steps = all(Declaration.Rehearse.class).get(0).steps();

        assertThat(steps).hasSize(14);
        assertThat(steps)
                .filteredOn(Step.Enter.class::isInstance)
                .map(step -> ((Step.Enter) step).entered().getClass().getSimpleName())
                .containsExactly("Amount", "Amount", "Amount", "Word", "Word", "Trials", "Items", "Cannot", "Quoted");
        assertThat(((Entered.Amount) ((Step.Enter) steps.get(3)).entered()).number())
                .isEqualTo("-21");
        assertThat(((Step.Engine) steps.get(0)).variant()).isNotNull();
    }

    @Test
    void a_stage_waits_for_its_gates() {
        assertThat(all(Declaration.Stage.class).get(0).after())
                .map(Object::toString)
                .containsExactly("x", "y[intake]");
    }

    /** Words that mean something in one place are free elsewhere. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "leaf",
                "set",
                "pin",
                "reading",
                "counter",
                "simple",
                "gate",
                "critical",
                "passes",
                "items",
                "digits",
                "variant",
                "note",
                "optional",
                "grade",
                "serial",
                "series",
                "to",
                "one",
                "all",
                "least",
                "most",
                "by",
                "starts",
                "gauges",
                "enter",
                "expect",
                "cannot",
                "open",
                "hold"
            })
    void a_word_of_one_place_may_be_a_name(String word) {
        assertThat(ProcedureParser.parse(SourceText.of("a", "let " + word + " = " + word + " + " + word + "(1)"))
                        .problems())
                .isEmpty();
    }

    private static <T extends Declaration> List<T> all(Class<T> kind) {
        return PARSED.tree().declarations().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }
}

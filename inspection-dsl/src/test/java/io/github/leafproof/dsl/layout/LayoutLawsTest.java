package io.github.leafproof.dsl.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.fuzz.Chance;
import io.github.leafproof.dsl.fuzz.MadeProcedure;
import io.github.leafproof.dsl.meaning.AnyProcedureTest;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever a procedure says, it says the same when it is tidy, and is tidy for good. */
class LayoutLawsTest {

    static Stream<String> procedures() {
        return Tidiness.procedures();
    }

    @Test
    void there_are_procedures_to_hold_the_layout_against() {
        assertThat(procedures()).hasSizeGreaterThan(80);
    }

    @ParameterizedTest
    @MethodSource("procedures")
    void a_tidied_procedure_means_what_it_meant_and_stays_as_it_is(String text) {
        Tidiness.assertSaysTheSame(text);
    }

    @ParameterizedTest
    @MethodSource("procedures")
    void whoever_wrote_it_and_wherever_they_broke_their_lines_the_tidy_text_is_one(String text) {
        for (int seed = 0; seed < 3; seed++) {
            assertHasOneLayout(text, seed);
        }
    }

    @Provide
    Arbitrary<String> anyProcedures() {
        return new AnyProcedureTest().procedures();
    }

    @Property(tries = 500, seed = "1")
    void so_does_any_procedure_whether_it_makes_sense_or_not(@ForAll("anyProcedures") String text, @ForAll long seed) {
        Assume.that(Tidiness.reads(text));

        assertHasOneLayout(text, seed);
    }

    @Property(tries = 60, seed = "1")
    void so_does_any_procedure_that_compiles(@ForAll long seed) {
        assertHasOneLayout(Workshop.of(MadeProcedure.of(Chance.of(seed)).text()).procedure(), seed);
    }

    /** With comments strewn in, it says the same when tidy; with its lines broken anywhere, the tidy text is the same. */
    private static void assertHasOneLayout(String text, long seed) {
        String commented = Untidy.withComments(text, seed);

        Tidiness.assertSaysTheSame(commented);
        assertThat(Tidiness.tidied(Untidy.of(commented, seed))).isEqualTo(Tidiness.tidied(commented));
    }

    @Test
    void a_text_that_does_not_read_has_no_layout() {
        assertThatThrownBy(() -> Tidiness.tidied("check { ")).isInstanceOf(IllegalArgumentException.class);
    }
}

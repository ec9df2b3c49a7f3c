package io.github.leafproof.dsl.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** What is lost of a text, and whom that excuses. */
class DamageTest {

    private static final SourceText LASH = SourceText.of("lash", "observe lash gap with leaves\ncheck cold { }\n");
    private static final SourceText FUEL = SourceText.of("fuel", "observe smell text\n");

    private static Span span(int start, int end) {
        return LASH.span(start, end);
    }

    @Test
    void a_word_that_stands_in_the_damage_may_have_been_declared_there() {
        Damage damage = Damage.of(List.of(span(0, 16)), false);

        assertThat(damage.mayDeclare("lash")).isTrue();
        assertThat(damage.mayDeclare("leaves")).isFalse();
        assertThat(damage.mayDeclare("las")).isFalse();
        assertThat(damage.mayDeclare("observe lash")).isFalse();
    }

    @Test
    void where_a_name_is_missing_any_name_may_have_been_meant() {
        Damage damage = Damage.of(List.of(span(0, 7)), true);

        assertThat(damage.mayDeclare("leaves")).isTrue();
        assertThat(damage.mentions("leaves")).isFalse();
    }

    @Test
    void what_stands_right_before_or_behind_the_damage_is_touched_and_what_stands_further_off_is_not() {
        Damage damage = Damage.of(List.of(span(10, 20)), false);

        assertThat(damage.touches(span(5, 10))).isTrue();
        assertThat(damage.touches(span(20, 22))).isTrue();
        assertThat(damage.touches(span(0, 40))).isTrue();
        assertThat(damage.touches(span(12, 13))).isTrue();
        assertThat(damage.touches(span(5, 9))).isFalse();
        assertThat(damage.touches(span(21, 30))).isFalse();
    }

    @Test
    void the_damage_of_one_file_is_none_to_another() {
        Damage both = Damage.of(List.of(span(0, 16)), false).and(Damage.of(List.of(FUEL.span(8, 18)), false));

        assertThat(both.touches(FUEL.span(0, 7))).isFalse();
        assertThat(both.touches(FUEL.span(9, 10))).isTrue();
        assertThat(both.touches(span(0, 7))).isTrue();
        assertThat(both.mentions("smell")).isTrue();
        assertThat(Damage.none().and(Damage.none()).isNone()).isTrue();
        assertThat(both.isNone()).isFalse();
    }

    @Provide
    Arbitrary<List<Span>> stretches() {
        Arbitrary<Integer> places = Arbitraries.integers().between(0, 40);
        return places.tuple2()
                .map(ends -> span(Math.min(ends.get1(), ends.get2()), Math.max(ends.get1(), ends.get2())))
                .list()
                .ofMaxSize(8);
    }

    @Property(tries = 300, seed = "1")
    void a_place_is_touched_by_all_stretches_together_just_when_one_of_them_touches_it(
            @ForAll("stretches") List<Span> stretches, @ForAll("stretches") List<Span> places) {
        Damage damage = Damage.of(stretches, false);

        for (Span place : places) {
            boolean byOne =
                    stretches.stream().anyMatch(lost -> lost.start() <= place.end() && lost.end() >= place.start());
            assertThat(damage.touches(place)).isEqualTo(byOne);
        }
    }
}

package io.github.leafproof.dsl.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.rehearsal.Played;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of coverage, whichever rehearsals were played. */
class CoverageLawsTest {

    private static final Procedure FIRST_LOOK = Procedure.read(
                    Path.of("..", "examples", "bench", "first_look.inspection"))
            .orElseThrow();

    private static final List<Played> PLAYED = Rehearsals.played(FIRST_LOOK);

    @Provide
    Arbitrary<List<Played>> some() {
        return Arbitraries.of(PLAYED).list().ofMaxSize(6);
    }

    private static Coverage of(List<Played> rehearsals) {
        return Coverage.of(FIRST_LOOK, rehearsals);
    }

    @Property(tries = 20, seed = "1")
    void one_rehearsal_more_never_shows_less(@ForAll("some") List<Played> some, @ForAll("some") List<Played> more) {
        List<Played> both = new ArrayList<>(some);
        both.addAll(more);

        Coverage before = of(some);
        Coverage after = of(both);

        assertThat(after.share().shown()).isGreaterThanOrEqualTo(before.share().shown());
        assertThat(after.share().asked()).isEqualTo(before.share().asked());
        assertThat(before.sayings())
                .allSatisfy(saying -> assertThat(before.missing(saying)).containsAll(after.missing(saying)));
    }

    @Property(tries = 20, seed = "2")
    void their_order_makes_no_difference(@ForAll("some") List<Played> some) {
        List<Played> backwards = new ArrayList<>(some);
        Collections.reverse(backwards);

        assertThat(of(backwards)).isEqualTo(of(some)).hasSameHashCodeAs(of(some));
        assertThat(CoverageText.of(of(backwards))).isEqualTo(CoverageText.of(of(some)));
    }

    @Property(tries = 20, seed = "3")
    void portions_added_up_are_the_whole(@ForAll("some") List<Played> one, @ForAll("some") List<Played> other) {
        List<Played> both = new ArrayList<>(one);
        both.addAll(other);

        assertThat(of(one).and(of(other))).isEqualTo(of(both));
        assertThat(of(one).and(of(List.of()))).isEqualTo(of(one));
        assertThat(of(one).and(of(one))).isEqualTo(of(one));
    }

    @Property(tries = 20, seed = "4")
    void what_is_shown_was_asked_for(@ForAll("some") List<Played> some) {
        for (Played rehearsal : some) {
            rehearsal
                    .judgement()
                    .ifPresent(judgement -> assertThat(Impossible.shownBy(FIRST_LOOK, judgement))
                            .isEmpty());
        }
    }
}

package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.archive.Archive;
import io.github.leafproof.dsl.archive.Cabinet;
import io.github.leafproof.dsl.archive.CheckMoved;
import io.github.leafproof.dsl.archive.Comparison;
import io.github.leafproof.dsl.archive.Replay;
import io.github.leafproof.dsl.rehearsal.Rehearsed;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Somebody changes one limit of the first look. It does not go unseen. */
class ChangedLimitTest {
    /** The widest lash is no longer the card's 0.10 mm. */
    private static final Procedure CHANGED = Bench.changed(
            "first_look",
            "parts/lash.inspection",
            "require lash[valve] between engine.lash_min and engine.lash_max",
            "require lash[valve] between engine.lash_min and 0.08 mm");

    @Test
    void a_rehearsal_is_surprised() {
        List<Rehearsed> surprised = Rehearsing.run(CHANGED, Project.BENCH).stream()
                .filter(rehearsed -> !rehearsed.isAsExpected())
                .toList();

        assertThat(surprised).isNotEmpty();
        assertThat(surprised.get(0).surprises())
                .extracting(Rehearsed.Surprise::of)
                .anyMatch(of -> of.startsWith("lash_within"));
    }

    @Test
    void a_replay_names_the_engines_that_would_come_out_otherwise_and_the_limit() {
        Replay replay = Replay.of(Bench.FIRST_LOOK, CHANGED, Cabinet.ofFiles(), UnitSystem.METRIC);
        try (Stream<Comparison> compared = replay.compare(
                Archive.at(List.of(Project.BENCH.resolve("sheets"))).sheets())) {
            List<CheckMoved> moved = compared.flatMap(each ->
                            each instanceof Comparison.Differs differs ? differs.checks().stream() : Stream.of())
                    .filter(check -> check.name().equals("lash_within[intake]"))
                    .toList();

            assertThat(moved).isNotEmpty();
            assertThat(moved.get(0).changes())
                    .contains(new CheckMoved.Change(
                            "requires",
                            "lash[intake] between 0.03 mm (engine.lash_min) and 0.10 mm (engine.lash_max)",
                            "lash[intake] between 0.03 mm (engine.lash_min) and 0.08 mm"));
        }
    }
}

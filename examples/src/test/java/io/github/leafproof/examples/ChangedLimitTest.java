package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.archive.Archive;
import io.github.leafproof.dsl.archive.Cabinet;
import io.github.leafproof.dsl.archive.CheckMoved;
import io.github.leafproof.dsl.archive.Comparison;
import io.github.leafproof.dsl.archive.Replay;
import io.github.leafproof.dsl.rehearsal.Played;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Somebody changes one limit of the first look. A rehearsal, an entry on the edge, and a replay each catch it. */
class ChangedLimitTest {
    private static final String LIMIT = "require lash[valve] between engine.lash_min and engine.lash_max";

    /** The widest lash is no longer the card's 0.10 mm. */
    private static final String CHANGED = "require lash[valve] between engine.lash_min and 0.08 mm";

    /** With this written behind it. */
    private static Procedure changed(String behind) {
        return Bench.edited("first_look", (file, text) -> switch (file) {
            case "parts/lash.inspection" -> text.replace(LIMIT, CHANGED);
            case "first_look.inspection" -> text + behind;
            default -> text;
        });
    }

    private static List<String> surprised(Procedure procedure) {
        return Rehearsing.of(procedure, Project.BENCH).play().stream()
                .filter(played -> !played.isAsExpected())
                .map(Played::title)
                .toList();
    }

    private static Set<String> ownCases() {
        return Bench.FIRST_LOOK.rehearsals().stream()
                .map(rehearsal -> rehearsal.title().plain())
                .collect(Collectors.toSet());
    }

    @Test
    void as_it_is_no_rehearsal_is_surprised() {
        assertThat(surprised(Bench.FIRST_LOOK)).isEmpty();
    }

    @Test
    void a_rehearsal_catches_it() {
        assertThat(surprised(changed(""))).contains("a sound engine, cold, with both lashes proven, goes to the stand");
    }

    @Test
    void an_entry_on_the_edge_of_the_limit_catches_it() {
        String edges = EdgesOfExamplesTest.written(Bench.FIRST_LOOK);

        List<String> caught = surprised(changed("\n" + edges)).stream()
                .filter(title -> !ownCases().contains(title))
                .toList();

        assertThat(caught).anyMatch(title -> title.startsWith("lash_within[intake]"));
        assertThat(caught).anyMatch(title -> title.startsWith("lash_within[exhaust]"));
    }

    @Test
    void a_replay_names_the_engines_that_would_come_out_otherwise_and_the_limit() {
        Replay replay = Replay.of(Bench.FIRST_LOOK, changed(""), Cabinet.ofFiles(), UnitSystem.METRIC);
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

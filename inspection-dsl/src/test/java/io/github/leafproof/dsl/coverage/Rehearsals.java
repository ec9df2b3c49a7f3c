package io.github.leafproof.dsl.coverage;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.meaning.Saying;
import io.github.leafproof.dsl.meaning.Way;
import io.github.leafproof.dsl.rehearsal.Played;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.source.SourceText;
import java.nio.file.Path;
import java.util.List;

/** A procedure written in a test, and its cases on the bench of the examples. */
final class Rehearsals {

    static final Path BENCH = Path.of("..", "examples", "bench");

    private Rehearsals() {}

    /** A procedure with a case for each of these, which are what it enters. */
    static Procedure procedure(String declarations, String... entered) {
        StringBuilder text = new StringBuilder("procedure trial \"A trial\" revision 1\n").append(declarations);
        int number = 0;
        for (String each : entered) {
            boolean variant = !each.startsWith("engine");
            text.append("rehearse \"case ").append(++number).append("\" {\n");
            text.append(variant ? "  engine \"cards/quillan-15.json\" variant \"late cam\"\n" : "");
            text.append("  gauges \"trays/bench-one.json\"\n  ").append(each);
            text.append(each.contains("expect") ? "" : "  expect release hold").append("\n}\n");
        }
        return Procedure.compile(SourceText.of("trial.inspection", text.toString()))
                .orElseThrow();
    }

    static List<Played> played(Procedure procedure) {
        return Rehearsing.of(procedure, BENCH).play();
    }

    static Coverage coverage(String declarations, String... entered) {
        Procedure procedure = procedure(declarations, entered);
        return Coverage.of(procedure, played(procedure));
    }

    static Saying saying(Coverage coverage, String title) {
        return coverage.sayings().stream()
                .filter(saying -> CoverageText.title(saying).equals(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + title + " among "
                        + coverage.sayings().stream().map(CoverageText::title).toList()));
    }

    /** The ways that are asked for at a place. */
    static List<String> ways(Coverage coverage, String title) {
        return saying(coverage, title).ways().stream().map(Way::word).toList();
    }

    /** The ways of a place that some case shows. */
    static List<String> shown(Coverage coverage, String title) {
        Saying saying = saying(coverage, title);
        return saying.ways().stream()
                .filter(way -> coverage.isShown(saying, way))
                .map(Way::word)
                .toList();
    }
}

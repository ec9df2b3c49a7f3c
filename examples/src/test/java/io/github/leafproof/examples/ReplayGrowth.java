package io.github.leafproof.examples;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.archive.Archive;
import io.github.leafproof.dsl.archive.Cabinet;
import io.github.leafproof.dsl.archive.Comparison;
import io.github.leafproof.dsl.archive.Replay;
import io.github.leafproof.dsl.archive.ReplayJson;
import io.github.leafproof.dsl.archive.Tally;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What an archive costs as it grows: seconds, and the memory in use in the middle of the work. DEVELOPERS.md has figures. */
public final class ReplayGrowth {
    private ReplayGrowth() {}

    /** Takes the old revision, the new one, the archive, and after how many sheets to measure, growing. */
    public static void main(String[] arguments) {
        Replay replay = Replay.of(
                Procedure.read(Path.of(arguments[0])).orElseThrow(),
                Procedure.read(Path.of(arguments[1])).orElseThrow(),
                Cabinet.ofFiles(),
                UnitSystem.METRIC);
        Deque<Long> marks = new ArrayDeque<>();
        for (String mark : List.of(arguments).subList(3, arguments.length)) {
            marks.add(Long.parseLong(mark));
        }
        Tally tally = Tally.of(replay);
        long written = 0;
        long begun = System.nanoTime();
        try (Stream<Comparison> compared =
                replay.compare(Archive.at(List.of(Path.of(arguments[2]))).sheets())) {
            for (Iterator<Comparison> each = compared.iterator(); each.hasNext() && !marks.isEmpty(); ) {
                Comparison comparison = each.next();
                tally.add(comparison);
                written += ReplayJson.of(comparison).getBytes(StandardCharsets.UTF_8).length;
                if (tally.sheets() == marks.element()) {
                    say(marks.remove(), begun, written, tally);
                }
            }
        }
    }

    private static void say(long sheets, long begun, long written, Tally tally) {
        double seconds = (System.nanoTime() - begun) / 1e9;
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        double mebibytes = (runtime.totalMemory() - runtime.freeMemory()) / 1048576.0;
        System.out.printf(
                Locale.ROOT,
                "%7d sheets  %6.1f s  %5.1f MiB in use  %6.1f MiB of lines  %d differing, %d damaged%n",
                sheets,
                seconds,
                mebibytes,
                written / 1048576.0,
                tally.differing(),
                tally.damaged());
    }
}

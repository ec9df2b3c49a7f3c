package io.github.leafproof.dsl.archive;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Counts what became of the sheets of an archive: how many there were of each kind, and how many engines moved from which
 * release, and from which outcome of each check, to which other. It grows with the procedure and not with the archive.
 */
public final class Tally {

    private final Map<Movement, Long> releases = new TreeMap<>(Movement.IN_ORDER);
    private final Map<String, Map<Movement, Long>> checks = new LinkedHashMap<>();
    private final Map<String, Long> onlyOldKnows = new TreeMap<>();
    private final Map<String, Long> onlyNewKnows = new TreeMap<>();
    private long same;
    private long differing;
    private long damaged;
    private long ofOtherProcedures;
    private long noSheets;

    private Tally() {}

    /** A tally of nothing yet; the checks stand in the order of the new revision, then of the old one. */
    public static Tally of(Replay replay) {
        Tally tally = new Tally();
        Stream.of(replay.now(), replay.old())
                .flatMap(procedure -> procedure.graph().checks().stream())
                .forEach(check -> tally.checks.put(check.name(), new TreeMap<>(Movement.IN_ORDER)));
        return tally;
    }

    /** From how it came out under the old revision to how it does under the new one, in words. */
    public record Movement(String before, String after) {
        static final Comparator<Movement> IN_ORDER =
                Comparator.comparing(Movement::before).thenComparing(Movement::after);
    }

    /** So many engines moved so. */
    public record Moved(Movement movement, long engines) {}

    /** The movements of one check. */
    public record CheckMovements(String check, List<Moved> movements) {
        public CheckMovements {
            movements = List.copyOf(movements);
        }
    }

    /** So many sheets enter what only one of the revisions observes. */
    public record Entered(String observation, long sheets) {}

    /** Counts one more. */
    public void add(Comparison comparison) {
        if (comparison instanceof Comparison.Differs differs) {
            differing++;
            add(differs);
        } else if (comparison instanceof Comparison.Same) {
            same++;
        } else if (comparison instanceof Comparison.Damaged) {
            damaged++;
        } else if (comparison instanceof Comparison.OtherProcedure) {
            ofOtherProcedures++;
        } else {
            noSheets++;
        }
    }

    private void add(Comparison.Differs differs) {
        String before = differs.before().word();
        String after = differs.after().word();
        if (!before.equals(after)) {
            releases.merge(new Movement(before, after), 1L, Long::sum);
        }
        for (CheckMoved moved : differs.checks()) {
            checks.computeIfAbsent(moved.name(), name -> new TreeMap<>(Movement.IN_ORDER))
                    .merge(new Movement(moved.wordBefore(), moved.wordAfter()), 1L, Long::sum);
        }
        differs.onlyOldKnows().forEach(name -> onlyOldKnows.merge(name, 1L, Long::sum));
        differs.onlyNewKnows().forEach(name -> onlyNewKnows.merge(name, 1L, Long::sum));
    }

    /** All sheets, whatever became of them. */
    public long sheets() {
        return judged() + damaged + ofOtherProcedures;
    }

    /** The sheets that at least one revision could judge. */
    public long judged() {
        return same + differing;
    }

    public long same() {
        return same;
    }

    public long differing() {
        return differing;
    }

    public long damaged() {
        return damaged;
    }

    public long ofOtherProcedures() {
        return ofOtherProcedures;
    }

    /** The files that were found among the sheets and are something else; none of them counts as a sheet. */
    public long noSheets() {
        return noSheets;
    }

    /** Releases that moved, by their words. */
    public List<Moved> releases() {
        return moved(releases);
    }

    /** The checks that moved for some engine, in the order of the procedure. */
    public List<CheckMovements> checks() {
        return checks.entrySet().stream()
                .filter(check -> !check.getValue().isEmpty())
                .map(check -> new CheckMovements(check.getKey(), moved(check.getValue())))
                .toList();
    }

    private static List<Moved> moved(Map<Movement, Long> counted) {
        return counted.entrySet().stream()
                .map(each -> new Moved(each.getKey(), each.getValue()))
                .toList();
    }

    /** What is entered on some sheets and only the old revision observes, by name. */
    public List<Entered> onlyOldKnows() {
        return entered(onlyOldKnows);
    }

    /** What is entered on some sheets and only the new revision observes, by name. */
    public List<Entered> onlyNewKnows() {
        return entered(onlyNewKnows);
    }

    private static List<Entered> entered(Map<String, Long> counted) {
        return counted.entrySet().stream()
                .map(each -> new Entered(each.getKey(), each.getValue()))
                .toList();
    }
}

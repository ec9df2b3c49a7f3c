package io.github.leafproof.dsl.archive;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.archive.CheckMoved.Found;
import io.github.leafproof.dsl.archive.Comparison.CameOut;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.report.Lines;
import io.github.leafproof.dsl.report.Paint;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A replay as a person reads it in a terminal: what is compared, then engine by engine what came out otherwise, and the
 * counts last, where they are still on the screen. Each piece is a text of its own, since the archive may be large.
 */
public final class ReplayText {

    private static final int DIGITS_SHOWN = 12;
    private static final int COLUMN = 45;
    private static final String NOTHING = "nothing";

    private final Paint paint;

    private ReplayText(Paint paint) {
        this.paint = paint;
    }

    /** With or without colour; the words say the same. */
    public static ReplayText in(boolean colour) {
        return new ReplayText(Paint.of(colour));
    }

    /** What is compared. */
    public String of(Replay replay) {
        Lines text = new Lines();
        text.line(paint.strong("Replay of " + replay.now().graph().identity().name()));
        text.line("  old  " + words(replay.old()));
        text.line("  new  " + words(replay.now()));
        text.line("");
        return text.toString();
    }

    private static String words(Procedure procedure) {
        CheckGraph.Identity identity = procedure.graph().identity();
        return "revision " + identity.revision() + ", " + procedure.source().name() + ", sha256 "
                + identity.sha256().substring(0, DIGITS_SHOWN) + "…";
    }

    /** One engine that came out otherwise, and why. */
    public String of(Comparison.Differs differs) {
        Lines text = new Lines();
        Comparison.Job job = differs.job();
        String engine = job.model() + (job.serial() == null ? ", no serial" : ", serial " + job.serial());
        text.line(paint.strong(engine) + "  " + releases(differs));
        text.line("  " + differs.place() + ", sheet " + job.sheet() + ", " + job.date());
        reason(text, "old", differs.before());
        reason(text, "new", differs.after());
        entries(text, "old", differs.onlyOldKnows());
        entries(text, "new", differs.onlyNewKnows());
        differs.checks().forEach(moved -> check(text, moved));
        text.line("");
        return text.toString();
    }

    private String releases(Comparison.Differs differs) {
        boolean moved = !differs.before().word().equals(differs.after().word());
        return moved
                ? release(differs.before()) + " → " + release(differs.after())
                : release(differs.after()) + " as before";
    }

    private String release(CameOut cameOut) {
        return cameOut instanceof CameOut.Judged judged
                ? paint.release(judged.release(), cameOut.word())
                : cameOut.word();
    }

    private static void reason(Lines text, String which, CameOut cameOut) {
        if (cameOut instanceof CameOut.Judged judged) {
            text.block("  " + which + "  ", judged.reason());
        } else if (cameOut instanceof CameOut.NotJudged not) {
            not.problems().forEach(problem -> problem(text, "  " + which + "  ", problem));
        }
    }

    private static void problem(Lines text, String lead, Problem problem) {
        // As everywhere else: a line for what is wrong, and one for what to do about it.
        text.line(lead + problem.toString().replace("\n", "\n" + " ".repeat(lead.length())));
    }

    private static void entries(Lines text, String which, List<String> names) {
        if (!names.isEmpty()) {
            text.block("  entered, and only the " + which + " revision knows it: ", String.join(", ", names));
        }
    }

    private void check(Lines text, CheckMoved moved) {
        String outcomes =
                outcome(moved.before(), moved.wordBefore()) + " → " + outcome(moved.after(), moved.wordAfter());
        text.line("  " + moved.name() + "  " + outcomes);
        if (moved.changes().isEmpty() && (isBlocked(moved.before()) || isBlocked(moved.after()))) {
            // Only a gate before it came out otherwise, which is told of that gate.
            Stream.of(moved.before(), moved.after())
                    .flatMap(Stream::ofNullable)
                    .filter(ReplayText::isBlocked)
                    .forEach(found -> text.block("      ", String.join("; ", found.missing())));
            return;
        }
        text.block("      ", moved.title());
        moved.changes().forEach(change -> pair(text, change.what(), said(change.before()), said(change.after())));
        pair(text, "comes to", found(moved.before()), found(moved.after()));
    }

    private static boolean isBlocked(@Nullable Found found) {
        return found != null && found.outcome() == Outcome.BLOCKED;
    }

    private String outcome(@Nullable Found found, String word) {
        return found == null ? word : paint.outcome(found.outcome(), word);
    }

    private static List<String> said(@Nullable String words) {
        return List.of(words == null ? NOTHING : words);
    }

    private static List<String> found(@Nullable Found found) {
        return found == null
                ? List.of()
                : Stream.concat(found.reasons().stream(), found.missing().stream())
                        .toList();
    }

    /** The same thing under both revisions, below its title; nothing where there is nothing to say. */
    private static void pair(Lines text, String title, List<String> old, List<String> now) {
        if (!old.isEmpty() || !now.isEmpty()) {
            text.line("      " + title);
            old.forEach(words -> text.block("        old  ", words));
            now.forEach(words -> text.block("        new  ", words));
        }
    }

    /** Says that more engines came out otherwise than were shown; nothing where all were. */
    public String notShown(long differing, long shown) {
        long more = differing - shown;
        return more <= 0
                ? ""
                : paint.strong("And " + more + (more == 1 ? " engine more differs" : " engines more differ"))
                        + "; --show " + differing + " shows all, --json lists every sheet.\n\n";
    }

    /** The counts. */
    public String of(Tally tally) {
        Lines text = new Lines();
        if (!tally.releases().isEmpty()) {
            text.line(paint.strong("Releases, old → new"));
            tally.releases().forEach(moved -> count(text, "  ", moved));
        }
        if (!tally.checks().isEmpty()) {
            text.line(paint.strong("Checks, old → new"));
            tally.checks().forEach(check -> {
                text.line("  " + check.check());
                check.movements().forEach(moved -> count(text, "    ", moved));
            });
        }
        entered(text, "old", tally.onlyOldKnows());
        entered(text, "new", tally.onlyNewKnows());
        if (tally.differing() > 0) {
            text.line("");
        }
        text.line(paint.strong(counted(tally.sheets(), "sheet")) + ": " + tally.judged() + " judged, "
                + tally.same() + " the same, " + paint.strong(tally.differing() + " differing")
                + and(tally.damaged(), "damaged") + and(tally.ofOtherProcedures(), "of other procedures"));
        if (tally.noSheets() > 0) {
            text.line("passed over: " + counted(tally.noSheets(), "file") + " that "
                    + (tally.noSheets() == 1 ? "is no sheet" : "are no sheets"));
        }
        return text.toString();
    }

    private static String and(long number, String what) {
        return number == 0 ? "" : ", " + number + " " + what;
    }

    private static String counted(long number, String what) {
        return number == 1 ? "1 " + what : number + " " + what + "s";
    }

    private void entered(Lines text, String which, List<Tally.Entered> entered) {
        if (!entered.isEmpty()) {
            text.line(paint.strong("Entries that only the " + which + " revision knows"));
            entered.forEach(each -> row(text, "  " + each.observation(), each.sheets()));
        }
    }

    private static void count(Lines text, String indent, Tally.Moved moved) {
        row(text, indent + moved.movement().before() + " → " + moved.movement().after(), moved.engines());
    }

    private static void row(Lines text, String words, long number) {
        text.line(String.format(Locale.ROOT, "%-" + COLUMN + "s %8d", words, number));
    }
}

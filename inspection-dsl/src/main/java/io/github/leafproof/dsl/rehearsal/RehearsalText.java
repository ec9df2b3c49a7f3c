package io.github.leafproof.dsl.rehearsal;

import io.github.leafproof.inspection.record.Problem;
import java.util.List;

/** What came of rehearsals, as text for a terminal. */
public final class RehearsalText {

    private static final String INDENT = "      ";

    private final StringBuilder text = new StringBuilder();

    private RehearsalText() {}

    /** The cases of one file, and how many came out as expected. */
    public static String of(PlayedFile file) {
        RehearsalText text = new RehearsalText();
        file.played().forEach(text::one);
        int played = file.played().size();
        String of = played == file.cases() ? "" : " of " + file.cases();
        text.line(file.name() + ": " + counted(played, "rehearsal") + of + ", " + file.asExpected() + " as expected");
        return text.text.toString();
    }

    /** What came of several files together. */
    public static String total(List<PlayedFile> files) {
        RunTotals totals = RunTotals.of(files);
        return counted(files.size(), "procedure") + ", " + counted(totals.played(), "rehearsal") + ": "
                + totals.asExpected() + " as expected"
                + (totals.surprises() == 0 ? "" : ", " + counted(totals.surprises(), "surprise"))
                + (totals.notPlayed() == 0 ? "" : ", " + totals.notPlayed() + " that could not be played")
                + (totals.notCompiled() == 0
                        ? ""
                        : ", " + counted(totals.notCompiled(), "procedure") + " with mistakes")
                + "\n";
    }

    /** Why one case surprised, or could not be played: what was expected, what came, and where the two part. */
    public static String why(Played played) {
        RehearsalText text = new RehearsalText();
        text.why(played.rehearsed(), "");
        return text.text.toString();
    }

    private void one(Played played) {
        String came = played.isAsExpected() ? "as expected" : played.judged() == null ? "NOT PLAYED " : "SURPRISE   ";
        line("  " + came + "  " + played.title());
        if (!played.isAsExpected()) {
            why(played.rehearsed(), INDENT);
        }
    }

    private void why(Rehearsed rehearsed, String indent) {
        for (Problem problem : rehearsed.problems()) {
            line(indent + problem.toString().replace("\n", "\n" + indent));
        }
        for (Rehearsed.Surprise surprise : rehearsed.surprises()) {
            line(indent + surprise.place() + ": " + surprise.words());
            surprise.why().forEach(why -> line(indent + "   " + why));
        }
    }

    private void line(String line) {
        text.append(line).append('\n');
    }

    private static String counted(long number, String what) {
        return number == 0 ? "no " + what + "s" : number + " " + what + (number == 1 ? "" : "s");
    }
}

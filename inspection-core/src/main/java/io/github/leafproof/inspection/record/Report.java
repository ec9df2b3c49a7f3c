package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import io.github.leafproof.inspection.verdict.Severity;
import io.github.leafproof.inspection.verdict.Side;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The evidence a judgement leaves: what was decided, why, from which files, and what to do next.
 *
 * @param procedure the procedure that was followed
 * @param sheet the job sheet that was judged
 * @param card the engine card; null when the procedure asks for none
 * @param tray the gauge tray; null when the procedure asks for none
 * @param engine which engine it is
 * @param date the sheet's day
 * @param release what was decided about the whole engine
 * @param releaseReason why, in a sentence
 * @param checks every check of the procedure, in its order
 * @param next the next things worth doing, in bench order
 * @param cautions what holds for the whole work on this engine
 * @param notes what a reader should know of the evidence, such as leaves never measured and gauges past due
 */
public record Report(
        Procedure procedure,
        Input sheet,
        @Nullable Input card,
        @Nullable Input tray,
        Engine engine,
        LocalDate date,
        Release release,
        String releaseReason,
        List<Check> checks,
        List<Step> next,
        List<String> cautions,
        List<String> notes) {

    /** What the first line of every report says about its form. */
    public static final String FORMAT = "leafproof-report/1";

    public Report {
        checks = List.copyOf(checks);
        next = List.copyOf(next);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /**
     * The procedure that was followed.
     *
     * @param sha256 the digest of its own file, see {@link Document#sha256()}
     * @param parts the files that it uses, in the order of their first use, named as seen from the procedures' folder
     */
    public record Procedure(String name, String title, int revision, String sha256, List<Input> parts) {
        public Procedure {
            parts = List.copyOf(parts);
        }
    }

    /**
     * A file the judgement rests on.
     *
     * @param name the file as it was named
     * @param sha256 the digest of its bytes, see {@link Document#sha256()}
     */
    public record Input(String name, String sha256) {
        /** The name and digest of a file that was read. */
        public static Input of(Document<?> document) {
            return new Input(document.name(), document.sha256());
        }
    }

    /** The engine, by card and sheet; null is what neither says. */
    public record Engine(
            @Nullable String model,
            @Nullable String maker,
            @Nullable String serial,
            @Nullable String variant,
            @Nullable String condition) {}

    /**
     * One check and what came of it.
     *
     * @param name the check's name, {@code lash_within[intake]}
     * @param stage the title of the stage it belongs to; null when it belongs to none
     * @param severity how much hangs on it
     * @param gate whether others wait for it
     * @param outcome what came of it
     * @param side where the value lies when it lies outside; {@link Side#NONE} is written as null
     * @param probability bounds of the probability that the requirement is met; null when nothing was judged
     * @param value what was found, as a person reads it; null when nothing was
     * @param requirement what was required, as a person reads it; null when there is nothing to say
     * @param evidence what was entered and what it shows
     * @param advice what to do about it
     * @param cautions what to mind before doing it
     * @param missing the observations that are missing, and why
     * @param notes what a reader should know of the evidence
     * @param because the reasons for its limits, or where they come from, as the procedure gives them
     * @param asFound how it was before an adjustment; null when nothing was adjusted
     */
    public record Check(
            String name,
            String title,
            @Nullable String stage,
            Severity severity,
            boolean gate,
            Outcome outcome,
            Side side,
            @Nullable Probability probability,
            @Nullable String value,
            @Nullable String requirement,
            List<String> evidence,
            List<String> advice,
            List<String> cautions,
            List<String> missing,
            List<String> notes,
            List<String> because,
            @Nullable AsFound asFound) {
        public Check {
            evidence = List.copyOf(evidence);
            advice = List.copyOf(advice);
            cautions = List.copyOf(cautions);
            missing = List.copyOf(missing);
            notes = List.copyOf(notes);
            because = List.copyOf(because);
        }
    }

    /** Bounds of a probability, from 0 to 1; equal where the evidence gives one number. */
    public record Probability(double low, double high) {
        /** Refuses what no probability is, and bounds the wrong way round. */
        public Probability {
            if (!(low >= 0 && low <= high && high <= 1)) {
                throw new IllegalArgumentException("no probability lies between " + low + " and " + high);
            }
        }
    }

    /**
     * How a check stood before an adjustment.
     *
     * @param value what was found then; null when nothing could be judged
     */
    public record AsFound(Outcome outcome, @Nullable String value) {}

    /**
     * Something worth doing next.
     *
     * @param step what to do
     * @param cautions what to mind before doing it; these come first wherever a step is shown
     */
    public record Step(String step, List<String> cautions) {
        public Step {
            cautions = List.copyOf(cautions);
        }
    }
}

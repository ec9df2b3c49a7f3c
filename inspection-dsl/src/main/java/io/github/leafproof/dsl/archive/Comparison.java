package io.github.leafproof.dsl.archive;

import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.verdict.Release;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What came of one sheet of an archive under two revisions of its procedure. */
public sealed interface Comparison {

    /** Where the sheet lies. */
    Filed.Place place();

    /**
     * Whose sheet it is.
     *
     * @param sheet the job's number or name
     * @param serial the engine's; null where the sheet does not say
     * @param model as the engine's card has it
     * @param revision the revision that the sheet was filled in by; it may be neither of the two
     */
    record Job(String sheet, @Nullable String serial, String model, LocalDate date, int revision) {}

    /** What one revision says of an engine. */
    sealed interface CameOut {

        /**
         * How it came out, in a word.
         *
         * @return the release, or {@code not judged}
         */
        String word();

        /**
         * It was judged.
         *
         * @param reason why the release is what it is, in a sentence
         */
        record Judged(Release release, String reason) implements CameOut {
            @Override
            public String word() {
                return release.word();
            }
        }

        /** Sheet, card and tray do not go together with this revision, though they do with the other one. */
        record NotJudged(List<Problem> problems) implements CameOut {
            public NotJudged {
                problems = List.copyOf(problems);
            }

            @Override
            public String word() {
                return "not judged";
            }
        }
    }

    /** Release and every check came out alike. */
    record Same(Filed.Place place, Job job, Release release) implements Comparison {}

    /**
     * Something came out otherwise.
     *
     * @param before what the old revision says
     * @param after what the new revision says
     * @param checks those that came out otherwise, in the order of the new revision, then of the old one; none where one
     *     revision could not judge
     * @param onlyOldKnows what was entered and only the old revision observes, in the order of the sheet
     * @param onlyNewKnows what was entered and only the new revision observes
     */
    record Differs(
            Filed.Place place,
            Job job,
            CameOut before,
            CameOut after,
            List<CheckMoved> checks,
            List<String> onlyOldKnows,
            List<String> onlyNewKnows)
            implements Comparison {
        public Differs {
            checks = List.copyOf(checks);
            onlyOldKnows = List.copyOf(onlyOldKnows);
            onlyNewKnows = List.copyOf(onlyNewKnows);
        }
    }

    /** Neither revision can judge it: it cannot be read, its card or its tray cannot, or they do not go together. */
    record Damaged(Filed.Place place, List<Problem> problems) implements Comparison {
        public Damaged {
            problems = List.copyOf(problems);
        }
    }

    /** It was filled in by another procedure, and says nothing about this one. */
    record OtherProcedure(Filed.Place place, String procedure) implements Comparison {}

    /** A JSON file of another kind that lies among the sheets: a card, a tray, a report. */
    record NoSheet(Filed.Place place) implements Comparison {}
}

package io.github.leafproof.dsl.archive;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.archive.CheckMoved.Found;
import io.github.leafproof.dsl.archive.Comparison.CameOut;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.json.JsonPage;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.verdict.Side;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A replay for other programs, as docs/formats.md describes it: JSON Lines. The first line says what is compared, then each
 * sheet has a line in the order of the archive, and the last line has the counts. Numbers are written in full.
 */
public final class ReplayJson {

    private static final String FORMAT = "leafproof-replay/1";

    private final JsonPage json;

    private ReplayJson(JsonPage json) {
        this.json = json;
    }

    /** The first line: what is compared. */
    public static String of(Replay replay) {
        return JsonPage.line(page -> {
            page.text("format", FORMAT);
            page.object("old", () -> procedure(page, replay.old()));
            page.object("new", () -> procedure(page, replay.now()));
        });
    }

    private static void procedure(JsonPage page, Procedure procedure) {
        CheckGraph.Identity identity = procedure.graph().identity();
        page.text("name", identity.name());
        page.text("title", identity.title());
        page.number("revision", identity.revision());
        page.text("file", procedure.source().name());
        page.text("sha256", identity.sha256());
        page.list("parts", identity.parts(), part -> page.file(part.name(), part.sha256()));
    }

    /** The line of one sheet. */
    public static String of(Comparison comparison) {
        return JsonPage.line(page -> new ReplayJson(page).sheet(comparison));
    }

    private void sheet(Comparison comparison) {
        Filed.Place place = comparison.place();
        json.text("file", place.file());
        if (place.line() > 0) {
            json.number("line", place.line());
        }
        if (comparison instanceof Comparison.Same same) {
            json.text("result", "same");
            job(same.job());
            json.text("release", same.release().word());
        } else if (comparison instanceof Comparison.Differs differs) {
            json.text("result", "differs");
            job(differs.job());
            differs(differs);
        } else if (comparison instanceof Comparison.Damaged damaged) {
            json.text("result", "damaged");
            problems(damaged.problems());
        } else if (comparison instanceof Comparison.OtherProcedure other) {
            json.text("result", "other_procedure");
            json.text("procedure", other.procedure());
        } else {
            json.text("result", "no_sheet");
        }
    }

    private void job(Comparison.Job job) {
        json.text("sheet", job.sheet());
        json.text("serial", job.serial());
        json.text("model", job.model());
        json.text("date", job.date().toString());
        json.number("revision", job.revision());
    }

    private void differs(Comparison.Differs differs) {
        json.object("old", () -> cameOut(differs.before()));
        json.object("new", () -> cameOut(differs.after()));
        json.list("checks", differs.checks(), moved -> {
            json.text("name", moved.name());
            json.text("title", moved.title());
            json.object("old", moved.before(), this::found);
            json.object("new", moved.after(), this::found);
            json.list("changes", moved.changes(), change -> {
                json.text("what", change.what());
                json.text("old", change.before());
                json.text("new", change.after());
            });
        });
        json.texts("only_old_knows", differs.onlyOldKnows());
        json.texts("only_new_knows", differs.onlyNewKnows());
    }

    private void cameOut(CameOut cameOut) {
        if (cameOut instanceof CameOut.Judged judged) {
            json.text("release", judged.release().word());
            json.text("release_reason", judged.reason());
        } else if (cameOut instanceof CameOut.NotJudged not) {
            json.text("release", null);
            problems(not.problems());
        }
    }

    private void found(Found found) {
        json.text("outcome", found.outcome().word());
        json.text("side", found.side() == Side.NONE ? null : found.side().name().toLowerCase(Locale.ROOT));
        json.object("probability", found.probability(), probability -> {
            json.number("low", probability.low());
            json.number("high", probability.high());
        });
        json.text("value", nothingIfEmpty(found.value()));
        json.text("requirement", found.requirement());
        json.texts("reasons", found.reasons());
        json.texts("missing", found.missing());
    }

    private static @Nullable String nothingIfEmpty(String text) {
        return text.isEmpty() ? null : text;
    }

    private void problems(List<Problem> problems) {
        json.list("problems", problems, problem -> {
            json.text("level", problem.level().name().toLowerCase(Locale.ROOT));
            json.text("code", problem.code());
            json.text("file", problem.file());
            json.text("place", nothingIfEmpty(problem.place()));
            json.text("message", problem.message());
            json.text("help", problem.help());
        });
    }

    /** The last line: the counts. */
    public static String of(Tally tally) {
        return JsonPage.line(page -> page.object("summary", () -> new ReplayJson(page).counts(tally)));
    }

    private void counts(Tally tally) {
        json.number("sheets", tally.sheets());
        json.number("judged", tally.judged());
        json.number("same", tally.same());
        json.number("differing", tally.differing());
        json.number("damaged", tally.damaged());
        json.number("of_other_procedures", tally.ofOtherProcedures());
        json.number("no_sheets", tally.noSheets());
        json.list("releases", tally.releases(), this::moved);
        json.list("checks", tally.checks(), check -> {
            json.text("name", check.check());
            json.list("movements", check.movements(), this::moved);
        });
        json.list("only_old_knows", tally.onlyOldKnows(), this::entered);
        json.list("only_new_knows", tally.onlyNewKnows(), this::entered);
    }

    private void moved(Tally.Moved moved) {
        json.text("old", moved.movement().before());
        json.text("new", moved.movement().after());
        json.number("engines", moved.engines());
    }

    private void entered(Tally.Entered entered) {
        json.text("name", entered.observation());
        json.number("sheets", entered.sheets());
    }
}

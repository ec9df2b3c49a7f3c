package io.github.leafproof.dsl.assertions;

import io.github.leafproof.inspection.quantity.Spelling;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.AbstractAssert;

/** Statements about a report. Each fails with what the report says instead, and why. */
// Who writes such statements has AssertJ anyway; nobody else shall get it.
@SuppressWarnings("exports")
public final class ReportAssert extends AbstractAssert<ReportAssert, Report> {

    private static final int MOST_NAMED = 40;

    ReportAssert(Report report) {
        super(report, ReportAssert.class);
    }

    /** The engine may go on to the next stage of work. */
    public ReportAssert isReady() {
        return hasRelease(Release.READY);
    }

    /** Something must be put right or settled first. */
    public ReportAssert isHeld() {
        return hasRelease(Release.HOLD);
    }

    /** The engine must not run. */
    public ReportAssert isRejected() {
        return hasRelease(Release.REJECT);
    }

    /** Not everything has been looked at. */
    public ReportAssert isUnfinished() {
        return hasRelease(Release.UNFINISHED);
    }

    /** This is what was decided about the engine. */
    public ReportAssert hasRelease(Release expected) {
        isNotNull();
        if (actual.release() != expected) {
            throw failureWithActualExpected(
                    actual.release().word(),
                    expected.word(),
                    "expected the release %s, got %s:\n   %s",
                    expected.word(),
                    actual.release().word(),
                    actual.releaseReason());
        }
        return this;
    }

    /**
     * Goes on with one check.
     *
     * @param name as the procedure names it, loops written out: {@code lash_within[intake]}
     */
    public CheckAssert check(String name) {
        isNotNull();
        return actual.checks().stream()
                .filter(check -> check.name().equals(name))
                .findFirst()
                .map(check -> new CheckAssert(this, check))
                .orElseThrow(() -> failure(
                        "%s has no check called %s; %s", actual.procedure().name(), name, meant(name)));
    }

    private String meant(String name) {
        List<String> names = actual.checks().stream().map(Report.Check::name).toList();
        List<String> ofLoop =
                names.stream().filter(each -> each.startsWith(name + "[")).toList();
        if (!ofLoop.isEmpty()) {
            return "did you mean " + String.join(" or ", ofLoop) + "?";
        }
        String all = names.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
        return Spelling.nearest(name, names)
                .map(near -> "did you mean " + near + "?")
                .orElse("its checks are " + all + (names.size() > MOST_NAMED ? " and others" : ""));
    }

    /** Just these checks fail, in whatever order they are named; without a name: none does. */
    public ReportAssert hasFailing(String... names) {
        return hasJust(Outcome.FAILS, names);
    }

    /** Just these checks are open: measured, and not proven either way. */
    public ReportAssert hasOpen(String... names) {
        return hasJust(Outcome.OPEN, names);
    }

    /** Just these checks lack an observation. */
    public ReportAssert hasUntested(String... names) {
        return hasJust(Outcome.UNTESTED, names);
    }

    private ReportAssert hasJust(Outcome outcome, String... names) {
        Stream.of(names).forEach(this::check);
        List<String> found = actual.checks().stream()
                .filter(check -> check.outcome() == outcome)
                .map(Report.Check::name)
                .toList();
        List<String> missed =
                Stream.of(names).filter(name -> !found.contains(name)).toList();
        List<String> more = found.stream()
                .filter(name -> !Arrays.asList(names).contains(name))
                .toList();
        if (!missed.isEmpty() || !more.isEmpty()) {
            throw failureWithActualExpected(
                    found,
                    List.of(names),
                    "expected of all checks just these to come out as %s: %s%s%s",
                    outcome.word(),
                    names.length == 0 ? "none" : String.join(", ", names),
                    missed.isEmpty() ? "" : "\nbut these do not:" + told(missed),
                    more.isEmpty() ? "" : "\nbut these do as well:" + told(more));
        }
        return this;
    }

    private String told(List<String> names) {
        return names.stream()
                .flatMap(name ->
                        actual.checks().stream().filter(check -> check.name().equals(name)))
                .map(check -> "\n   " + check.name() + " " + CheckAssert.summary(check))
                .collect(Collectors.joining());
    }

    /** Some step that is worth doing next says this. */
    public ReportAssert hasNextStep(String words) {
        isNotNull();
        return says("next steps", actual.next().stream().map(Report.Step::step).toList(), words);
    }

    /** Some note to the reader says this. */
    public ReportAssert hasNote(String words) {
        isNotNull();
        return says("notes", actual.notes(), words);
    }

    /** Some caution for the whole work says this. */
    public ReportAssert hasCaution(String words) {
        isNotNull();
        return says("cautions", actual.cautions(), words);
    }

    private ReportAssert says(String what, List<String> texts, String words) {
        if (texts.stream().noneMatch(text -> text.contains(words))) {
            throw failure("expected the %s to say \"%s\", and %s", what, words, CheckAssert.only(texts));
        }
        return this;
    }
}

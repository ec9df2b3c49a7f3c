package io.github.leafproof.dsl.assertions;

import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.assertj.core.api.AbstractAssert;

/** Statements about one check of a report. Each fails with what came of the check instead, and why. */
// Who writes such statements has AssertJ anyway; nobody else shall get it.
@SuppressWarnings("exports")
public final class CheckAssert extends AbstractAssert<CheckAssert, Report.Check> {

    private final ReportAssert report;

    CheckAssert(ReportAssert report, Report.Check check) {
        super(check, CheckAssert.class);
        this.report = report;
    }

    /** Goes on with the report. */
    public ReportAssert and() {
        return report;
    }

    /** Goes on with another check of the same report. */
    public CheckAssert check(String name) {
        return report.check(name);
    }

    /** Shown to conform. */
    public CheckAssert passes() {
        return hasOutcome(Outcome.PASSES);
    }

    /** Not shown to be within its limits, but within what is tolerated beyond them. */
    public CheckAssert isTolerated() {
        return hasOutcome(Outcome.TOLERATED);
    }

    /** Shown not to conform. */
    public CheckAssert fails() {
        return hasOutcome(Outcome.FAILS);
    }

    /** Shown to lie above its limits. */
    public CheckAssert failsHigh() {
        return failsOn(Side.HIGH);
    }

    /** Shown to lie below its limits. */
    public CheckAssert failsLow() {
        return failsOn(Side.LOW);
    }

    /** Measured, and not proven either way. */
    public CheckAssert isOpen() {
        return hasOutcome(Outcome.OPEN);
    }

    /** The evidence disagrees with itself. */
    public CheckAssert isContradicted() {
        return hasOutcome(Outcome.CONTRADICTED);
    }

    /** An observation, or a fact of the engine, is missing. */
    public CheckAssert isUntested() {
        return hasOutcome(Outcome.UNTESTED);
    }

    /** A check that has to let through first does not. */
    public CheckAssert isBlocked() {
        return hasOutcome(Outcome.BLOCKED);
    }

    /** Does not concern this engine. */
    public CheckAssert isNotApplicable() {
        return hasOutcome(Outcome.NOT_APPLICABLE);
    }

    /** This is what came of it. */
    public CheckAssert hasOutcome(Outcome expected) {
        if (actual.outcome() != expected) {
            throw failureWithActualExpected(
                    actual.outcome().word(),
                    expected.word(),
                    "expected %s %s, got %s%s",
                    actual.name(),
                    expected.word(),
                    summary(actual),
                    why());
        }
        return this;
    }

    private CheckAssert failsOn(Side side) {
        hasOutcome(Outcome.FAILS);
        if (actual.side() != side) {
            throw failureWithActualExpected(
                    actual.side(),
                    side,
                    "expected %s to fail %s, got %s%s",
                    actual.name(),
                    word(side),
                    summary(actual),
                    why());
        }
        return this;
    }

    /** It is met with at least this probability, from 0 to 1, wherever in its bounds the truth lies. */
    public CheckAssert holdsWithAtLeast(double probability) {
        Report.Probability bounds = bounds();
        if (bounds.low() < probability) {
            throw failure(
                    "expected %s to hold with at least %s, and it holds with %s%s",
                    actual.name(), Display.percent(probability), percent(bounds), why());
        }
        return this;
    }

    /** It is met with at most this probability, from 0 to 1, wherever in its bounds the truth lies. */
    public CheckAssert holdsWithAtMost(double probability) {
        Report.Probability bounds = bounds();
        if (bounds.high() > probability) {
            throw failure(
                    "expected %s to hold with at most %s, and it holds with %s%s",
                    actual.name(), Display.percent(probability), percent(bounds), why());
        }
        return this;
    }

    private Report.Probability bounds() {
        Report.Probability bounds = actual.probability();
        if (bounds == null) {
            throw failure("%s has no probability, for nothing was judged: %s%s", actual.name(), summary(actual), why());
        }
        return bounds;
    }

    /** Something is missing, or waited for, that is called so: an observation, a fact of the engine, a gate. */
    public CheckAssert isMissing(String words) {
        return says("what is missing for ", actual.missing(), words);
    }

    /** Nothing is missing. */
    public CheckAssert isMissingNothing() {
        if (!actual.missing().isEmpty()) {
            throw failure(
                    "expected nothing to be missing for %s, and there is:%s", actual.name(), listed(actual.missing()));
        }
        return this;
    }

    /** Some advice says this. */
    public CheckAssert advises(String words) {
        return says("the advice of ", actual.advice(), words);
    }

    /** Nothing is advised. */
    public CheckAssert advisesNothing() {
        if (!actual.advice().isEmpty()) {
            throw failure("expected no advice of %s, and there is:%s", actual.name(), listed(actual.advice()));
        }
        return this;
    }

    /** Some caution before the work says this. */
    public CheckAssert cautions(String words) {
        return says("the cautions of ", actual.cautions(), words);
    }

    /** Something that was entered, or what it shows, says this. */
    public CheckAssert hasEvidence(String words) {
        return says("the evidence of ", actual.evidence(), words);
    }

    /** Some note to the reader says this. */
    public CheckAssert hasNote(String words) {
        return says("the notes on ", actual.notes(), words);
    }

    /** Before it was adjusted, this came of it. */
    public CheckAssert wasFound(Outcome expected) {
        Report.AsFound found = actual.asFound();
        if (found == null) {
            throw failure("nothing that %s rests on was adjusted: it was found as it was left", actual.name());
        }
        if (found.outcome() != expected) {
            throw failureWithActualExpected(
                    found.outcome().word(),
                    expected.word(),
                    "expected %s to be found %s, and it was found %s",
                    actual.name(),
                    expected.word(),
                    found.outcome().word());
        }
        return this;
    }

    private CheckAssert says(String what, List<String> texts, String words) {
        if (texts.stream().noneMatch(text -> text.contains(words))) {
            throw failure("expected %s%s to say \"%s\", and %s", what, actual.name(), words, only(texts));
        }
        return this;
    }

    static String only(List<String> texts) {
        return texts.isEmpty() ? "there is none" : "there is only:" + listed(texts);
    }

    /** Name, outcome and side, in a few words. */
    static String summary(Report.Check check) {
        String side = check.side() == Side.NONE ? "" : " " + word(check.side());
        return check.outcome().word() + side + " (\"" + check.title() + "\")";
    }

    /** Why it came out as it did, a line each. */
    private String why() {
        List<String> lines = new ArrayList<>();
        if (actual.requirement() != null) {
            lines.add("requires " + actual.requirement());
        }
        if (actual.probability() != null) {
            lines.add("holds with a probability of " + percent(actual.probability()));
        }
        actual.missing().forEach(missing -> lines.add("missing: " + missing));
        lines.addAll(actual.evidence());
        return listed(lines);
    }

    private static String percent(Report.Probability bounds) {
        String low = Display.percent(bounds.low());
        String high = Display.percent(bounds.high());
        return low.equals(high) ? low : low + " to " + high;
    }

    private static String word(Side side) {
        return side == Side.HIGH ? "high" : side == Side.LOW ? "low" : "on no side";
    }

    static String listed(List<String> lines) {
        return lines.stream().map(line -> "\n   " + line).collect(Collectors.joining());
    }
}

package io.github.leafproof.dsl.guide;

import io.github.leafproof.dsl.report.Lines;
import io.github.leafproof.dsl.session.NextStep;
import io.github.leafproof.dsl.session.Progress;
import io.github.leafproof.dsl.session.Setup;
import io.github.leafproof.dsl.session.Standing;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Severity;
import io.github.leafproof.inspection.verdict.Tally;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A step as it is asked for: where one is, the cautions first, how the bench is brought to where it has to be, what to look
 * at, what to type. A caution is told in full where a step brings it up, and by its first sentence while it lasts.
 */
final class StepText {

    private static final int BAR = 24;

    private Set<String> lasting = Set.of();
    private String stage = "";
    private String asked = "";

    /** The whole step. */
    String of(Standing standing, NextStep step, Asked answer, Look look) {
        Lines lines = look.lines();
        lines.line("");
        lines.block("", progress(standing, look));
        if (!step.observation().stage().equals(stage)
                && !step.observation().stage().isEmpty()) {
            stage = step.observation().stage();
            lines.line(look.paint().strong(stage));
        }
        Set<String> told = new LinkedHashSet<>();
        for (Setup setup : step.setup()) {
            caution(lines, setup.cautions(), told, look);
            lines.block("  - ", Look.sentence(setup.change().how()));
        }
        caution(lines, step.cautions(), told, look);
        lasting = told;
        if (step.reason() != NextStep.Reason.MORE
                || !asked.equals(step.observation().name())) {
            asked = step.observation().name();
            lines.block("  ", look.paint().strong(step.ask()));
            if (step.gauge() != null) {
                lines.block("  with ", gauge(step.gauge()));
            }
            step.observation().notes().forEach(note -> lines.block("  note: ", note));
        }
        for (Entry entry : standing.entries(step.observation().name())) {
            lines.block("  so far: ", GivenWords.of(entry.given()) + (entry.corrects() ? " (corrected)" : ""));
        }
        if (step.leaf() != null && step.reason() == NextStep.Reason.MORE) {
            lines.block("  ", step.leaf().words(standing.inspector().units()));
        }
        lines.block("  enter ", answer.hint() + (step.observation().optional() ? "; or skip: it may be left out" : ""));
        return lines.toString();
    }

    private void caution(Lines lines, List<String> cautions, Set<String> told, Look look) {
        for (String caution : cautions) {
            if (told.add(caution)) {
                boolean lasts = lasting.contains(caution);
                lines.block(
                        lasts ? "  still: " : "  CAUTION ",
                        lasts ? firstSentence(caution) : look.paint().strong(caution));
            }
        }
    }

    private static String firstSentence(String caution) {
        int end = caution.indexOf(". ");
        return end < 0 ? caution : caution.substring(0, end + 1);
    }

    private static String gauge(Gauge gauge) {
        return gauge instanceof FeelSet set ? set.name() + ": " + Asked.markings(set) : gauge.name();
    }

    /** {@code [#####...................] 12 done, 1 open, 35 left}. */
    static String progress(Standing standing, Look look) {
        Progress progress = standing.progress();
        int behind = progress.done() + progress.couldNot();
        int ahead = progress.toDo() + progress.putOff();
        int all = behind + ahead + progress.waiting() + progress.skipped();
        int bar = Math.min(BAR, look.width() / 3);
        int full = all == 0 ? bar : bar * behind / all;
        List<String> counts = new ArrayList<>();
        counts.add(behind + " done");
        count(counts, standing, "open", Set.of(Outcome.OPEN, Outcome.CONTRADICTED));
        count(counts, standing, "failed", Set.of(Outcome.FAILS));
        counts.add(ahead + " left");
        if (progress.putOff() > 0) {
            counts.add(progress.putOff() + " of them put off");
        }
        if (progress.waiting() > 0) {
            counts.add(progress.waiting() + " waiting for a gate");
        }
        if (progress.skipped() > 0) {
            counts.add(progress.skipped() + " passed over");
        }
        return "[" + "#".repeat(full) + ".".repeat(bar - full) + "] " + String.join(", ", counts);
    }

    /** What is told where nothing is left to ask for. */
    static String ending(Standing standing, Look look) {
        Lines lines = look.lines();
        lines.line("");
        lines.block("", progress(standing, look));
        String release = standing.judgement().released().word();
        lines.block("", "Nothing is left to ask for. It comes to: " + release.toUpperCase(Locale.ROOT) + ".");
        String behind = new WhyText(standing, look).leftBehind();
        lines.block("  ", "An empty line writes the sheet and the report. back, go and undo lead back.");
        return behind.isEmpty() ? lines.toString() : lines + behind;
    }

    /** Nothing can be said yet of what it bears on. */
    static String noted(Standing standing, String observation, Look look) {
        Lines lines = look.lines();
        List<Entry> entries = standing.entries(observation);
        entries.stream()
                .skip(entries.size() - 1L)
                .forEach(entry -> lines.block("  noted: ", GivenWords.of(entry.given())));
        return lines.toString();
    }

    private static void count(List<String> counts, Standing standing, String word, Set<Outcome> outcomes) {
        Tally tally = standing.judgement().verdicts();
        int found = 0;
        for (Severity severity : Severity.values()) {
            found += outcomes.stream()
                    .mapToInt(outcome -> tally.count(severity, outcome))
                    .sum();
        }
        if (found > 0) {
            counts.add(String.format(Locale.ROOT, "%d %s", found, word));
        }
    }
}

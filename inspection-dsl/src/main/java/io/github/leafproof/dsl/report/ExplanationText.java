package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Calculation;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** An explanation as a person reads it in a terminal: what came of it, then the chain to it, from the gates to the rule. */
public final class ExplanationText {

    private final Explanation explanation;
    private final Paint paint;
    private final Lines text = new Lines();

    private ExplanationText(Explanation explanation, Paint paint) {
        this.explanation = explanation;
        this.paint = paint;
    }

    /** The text, lines ending in {@code \n}. */
    public static String of(Explanation explanation, boolean colour) {
        return new ExplanationText(explanation, colour ? Paint.COLOURED : Paint.PLAIN).print();
    }

    private String print() {
        head();
        Explanation.Judged judged = explanation.judged();
        if (judged != null) {
            outcome(judged);
        }
        requirement();
        related("Waits for", explanation.gates());
        facts();
        observations();
        gauges();
        values();
        steps();
        decision();
        related("Waits for this", explanation.waiting());
        advice();
        files();
        return text.toString();
    }

    private void head() {
        Report.Procedure procedure = explanation.procedure();
        text.line(paint.strong(explanation.title()) + "  (" + explanation.name() + ")");
        text.line(explanation.severity().word()
                + (explanation.gate() ? ", gate" : "")
                + (explanation.stage().isEmpty() ? "" : ", in the stage " + explanation.stage()));
        text.line(procedure.title() + "  (" + procedure.name() + ", revision " + procedure.revision() + ")");
        Explanation.Judged judged = explanation.judged();
        if (judged != null) {
            text.line(TextReport.engine(judged.engine()));
            text.line("sheet " + judged.sheet().name() + ", " + judged.date());
        }
    }

    private void outcome(Explanation.Judged judged) {
        Report.Check check = judged.check();
        Outcome outcome = check.outcome();
        text.line("");
        text.line(paint.outcome(outcome, word(outcome).toUpperCase(Locale.ROOT)));
        check.missing().forEach(missing -> text.block("  ", missing));
        judged.reasons().forEach(reason -> text.block("  ", reason));
        check.notes().forEach(note -> text.block("  note: ", note));
        if (check.asFound() != null) {
            text.block(
                    "  ",
                    "as found it was: " + word(check.asFound().outcome())
                            + (check.asFound().value() == null
                                    ? ""
                                    : ", " + check.asFound().value()));
        }
    }

    private static String word(Outcome outcome) {
        return outcome.word().replace('_', ' ');
    }

    private void chapter(String title) {
        text.line("");
        text.line(paint.strong(title));
    }

    private void requirement() {
        chapter("Requires");
        text.block("  ", explanation.requirement());
        if (explanation.when() != null) {
            text.block("  ", "applies only when " + explanation.when());
        }
        explanation.because().forEach(reason -> text.block("  because ", reason));
    }

    private void related(String title, List<Explanation.Related> checks) {
        if (checks.isEmpty()) {
            return;
        }
        chapter(title);
        for (Explanation.Related other : checks) {
            text.block(
                    "  ",
                    (other.outcome() == null ? "" : word(other.outcome()) + ": ") + other.name() + ", \""
                            + other.title() + "\"");
        }
    }

    private void facts() {
        if (explanation.facts().isEmpty()) {
            return;
        }
        chapter("Facts of the engine");
        for (Explanation.Fact fact : explanation.facts()) {
            text.block("  ", fact.name() + (fact.value() == null ? "" : ": " + fact.value()));
            text.block("      ", fact.meaning());
            if (fact.source() != null) {
                text.block("      ", "stated by " + fact.source());
            }
        }
    }

    private void observations() {
        if (explanation.observations().isEmpty()) {
            return;
        }
        chapter(explanation.judged() == null ? "What is observed" : "What was observed");
        for (Explanation.Observed observed : explanation.observations()) {
            text.block("  ", observed.name() + (observed.value() == null ? "" : ": " + observed.value()));
            text.block("      ", observed.ask());
            String how = Stream.of(
                            observed.kind(),
                            observed.gauge() == null ? null : "with " + observed.gauge(),
                            observed.bench().isEmpty() ? null : "the bench: " + String.join(", ", observed.bench()),
                            observed.when() == null ? null : "asked for when " + observed.when())
                    .filter(Objects::nonNull)
                    .collect(Collectors.joining("; "));
            text.block("      ", how);
            observed.entries().forEach(entry -> text.block("      - ", entry));
        }
    }

    private void gauges() {
        if (explanation.gauges().isEmpty()) {
            return;
        }
        chapter("Gauges");
        for (Explanation.GaugeUsed gauge : explanation.gauges()) {
            text.block("  ", gauge.name() + ", " + gauge.kind());
            gauge.known().forEach(known -> text.block("      - ", known));
        }
    }

    private void values() {
        if (explanation.values().isEmpty()) {
            return;
        }
        chapter("Values");
        for (Explanation.Computed value : explanation.values()) {
            text.block("  ", value.name() + " = " + value.formula());
            value.steps().forEach(step -> step("      ", step));
            if (value.value() != null) {
                text.block("      ", "= " + value.value());
            }
            if (!value.sources().isEmpty()) {
                text.block("      ", "the uncertainty comes from " + String.join("; ", value.sources()));
            }
        }
    }

    private void steps() {
        if (explanation.steps().isEmpty()) {
            return;
        }
        chapter("From these to the verdict");
        explanation.steps().forEach(step -> step("  ", step));
    }

    private void step(String lead, Calculation.Step step) {
        String indent = lead + "  ".repeat(step.depth());
        text.block(indent, step.words() + (step.value().isEmpty() ? "" : ": " + step.value()));
        step.details().forEach(detail -> text.block(indent + "    - ", detail));
    }

    private void decision() {
        chapter("How it is decided");
        text.block("  ", explanation.decision());
        Explanation.Judged judged = explanation.judged();
        if (judged != null && judged.check().probability() != null) {
            Report.Probability probability = judged.check().probability();
            text.block(
                    "  ",
                    "probability of conforming " + Reporting.probabilityWords(probability.low(), probability.high())
                            + ", so: " + word(judged.check().outcome()));
        }
    }

    private void advice() {
        if (explanation.advice().isEmpty() && explanation.judged() != null) {
            return;
        }
        if (!explanation.cautions().isEmpty() || !explanation.advice().isEmpty()) {
            chapter(
                    explanation.judged() == null
                            ? "Cautions, and what it may advise"
                            : "What to do, its cautions first");
            explanation.cautions().forEach(caution -> text.block("  Caution: ", caution));
            explanation.advice().forEach(advice -> text.block("  ", advice));
        }
        text.line("");
        text.block("", Reporting.DEFERENCE);
    }

    private void files() {
        Explanation.Judged judged = explanation.judged();
        if (judged == null) {
            return;
        }
        chapter("Files, with the SHA-256 of each");
        TextReport.file(
                text,
                "procedure",
                explanation.procedure().name(),
                explanation.procedure().sha256());
        explanation.procedure().parts().forEach(part -> TextReport.file(text, "part", part.name(), part.sha256()));
        TextReport.file(text, "card", judged.card().name(), judged.card().sha256());
        TextReport.file(text, "tray", judged.tray().name(), judged.tray().sha256());
        TextReport.file(text, "sheet", judged.sheet().name(), judged.sheet().sha256());
    }
}

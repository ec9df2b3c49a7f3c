package io.github.leafproof.dsl.report;

import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A report as a person reads it in a terminal: the decision first, then each check, then what to do next. Colour only
 * repeats what the words say.
 */
public final class TextReport {

    private final Report report;
    private final Paint paint;
    private final Lines text = new Lines();

    private TextReport(Report report, Paint paint) {
        this.report = report;
        this.paint = paint;
    }

    /** The text, lines ending in {@code \n}. */
    public static String of(Report report, boolean colour) {
        return new TextReport(report, colour ? Paint.COLOURED : Paint.PLAIN).print();
    }

    private String print() {
        head();
        decision();
        checks();
        steps();
        text.list(paint.strong("Cautions for the whole work"), report.cautions());
        text.list(paint.strong("Notes"), report.notes());
        files();
        return text.toString();
    }

    private void head() {
        Report.Procedure procedure = report.procedure();
        text.line(paint.strong(procedure.title()) + "  (" + procedure.name() + ", revision " + procedure.revision()
                + ")");
        text.line(engine(report.engine()));
        text.line("sheet " + report.sheet().name() + ", " + report.date());
        text.line("");
    }

    /** The engine in a line. */
    static String engine(Report.Engine engine) {
        String serial = engine.serial() == null ? null : "serial " + engine.serial();
        String variant = engine.variant() == null ? null : "variant " + engine.variant();
        return joined(", ", model(engine.maker(), engine.model()), serial, variant, engine.condition());
    }

    /** Maker and model, once: many a model's name begins with its maker's. */
    public static String model(@Nullable String maker, @Nullable String model) {
        return maker != null && model != null && model.startsWith(maker) ? model : joined(" ", maker, model);
    }

    private static String joined(String between, @Nullable String... parts) {
        return Stream.of(parts).filter(Objects::nonNull).collect(Collectors.joining(between));
    }

    private void decision() {
        Release release = report.release();
        text.line("Release: " + paint.release(release, release.word().toUpperCase(Locale.ROOT)));
        text.block("", report.releaseReason());
    }

    private void checks() {
        String stage = "";
        for (Report.Check check : report.checks()) {
            String here = check.stage() == null ? "" : check.stage();
            if (!here.equals(stage)) {
                text.line("");
                text.line(paint.strong(here));
                stage = here;
            }
            check(check);
        }
        text.line("");
    }

    private void check(Report.Check check) {
        Outcome outcome = check.outcome();
        String word = outcome.word().replace('_', ' ');
        boolean quiet = outcome == Outcome.PASSES || outcome == Outcome.NOT_APPLICABLE;
        String mark = String.format(Locale.ROOT, "%-16s", quiet ? word : word.toUpperCase(Locale.ROOT));
        text.line("  " + paint.outcome(outcome, mark) + check.title() + "  ["
                + check.severity().word() + (check.gate() ? ", gate" : "") + "]");
        if (check.asFound() != null) {
            String found = check.asFound().value() == null
                    ? ""
                    : ", " + check.asFound().value();
            text.field("as found", check.asFound().outcome().word().replace('_', ' ') + found);
        }
        if (!quiet) {
            details(check);
        } else if (check.value() != null) {
            text.field("found", check.value());
        }
        advice(check);
        if (quiet && check.asFound() != null) {
            // Whoever reads that it was wrong wants to see what was done about it.
            check.evidence().forEach(evidence -> text.field("evidence", evidence));
        }
        check.notes().forEach(note -> text.field("note", note));
        if (!quiet) {
            check.because().forEach(reason -> text.field("because", reason));
        }
    }

    private void details(Report.Check check) {
        text.field("check", check.name());
        if (check.requirement() != null) {
            text.field("requires", check.requirement());
        }
        if (check.value() != null) {
            text.field("found", check.value());
        }
        if (check.probability() != null) {
            text.field(
                    "probability",
                    "of conforming: "
                            + Reporting.probabilityWords(
                                    check.probability().low(),
                                    check.probability().high()));
        }
        check.missing().forEach(missing -> text.field("missing", missing));
        check.evidence().stream()
                .filter(evidence -> check.missing().stream().noneMatch(evidence::startsWith))
                .forEach(evidence -> text.field("evidence", evidence));
    }

    private void advice(Report.Check check) {
        // Before the advice, never after it; without advice there is no step to be careful with.
        if (!check.advice().isEmpty()) {
            check.cautions().forEach(caution -> text.field("caution", caution));
        }
        check.advice().forEach(advice -> text.field("advice", advice));
    }

    private void steps() {
        if (report.next().isEmpty()) {
            return;
        }
        text.line(paint.strong("Next, each with its cautions first"));
        int number = 0;
        for (Report.Step step : report.next()) {
            number++;
            String lead = String.format(Locale.ROOT, "  %2d. ", number);
            for (String caution : step.cautions()) {
                text.block(lead, "Caution: " + caution);
                lead = " ".repeat(lead.length());
            }
            text.block(lead, step.step());
        }
        text.line("");
    }

    private void files() {
        text.line(paint.strong("Files, with the SHA-256 of each"));
        file(text, "procedure", report.procedure().name(), report.procedure().sha256());
        report.procedure().parts().forEach(part -> file(text, "part", part.name(), part.sha256()));
        Stream.of(report.card())
                .filter(Objects::nonNull)
                .forEach(card -> file(text, "card", card.name(), card.sha256()));
        Stream.of(report.tray())
                .filter(Objects::nonNull)
                .forEach(tray -> file(text, "tray", tray.name(), tray.sha256()));
        file(text, "sheet", report.sheet().name(), report.sheet().sha256());
    }

    /** A file and its digest. */
    static void file(Lines text, String what, String name, String sha256) {
        text.line(String.format(Locale.ROOT, "  %-9s  %s  %s", what, sha256, name));
    }
}

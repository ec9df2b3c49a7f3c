package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.record.JsonWriting.ObjectBuilder;
import io.github.leafproof.inspection.verdict.Side;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** From a report to JSON. Every key is there every time; null says that there is nothing to say. */
final class ReportWriting {
    private static final Json NOTHING = JsonWriting.text((String) null);

    private ReportWriting() {}

    static Json report(Report report) {
        return new ObjectBuilder()
                .put("format", Report.FORMAT)
                .put("procedure", procedure(report.procedure()))
                .put("sheet", input(report.sheet()))
                .put("card", input(report.card()))
                .put("tray", input(report.tray()))
                .put("engine", engine(report.engine()))
                .put("date", report.date().toString())
                .put("release", report.release().word())
                .put("release_reason", report.releaseReason())
                .put(
                        "checks",
                        JsonWriting.list(report.checks().stream()
                                .map(ReportWriting::check)
                                .toList()))
                .put(
                        "next",
                        JsonWriting.list(
                                report.next().stream().map(ReportWriting::step).toList()))
                .put("cautions", JsonWriting.texts(report.cautions()))
                .put("notes", JsonWriting.texts(report.notes()))
                .done();
    }

    private static Json procedure(Report.Procedure procedure) {
        return new ObjectBuilder()
                .put("name", procedure.name())
                .put("title", procedure.title())
                .put("revision", JsonWriting.number(procedure.revision()))
                .put("sha256", procedure.sha256())
                .put(
                        "parts",
                        JsonWriting.list(procedure.parts().stream()
                                .map(ReportWriting::input)
                                .toList()))
                .done();
    }

    private static Json input(Report.@Nullable Input input) {
        return input == null
                ? NOTHING
                : new ObjectBuilder()
                        .put("name", input.name())
                        .put("sha256", input.sha256())
                        .done();
    }

    private static Json engine(Report.Engine engine) {
        return new ObjectBuilder()
                .put("model", engine.model())
                .put("maker", engine.maker())
                .put("serial", engine.serial())
                .put("variant", engine.variant())
                .put("condition", engine.condition())
                .done();
    }

    private static Json check(Report.Check check) {
        return new ObjectBuilder()
                .put("name", check.name())
                .put("title", check.title())
                .put("stage", check.stage())
                .put("severity", check.severity().word())
                .put("gate", JsonWriting.yesNo(check.gate()))
                .put("outcome", check.outcome().word())
                .put("side", side(check.side()))
                .put("probability", probability(check.probability()))
                .put("value", check.value())
                .put("requirement", check.requirement())
                .put("evidence", JsonWriting.texts(check.evidence()))
                .put("advice", JsonWriting.texts(check.advice()))
                .put("cautions", JsonWriting.texts(check.cautions()))
                .put("missing", JsonWriting.texts(check.missing()))
                .put("notes", JsonWriting.texts(check.notes()))
                .put("because", JsonWriting.texts(check.because()))
                .put("as_found", asFound(check.asFound()))
                .done();
    }

    static @Nullable String side(Side side) {
        return side == Side.NONE ? null : side.name().toLowerCase(Locale.ROOT);
    }

    private static Json probability(Report.@Nullable Probability probability) {
        return probability == null
                ? NOTHING
                : new ObjectBuilder()
                        .put("low", JsonWriting.number(probability.low()))
                        .put("high", JsonWriting.number(probability.high()))
                        .done();
    }

    private static Json asFound(Report.@Nullable AsFound asFound) {
        return asFound == null
                ? NOTHING
                : new ObjectBuilder()
                        .put("outcome", asFound.outcome().word())
                        .put("value", asFound.value())
                        .done();
    }

    private static Json step(Report.Step step) {
        return new ObjectBuilder()
                .put("step", step.step())
                .put("cautions", JsonWriting.texts(step.cautions()))
                .done();
    }
}

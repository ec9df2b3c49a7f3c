package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Calculation;
import io.github.leafproof.dsl.json.JsonPage;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Side;
import java.util.Locale;

/**
 * An explanation for programs; docs/formats.md says what each key holds. Every key is there every time; null says that there
 * is nothing to say.
 */
public final class ExplanationJson {

    private final JsonPage json;

    private ExplanationJson(JsonPage json) {
        this.json = json;
    }

    /** The same explanation gives the same text on every machine; it ends in a line end. */
    public static String write(Explanation explanation) {
        return JsonPage.write(json -> new ExplanationJson(json).explanation(explanation));
    }

    private void explanation(Explanation explanation) {
        json.text("format", "leafproof-explanation/1");
        Report.Procedure procedure = explanation.procedure();
        json.object("procedure", () -> {
            json.text("name", procedure.name());
            json.text("title", procedure.title());
            json.number("revision", procedure.revision());
            json.text("sha256", procedure.sha256());
            json.list("parts", procedure.parts(), part -> json.file(part.name(), part.sha256()));
        });
        json.text("check", explanation.name());
        json.text("title", explanation.title());
        json.text("stage", explanation.stage().isEmpty() ? null : explanation.stage());
        json.text("severity", explanation.severity().word());
        json.yesNo("gate", explanation.gate());
        json.text("requirement", explanation.requirement());
        json.text("when", explanation.when());
        json.text("decision", explanation.decision());
        json.object("judged", explanation.judged(), this::judged);
        json.list("waits_for", explanation.gates(), this::related);
        json.list("facts", explanation.facts(), this::fact);
        json.list("observations", explanation.observations(), this::observed);
        json.list("gauges", explanation.gauges(), gauge -> {
            json.text("name", gauge.name());
            json.text("kind", gauge.kind());
            json.texts("known", gauge.known());
        });
        json.list("values", explanation.values(), this::computed);
        json.list("steps", explanation.steps(), this::step);
        json.list("waits_for_this", explanation.waiting(), this::related);
        json.texts("advice", explanation.advice());
        json.texts("cautions", explanation.cautions());
        json.texts("because", explanation.because());
    }

    private void judged(Explanation.Judged judged) {
        Report.Check check = judged.check();
        json.text("outcome", check.outcome().word());
        json.text("side", check.side() == Side.NONE ? null : check.side().name().toLowerCase(Locale.ROOT));
        json.object("probability", check.probability(), probability -> {
            json.number("low", probability.low());
            json.number("high", probability.high());
        });
        json.text("value", check.value());
        json.texts("reasons", judged.reasons());
        json.texts("missing", check.missing());
        json.texts("notes", check.notes());
        json.text(
                "as_found",
                check.asFound() == null ? null : check.asFound().outcome().word());
        json.text("date", judged.date().toString());
        json.object(
                "sheet", () -> json.file(judged.sheet().name(), judged.sheet().sha256()));
        json.object("card", () -> json.file(judged.card().name(), judged.card().sha256()));
        json.object("tray", () -> json.file(judged.tray().name(), judged.tray().sha256()));
    }

    private void related(Explanation.Related other) {
        json.text("check", other.name());
        json.text("title", other.title());
        json.text("outcome", other.outcome() == null ? null : other.outcome().word());
    }

    private void fact(Explanation.Fact fact) {
        json.text("name", fact.name());
        json.text("meaning", fact.meaning());
        json.text("value", fact.value());
        json.text("source", fact.source());
    }

    private void observed(Explanation.Observed observed) {
        json.text("name", observed.name());
        json.text("ask", observed.ask());
        json.text("kind", observed.kind());
        json.text("gauge", observed.gauge());
        json.texts("bench", observed.bench());
        json.text("when", observed.when());
        json.text("value", observed.value());
        json.texts("entries", observed.entries());
    }

    private void computed(Explanation.Computed value) {
        json.text("name", value.name());
        json.text("formula", value.formula());
        json.text("value", value.value());
        json.list("steps", value.steps(), this::step);
        json.texts("sources", value.sources());
    }

    private void step(Calculation.Step step) {
        json.number("depth", step.depth());
        json.text("formula", step.words());
        json.text("value", step.value());
        json.texts("details", step.details());
    }
}

package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Calculation;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Side;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * An explanation for programs; docs/graph.md says what each key holds. Every key is there every time; null says that there
 * is nothing to say.
 */
public final class ExplanationJson {

    private static final JsonFactory JSON = new JsonFactory();

    private final JsonGenerator json;

    private ExplanationJson(JsonGenerator json) {
        this.json = json;
    }

    /** The same explanation gives the same text on every machine; it ends in a line end. */
    public static String write(Explanation explanation) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = JSON.createGenerator(new Layout(), text)) {
            new ExplanationJson(generator).explanation(explanation);
        }
        return text.append('\n').toString();
    }

    private void explanation(Explanation explanation) {
        json.writeStartObject();
        text("format", "leafproof-explanation/1");
        Report.Procedure procedure = explanation.procedure();
        json.writeObjectPropertyStart("procedure");
        text("name", procedure.name());
        text("title", procedure.title());
        json.writeNumberProperty("revision", procedure.revision());
        text("sha256", procedure.sha256());
        list("parts", procedure.parts(), this::file);
        json.writeEndObject();
        text("check", explanation.name());
        text("title", explanation.title());
        text("stage", explanation.stage().isEmpty() ? null : explanation.stage());
        text("severity", explanation.severity().word());
        json.writeBooleanProperty("gate", explanation.gate());
        text("requirement", explanation.requirement());
        text("when", explanation.when());
        text("decision", explanation.decision());
        judged(explanation.judged());
        list("waits_for", explanation.gates(), this::related);
        list("facts", explanation.facts(), this::fact);
        list("observations", explanation.observations(), this::observed);
        list("gauges", explanation.gauges(), gauge -> {
            text("name", gauge.name());
            text("kind", gauge.kind());
            texts("known", gauge.known());
        });
        list("values", explanation.values(), this::computed);
        list("steps", explanation.steps(), this::step);
        list("waits_for_this", explanation.waiting(), this::related);
        texts("advice", explanation.advice());
        texts("cautions", explanation.cautions());
        texts("because", explanation.because());
        json.writeEndObject();
    }

    private void judged(Explanation.@Nullable Judged judged) {
        if (judged == null) {
            json.writeNullProperty("judged");
            return;
        }
        Report.Check check = judged.check();
        json.writeObjectPropertyStart("judged");
        text("outcome", check.outcome().word());
        text("side", check.side() == Side.NONE ? null : check.side().name().toLowerCase(Locale.ROOT));
        if (check.probability() == null) {
            json.writeNullProperty("probability");
        } else {
            json.writeObjectPropertyStart("probability");
            json.writeNumberProperty("low", check.probability().low());
            json.writeNumberProperty("high", check.probability().high());
            json.writeEndObject();
        }
        text("value", check.value());
        texts("reasons", judged.reasons());
        texts("missing", check.missing());
        texts("notes", check.notes());
        text(
                "as_found",
                check.asFound() == null ? null : check.asFound().outcome().word());
        text("date", judged.date().toString());
        input("sheet", judged.sheet());
        input("card", judged.card());
        input("tray", judged.tray());
        json.writeEndObject();
    }

    private void input(String key, Report.Input input) {
        json.writeObjectPropertyStart(key);
        file(input);
        json.writeEndObject();
    }

    private void file(Report.Input input) {
        text("name", input.name());
        text("sha256", input.sha256());
    }

    private void related(Explanation.Related other) {
        text("check", other.name());
        text("title", other.title());
        text("outcome", other.outcome() == null ? null : other.outcome().word());
    }

    private void fact(Explanation.Fact fact) {
        text("name", fact.name());
        text("meaning", fact.meaning());
        text("value", fact.value());
        text("source", fact.source());
    }

    private void observed(Explanation.Observed observed) {
        text("name", observed.name());
        text("ask", observed.ask());
        text("kind", observed.kind());
        text("gauge", observed.gauge());
        texts("bench", observed.bench());
        text("when", observed.when());
        text("value", observed.value());
        texts("entries", observed.entries());
    }

    private void computed(Explanation.Computed value) {
        text("name", value.name());
        text("formula", value.formula());
        text("value", value.value());
        list("steps", value.steps(), this::step);
        texts("sources", value.sources());
    }

    private void step(Calculation.Step step) {
        json.writeNumberProperty("depth", step.depth());
        text("formula", step.words());
        text("value", step.value());
        texts("details", step.details());
    }

    private void text(String key, @Nullable String text) {
        if (text == null) {
            json.writeNullProperty(key);
        } else {
            json.writeStringProperty(key, text);
        }
    }

    private void texts(String key, List<String> texts) {
        json.writeArrayPropertyStart(key);
        texts.forEach(json::writeString);
        json.writeEndArray();
    }

    private <T> void list(String key, List<T> things, Consumer<T> members) {
        json.writeArrayPropertyStart(key);
        for (T thing : things) {
            json.writeStartObject();
            members.accept(thing);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static final class Layout extends ObjectWriteContext.Base {
        @Override
        public PrettyPrinter getPrettyPrinter() {
            DefaultIndenter twoBlanks = new DefaultIndenter("  ", "\n");
            return new DefaultPrettyPrinter().withObjectIndenter(twoBlanks).withArrayIndenter(twoBlanks);
        }

        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }
    }
}

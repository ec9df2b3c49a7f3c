package io.github.leafproof.dsl.diagnostic;

import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.SourceText.Position;
import io.github.leafproof.dsl.source.Span;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * Diagnostics for programs: a JSON array of objects {@code {file, line, column, endLine, endColumn, code, level, message,
 * label, labels, help}}. Lines and columns count from 1, columns in code points; the end is the place behind the last
 * character. {@code level} is {@code error} or {@code warning}; {@code label} and {@code help} are empty where there is
 * none; each of {@code labels} has the place's members and its own {@code label}.
 */
public final class DiagnosticJson {

    private static final JsonFactory JSON = new JsonFactory();

    private DiagnosticJson() {}

    /** The same diagnostics give the same text on every machine; it ends in a line end. */
    public static String write(List<Diagnostic> diagnostics) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(new Layout(), text)) {
            json.writeStartArray();
            diagnostics.forEach(diagnostic -> write(diagnostic, json));
            json.writeEndArray();
        }
        return text.append('\n').toString();
    }

    private static void write(Diagnostic diagnostic, JsonGenerator json) {
        json.writeStartObject();
        writePlace(diagnostic.span(), json);
        json.writeStringProperty("code", diagnostic.code().name());
        json.writeStringProperty("level", diagnostic.level().name().toLowerCase(Locale.ROOT));
        json.writeStringProperty("message", diagnostic.message());
        json.writeStringProperty("label", diagnostic.label());
        json.writeArrayPropertyStart("labels");
        for (Diagnostic.Label label : diagnostic.labels()) {
            json.writeStartObject();
            writePlace(label.span(), json);
            json.writeStringProperty("label", label.word());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeStringProperty("help", diagnostic.help());
        json.writeEndObject();
    }

    private static void writePlace(Span span, JsonGenerator json) {
        SourceText source = span.source();
        Position start = source.at(span.start());
        Position end = source.at(span.end());
        json.writeStringProperty("file", source.name());
        json.writeNumberProperty("line", start.line());
        json.writeNumberProperty("column", start.column());
        json.writeNumberProperty("endLine", end.line());
        json.writeNumberProperty("endColumn", end.column());
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

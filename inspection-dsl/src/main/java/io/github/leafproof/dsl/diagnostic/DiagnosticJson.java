package io.github.leafproof.dsl.diagnostic;

import io.github.leafproof.dsl.json.JsonPage;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.SourceText.Position;
import io.github.leafproof.dsl.source.Span;
import java.util.List;
import java.util.Locale;

/**
 * Diagnostics for programs: a JSON array of objects {@code {file, line, column, endLine, endColumn, code, level, message,
 * label, labels, help}}. Lines and columns count from 1, columns in code points; the end is the place behind the last
 * character. {@code level} is {@code error} or {@code warning}; {@code label} and {@code help} are empty where there is
 * none; each of {@code labels} has the place's members and its own {@code label}.
 */
public final class DiagnosticJson {

    private DiagnosticJson() {}

    /** The same diagnostics give the same text on every machine; it ends in a line end. */
    public static String write(List<Diagnostic> diagnostics) {
        return JsonPage.writeList(diagnostics, DiagnosticJson::write);
    }

    private static void write(JsonPage json, Diagnostic diagnostic) {
        writePlace(diagnostic.span(), json);
        json.text("code", diagnostic.code().name());
        json.text("level", diagnostic.level().name().toLowerCase(Locale.ROOT));
        json.text("message", diagnostic.message());
        json.text("label", diagnostic.label());
        json.list("labels", diagnostic.labels(), label -> {
            writePlace(label.span(), json);
            json.text("label", label.word());
        });
        json.text("help", diagnostic.help());
    }

    private static void writePlace(Span span, JsonPage json) {
        SourceText source = span.source();
        Position start = source.at(span.start());
        Position end = source.at(span.end());
        json.text("file", source.name());
        json.number("line", start.line());
        json.number("column", start.column());
        json.number("endLine", end.line());
        json.number("endColumn", end.column());
    }
}

package io.github.leafproof.dsl.diagnostic;

import io.github.leafproof.dsl.json.JsonPage;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.SourceText.Position;
import io.github.leafproof.dsl.source.Span;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.List;
import java.util.Locale;

/**
 * Diagnostics for code hosts and editors that show the findings of any tool at their lines: a log of one run in the
 * Static Analysis Results Interchange Format, SARIF 2.1.0 (OASIS Standard). Each kind of mistake found is a rule, with
 * its lesson; each diagnostic is a result, with its other places as related ones. Columns count code points.
 */
public final class Sarif {

    private static final String SCHEMA =
            "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
    private static final String HOME = "https://github.com/leafproof/leafproof";
    private static final String PAGE = HOME + "/blob/main/docs/diagnostics.md#";

    private final JsonPage json;
    private final List<Diagnostic> diagnostics;
    private final List<Code> rules;

    private Sarif(JsonPage json, List<Diagnostic> diagnostics) {
        this.json = json;
        this.diagnostics = diagnostics;
        this.rules =
                diagnostics.stream().map(Diagnostic::code).distinct().sorted().toList();
    }

    /**
     * The log. The same diagnostics give the same text on every machine; it ends in a line end.
     *
     * @param version of the program that found them, such as {@code 1.2.0}
     */
    public static String write(List<Diagnostic> diagnostics, String version) {
        return JsonPage.write(json -> new Sarif(json, diagnostics).writeLog(version));
    }

    private void writeLog(String version) {
        json.text("$schema", SCHEMA);
        json.text("version", "2.1.0");
        json.list("runs", List.of(version), this::writeRun);
    }

    private void writeRun(String version) {
        json.object(
                "tool",
                () -> json.object("driver", () -> {
                    json.text("name", "Leafproof");
                    json.text("version", version);
                    json.text("informationUri", HOME);
                    json.list("rules", rules, this::writeRule);
                }));
        json.text("columnKind", "unicodeCodePoints");
        json.list("results", diagnostics, this::writeResult);
    }

    private void writeRule(Code code) {
        Lesson lesson = Lesson.of(code.name()).orElseThrow();
        json.text("id", code.name());
        writeText("shortDescription", lesson.summary());
        writeText("fullDescription", lesson.cause());
        writeText("help", lesson.text());
        json.text("helpUri", PAGE + code.name().toLowerCase(Locale.ROOT));
    }

    private void writeResult(Diagnostic diagnostic) {
        json.text("ruleId", diagnostic.code().name());
        json.number("ruleIndex", rules.indexOf(diagnostic.code()));
        json.text("level", diagnostic.level().name().toLowerCase(Locale.ROOT));
        writeText("message", message(words(diagnostic)));
        json.list("locations", List.of(diagnostic.span()), this::writePlace);
        json.list("relatedLocations", diagnostic.labels(), label -> {
            writePlace(label.span());
            writeText("message", message(label.word()));
        });
    }

    /** What is wrong, and on a line of its own what to do about it. */
    private static String words(Diagnostic diagnostic) {
        String label = diagnostic.label().isEmpty() ? "" : " (" + diagnostic.label() + ")";
        String help = diagnostic.help().isEmpty() ? "" : "\nhelp: " + diagnostic.help();
        return diagnostic.message() + label + help;
    }

    /** Braces hold the place of something in a message, and stand twice where they mean themselves (clause 3.11.5). */
    private static String message(String words) {
        return words.replace("{", "{{").replace("}", "}}");
    }

    private void writeText(String key, String text) {
        json.object(key, () -> json.text("text", text));
    }

    private void writePlace(Span span) {
        SourceText source = span.source();
        Position start = source.at(span.start());
        Position end = source.at(span.end());
        json.object("physicalLocation", () -> {
            json.object("artifactLocation", () -> json.text("uri", uri(source.name())));
            json.object("region", () -> {
                json.number("startLine", start.line());
                json.number("startColumn", start.column());
                json.number("endLine", end.line());
                json.number("endColumn", end.column());
            });
        });
    }

    /** A file's name as a reference: a relative one is seen from the folder that the program was started in. */
    private static String uri(String name) {
        String path = name.replace('\\', '/');
        boolean drive = path.matches("(?s)[A-Za-z]:/.*");
        boolean absolute = drive || path.startsWith("/");
        // A colon in the first step of a relative name would read as a scheme.
        String stepped = !absolute && path.split("/", 2)[0].contains(":") ? "./" + path : path;
        try {
            return new URI(absolute ? "file" : null, absolute ? "" : null, (drive ? "/" : "") + stepped, null)
                    .toASCIIString();
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException("every path has its reference: " + name, impossible);
        }
    }
}

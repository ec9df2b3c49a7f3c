package io.github.leafproof.inspection.record;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The published schemas, asked through a validator of other people's making. */
final class Schemas {
    private static final Path FOLDER = Path.of("..", "docs", "schemas");

    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private static final Map<Format, Schema> SCHEMAS = new ConcurrentHashMap<>();

    private Schemas() {}

    static String text(Format format) {
        return read(format.schema());
    }

    private static String read(String schema) {
        try {
            return Files.readString(FOLDER.resolve(schema));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the schema of a journal's lines finds wrong with one. */
    static List<String> complaintsAboutJournalLine(String json) {
        return complaints(REGISTRY.getSchema(read("journal.schema.json"), InputFormat.JSON), json);
    }

    /** What the format's schema finds wrong with a file. */
    static List<String> complaints(Format format, String json) {
        return complaints(
                SCHEMAS.computeIfAbsent(format, wanted -> REGISTRY.getSchema(text(wanted), InputFormat.JSON)), json);
    }

    /** What the schema of schemas finds wrong with one of ours. */
    static List<String> complaintsAboutSchema(Format format) {
        SchemaLocation draft = SchemaLocation.of("https://json-schema.org/draft/2020-12/schema");
        return complaints(REGISTRY.getSchema(draft), text(format));
    }

    private static List<String> complaints(Schema schema, String json) {
        return schema
                .validate(
                        json,
                        InputFormat.JSON,
                        context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)))
                .stream()
                .map(Object::toString)
                .toList();
    }
}

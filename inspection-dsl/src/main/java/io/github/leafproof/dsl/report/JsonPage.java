package io.github.leafproof.dsl.report;

import io.github.leafproof.inspection.record.Report;
import java.io.StringWriter;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** A text of JSON being written: the same things give the same text on every machine. Nothing to say is a null. */
final class JsonPage {

    private static final JsonFactory JSON = new JsonFactory();

    private final JsonGenerator json;

    private JsonPage(JsonGenerator json) {
        this.json = json;
    }

    /** The text of one object, ending in a line end. */
    static String write(Consumer<JsonPage> members) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = JSON.createGenerator(new Layout(), text)) {
            generator.writeStartObject();
            members.accept(new JsonPage(generator));
            generator.writeEndObject();
        }
        return text.append('\n').toString();
    }

    void number(String key, int number) {
        json.writeNumberProperty(key, number);
    }

    void number(String key, double number) {
        json.writeNumberProperty(key, number);
    }

    void yesNo(String key, boolean yes) {
        json.writeBooleanProperty(key, yes);
    }

    /** An object under a key. */
    void object(String key, Runnable members) {
        json.writeObjectPropertyStart(key);
        members.run();
        json.writeEndObject();
    }

    /** An object under a key, or null where there is nothing. */
    <T> void object(String key, @Nullable T thing, Consumer<T> members) {
        if (thing == null) {
            json.writeNullProperty(key);
        } else {
            object(key, () -> members.accept(thing));
        }
    }

    /** What names a file, for the object being written. */
    void file(Report.Input input) {
        text("name", input.name());
        text("sha256", input.sha256());
    }

    void text(String key, @Nullable String text) {
        if (text == null) {
            json.writeNullProperty(key);
        } else {
            json.writeStringProperty(key, text);
        }
    }

    void texts(String key, List<String> texts) {
        json.writeArrayPropertyStart(key);
        texts.forEach(json::writeString);
        json.writeEndArray();
    }

    <T> void list(String key, List<T> things, Consumer<T> members) {
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

package io.github.leafproof.dsl.json;

import java.io.StringWriter;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** A text of JSON being written: the same things give the same text on every machine. Nothing to say is a null. */
public final class JsonPage {

    private static final JsonFactory JSON = new JsonFactory();

    private final JsonGenerator json;

    private JsonPage(JsonGenerator json) {
        this.json = json;
    }

    /** The text of one object, ending in a line end. */
    public static String write(Consumer<JsonPage> members) {
        return written(page -> page.object(members));
    }

    /** The text of an array of objects, the members of each written in turn; it ends in a line end. */
    public static <T> String writeList(List<T> things, BiConsumer<JsonPage, T> members) {
        return written(page -> {
            page.json.writeStartArray();
            things.forEach(thing -> page.object(inside -> members.accept(inside, thing)));
            page.json.writeEndArray();
        });
    }

    /** The text of one object in a single line, ending in a line end: for files with an object in each line. */
    public static String line(Consumer<JsonPage> members) {
        return written(ObjectWriteContext.empty(), page -> page.object(members));
    }

    private static String written(Consumer<JsonPage> contents) {
        return written(new Layout(), contents);
    }

    private static String written(ObjectWriteContext layout, Consumer<JsonPage> contents) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = JSON.createGenerator(layout, text)) {
            contents.accept(new JsonPage(generator));
        }
        return text.append('\n').toString();
    }

    private void object(Consumer<JsonPage> members) {
        json.writeStartObject();
        members.accept(this);
        json.writeEndObject();
    }

    /** A whole number under a key. */
    public void number(String key, long number) {
        json.writeNumberProperty(key, number);
    }

    /** A number under a key. */
    public void number(String key, double number) {
        json.writeNumberProperty(key, number);
    }

    /** True or false under a key. */
    public void yesNo(String key, boolean yes) {
        json.writeBooleanProperty(key, yes);
    }

    /** An object under a key. */
    public void object(String key, Runnable members) {
        json.writeObjectPropertyStart(key);
        members.run();
        json.writeEndObject();
    }

    /** An object under a key, or null where there is nothing. */
    public <T> void object(String key, @Nullable T thing, Consumer<T> members) {
        if (thing == null) {
            json.writeNullProperty(key);
        } else {
            object(key, () -> members.accept(thing));
        }
    }

    /** Which file is meant, and by which bytes: for the object being written. */
    public void file(String name, String sha256) {
        text("name", name);
        text("sha256", sha256);
    }

    /** A text under a key, or null where there is none. */
    public void text(String key, @Nullable String text) {
        if (text == null) {
            json.writeNullProperty(key);
        } else {
            json.writeStringProperty(key, text);
        }
    }

    /** An array of texts under a key. */
    public void texts(String key, List<String> texts) {
        json.writeArrayPropertyStart(key);
        texts.forEach(json::writeString);
        json.writeEndArray();
    }

    /** An array of whole numbers under a key. */
    public void numbers(String key, List<Integer> numbers) {
        json.writeArrayPropertyStart(key);
        numbers.forEach(json::writeNumber);
        json.writeEndArray();
    }

    /** An array of objects under a key, the members of each written in turn. */
    public <T> void list(String key, List<T> things, Consumer<T> members) {
        json.writeArrayPropertyStart(key);
        things.forEach(thing -> object(page -> members.accept(thing)));
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

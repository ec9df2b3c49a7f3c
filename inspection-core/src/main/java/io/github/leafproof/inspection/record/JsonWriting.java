package io.github.leafproof.inspection.record;

import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.io.NumberOutput;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;

/** From JSON values to text: the same values give the same text on every machine. */
final class JsonWriting {
    private static final JsonFactory JSON = new JsonFactory();

    private static final DefaultIndenter TWO_BLANKS = new DefaultIndenter("  ", "\n");

    private static final Separators SEPARATORS = Separators.createDefaultInstance()
            .withObjectNameValueSpacing(Separators.Spacing.AFTER)
            .withObjectEmptySeparator("")
            .withArrayEmptySeparator("");

    private JsonWriting() {}

    /** The text, two blanks to a level, ending in a line end. */
    static String text(Json value) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = JSON.createGenerator(new Layout(), text)) {
            write(value, generator);
        }
        return text.append('\n').toString();
    }

    /** The text in one line, without a line end. */
    static String line(Json value) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = JSON.createGenerator(ObjectWriteContext.empty(), text)) {
            write(value, generator);
        }
        return text.toString();
    }

    private static final class Layout extends ObjectWriteContext.Base {
        @Override
        public PrettyPrinter getPrettyPrinter() {
            return new DefaultPrettyPrinter(SEPARATORS)
                    .withObjectIndenter(TWO_BLANKS)
                    .withArrayIndenter(TWO_BLANKS);
        }
    }

    private static void write(Json value, JsonGenerator generator) {
        if (value instanceof Json.Members object) {
            generator.writeStartObject();
            object.byKey().forEach((key, member) -> {
                generator.writeName(key);
                write(member.value(), generator);
            });
            generator.writeEndObject();
        } else if (value instanceof Json.Items list) {
            generator.writeStartArray();
            list.values().forEach(item -> write(item, generator));
            generator.writeEndArray();
        } else if (value instanceof Json.Text text) {
            generator.writeString(text.text());
        } else if (value instanceof Json.Digits number) {
            generator.writeNumber(number.digits());
        } else if (value instanceof Json.Truth truth) {
            generator.writeBoolean(truth.yes());
        } else {
            generator.writeNull();
        }
    }

    static Json text(@Nullable String text) {
        return text == null ? new Json.Nothing(Json.NOWHERE) : new Json.Text(Json.NOWHERE, text);
    }

    /** The shortest decimal that stands for the number; Java's own is a digit longer now and then before version 19. */
    static Json number(double number) {
        return new Json.Digits(Json.NOWHERE, NumberOutput.toString(number, true));
    }

    static Json number(long number) {
        return new Json.Digits(Json.NOWHERE, Long.toString(number));
    }

    static Json yesNo(boolean yes) {
        return new Json.Truth(Json.NOWHERE, yes);
    }

    static Json list(List<Json> values) {
        return new Json.Items(Json.NOWHERE, values);
    }

    static Json texts(List<String> texts) {
        return list(texts.stream().map(JsonWriting::text).toList());
    }

    /** Builds an object, its keys in the order they are put. */
    static final class ObjectBuilder {
        private final Map<String, Json.Member> members = new LinkedHashMap<>();

        ObjectBuilder put(String key, Json value) {
            members.put(key, new Json.Member(Json.NOWHERE, value));
            return this;
        }

        ObjectBuilder put(String key, @Nullable String value) {
            return put(key, text(value));
        }

        Json done() {
            return new Json.Members(Json.NOWHERE, members);
        }
    }
}

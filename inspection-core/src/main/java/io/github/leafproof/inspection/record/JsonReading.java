package io.github.leafproof.inspection.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;

/** From text to JSON values with their places. Everything that can go wrong on the way becomes a problem. */
final class JsonReading {
    /** Our deepest format needs eight levels. */
    static final int DEEPEST = 64;

    private static final int MOST_TOKENS = 1_000_000;

    private static final JsonFactory JSON = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxTokenCount(MOST_TOKENS)
                    .maxNumberLength(1_000)
                    .maxNameLength(1_000)
                    .build())
            .build();

    private final Findings findings;
    private int lastOffset;

    private JsonReading(Findings findings) {
        this.findings = findings;
    }

    /** The value the text holds; empty when there is none, and then the findings say why. */
    static Optional<Json> parse(String text, Findings findings) {
        JsonReading reading = new JsonReading(findings);
        try (JsonParser parser = JSON.createParser(ObjectReadContext.empty(), text)) {
            parser.nextToken();
            Json value = reading.value(parser, Trail.ROOT, 1);
            if (parser.nextToken() != null) {
                findings.add(
                        FileMistake.LP607,
                        offset(parser.currentTokenLocation()),
                        null,
                        "there is more after the end of the JSON",
                        "a file holds one object; remove what follows its last brace");
            }
            return Optional.of(value);
        } catch (TooDeep e) {
            findings.add(
                    FileMistake.LP608,
                    e.offset,
                    null,
                    "objects and lists stand in each other more than " + DEEPEST + " deep",
                    "no card, tray, sheet or report is like this; name the file that was meant");
        } catch (UnexpectedEndOfInputException e) {
            findings.add(
                    FileMistake.LP607,
                    text.length(),
                    null,
                    "the file ends in the middle",
                    "it was cut off, or a quote, brace or bracket was never closed");
        } catch (StreamConstraintsException e) {
            findings.add(
                    FileMistake.LP608,
                    Math.max(offset(e.getLocation()), reading.lastOffset),
                    null,
                    "a key or a number is longer, or the values are more, than any such file can hold",
                    "no card, tray, sheet or report is like this; name the file that was meant");
        } catch (JacksonException e) {
            int offset = Math.min(offset(e.getLocation()), text.length());
            findings.add(
                    FileMistake.LP607, offset, null, BrokenJson.message(text, offset), BrokenJson.help(text, offset));
        }
        return Optional.empty();
    }

    private Json value(JsonParser parser, Trail trail, int depth) {
        int offset = offset(parser.currentTokenLocation());
        lastOffset = offset;
        if (depth > DEEPEST) {
            throw new TooDeep(offset);
        }
        @Nullable JsonToken token = parser.currentToken();
        if (token == null) {
            throw new IllegalStateException("an empty text was to be sorted out before");
        }
        return switch (token) {
            case START_OBJECT -> members(parser, trail, depth, offset);
            case START_ARRAY -> items(parser, trail, depth, offset);
            case VALUE_STRING -> new Json.Text(offset, parser.getString());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Digits(offset, parser.getString());
            case VALUE_TRUE, VALUE_FALSE -> new Json.Truth(offset, token == JsonToken.VALUE_TRUE);
            case VALUE_NULL -> new Json.Nothing(offset);
            default -> throw new IllegalStateException("no value begins with " + token);
        };
    }

    private Json members(JsonParser parser, Trail trail, int depth, int offset) {
        Map<String, Json.Member> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            int keyOffset = offset(parser.currentTokenLocation());
            parser.nextToken();
            Trail inner = trail.key(key);
            Json value = value(parser, inner, depth + 1);
            if (members.putIfAbsent(key, new Json.Member(keyOffset, value)) != null) {
                findings.add(
                        FileMistake.LP611,
                        keyOffset,
                        inner,
                        "the key " + Shown.quoted(key) + " stands here a second time",
                        "keep the one that is right; a file cannot say two things under one key");
            }
        }
        return new Json.Members(offset, members);
    }

    private Json items(JsonParser parser, Trail trail, int depth, int offset) {
        List<Json> values = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            values.add(value(parser, trail.item(values.size()), depth + 1));
        }
        return new Json.Items(offset, values);
    }

    private static int offset(@Nullable TokenStreamLocation location) {
        return location == null ? 0 : (int) Math.max(0, location.getCharOffset());
    }

    /** Leaves the recursion; the stack's state is of no interest to anybody. */
    private static final class TooDeep extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final int offset;

        TooDeep(int offset) {
            super(null, null, false, false);
            this.offset = offset;
        }
    }
}

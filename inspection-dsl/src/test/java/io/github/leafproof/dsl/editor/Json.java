package io.github.leafproof.dsl.editor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/** JSON as maps, lists and texts. */
final class Json {

    private Json() {}

    static Map<?, ?> object(String json) {
        try (JsonParser parser = new JsonFactory().createParser(ObjectReadContext.empty(), json)) {
            parser.nextToken();
            return (Map<?, ?>) value(parser);
        }
    }

    private static Object value(JsonParser parser) {
        return switch (parser.currentToken()) {
            case START_OBJECT -> {
                Map<String, Object> object = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String key = parser.currentName();
                    parser.nextToken();
                    object.put(key, value(parser));
                }
                yield object;
            }
            case START_ARRAY -> {
                List<Object> list = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    list.add(value(parser));
                }
                yield list;
            }
            default -> parser.getString();
        };
    }
}

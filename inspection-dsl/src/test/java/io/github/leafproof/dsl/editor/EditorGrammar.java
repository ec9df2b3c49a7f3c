package io.github.leafproof.dsl.editor;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The grammar for editors, made of a template and the words of the language. The template names regular expressions at
 * its top, {@code @NAME = …}, and uses them as {@code {{NAME}}}.
 */
public final class EditorGrammar {

    public static final Path SHIPPED = Path.of("..", "docs", "editors", "inspection.tmLanguage.json");
    private static final Path TEMPLATE = Path.of("src", "test", "resources", "editors", "grammar.template");

    private EditorGrammar() {}

    /** The template with its words in it. */
    public static String made(Map<String, Collection<String>> words) {
        Map<String, String> macros = new LinkedHashMap<>();
        words.forEach((name, list) -> macros.put(name, list.stream().sorted().collect(joining("|"))));
        StringBuilder json = new StringBuilder();
        for (String line : text(TEMPLATE).lines().toList()) {
            String expanded = expand(line, macros);
            if (line.startsWith("@")) {
                int equals = expanded.indexOf(" = ");
                macros.put(expanded.substring(1, equals), expanded.substring(equals + 3));
            } else {
                json.append(expanded).append('\n');
            }
        }
        return json.toString();
    }

    private static String expand(String line, Map<String, String> macros) {
        String expanded = line;
        for (Map.Entry<String, String> macro : macros.entrySet()) {
            expanded = expanded.replace("{{" + macro.getKey() + "}}", macro.getValue());
        }
        return expanded;
    }

    /** The shipped file, read as JSON. */
    public static Map<?, ?> shipped() {
        return Json.object(text(SHIPPED));
    }

    public static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}

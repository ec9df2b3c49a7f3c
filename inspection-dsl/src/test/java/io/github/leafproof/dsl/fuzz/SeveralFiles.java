package io.github.leafproof.dsl.fuzz;

import static java.util.stream.Collectors.joining;

import io.github.leafproof.dsl.parts.Shelf;
import io.github.leafproof.dsl.source.SourceText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A procedure and the files around it, in one text: each but the first begins behind a line with its name.
 *
 * @param main the text of the procedure's own file
 * @param parts the others by their names
 */
record SeveralFiles(String main, Map<String, String> parts) {

    private static final Pattern HEADING = Pattern.compile("^=== (\\S.*)\n", Pattern.MULTILINE);

    /** The files that a text stands for; of two with the same name the later one counts. */
    static SeveralFiles of(String text) {
        Map<String, String> files = new TreeMap<>();
        Matcher heading = HEADING.matcher(text);
        String name = "";
        int start = 0;
        while (heading.find()) {
            files.put(name, text.substring(start, heading.start()));
            name = heading.group(1);
            start = heading.end();
        }
        files.put(name, text.substring(start));
        String main = files.remove("");
        return new SeveralFiles(main, files);
    }

    /** The procedures that lie in a folder. */
    static SeveralFiles in(Path folder, String main) {
        try (Stream<Path> files = Files.walk(folder)) {
            Map<String, String> texts = new TreeMap<>();
            for (Path file : files.filter(file -> file.toString().endsWith(".inspection"))
                    .toList()) {
                texts.put(folder.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
            String text = texts.remove(main);
            return new SeveralFiles(text, texts);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Pieces of a procedure, each in the file that comes first, in a part, or in a part together with all that follow. The
     * first piece is the bench, which stays where it is: of the gauges of a part only those count that are used.
     */
    static SeveralFiles of(List<String> pieces, Chance chance) {
        Map<String, String> parts = new TreeMap<>();
        return new SeveralFiles(pieces.get(0) + rest(pieces, 1, parts, chance), parts);
    }

    private static String rest(List<String> pieces, int from, Map<String, String> parts, Chance chance) {
        if (from == pieces.size()) {
            return "";
        }
        String piece = pieces.get(from);
        String rest = rest(pieces, from + 1, parts, chance);
        return switch (chance.below(3)) {
            case 0 -> piece + rest;
            case 1 -> use(piece, from, parts) + rest;
            default -> use(piece + rest, from, parts);
        };
    }

    private static String use(String text, int number, Map<String, String> parts) {
        String name = (number % 2 == 0 ? "parts/" : "") + "part_" + number + ".inspection";
        parts.put(name, text);
        return "use \"" + name + "\"\n";
    }

    SourceText source() {
        return SourceText.of("any.inspection", main);
    }

    Shelf shelf() {
        return Shelf.of(parts);
    }

    /** All of them in one text. */
    String text() {
        return main
                + parts.entrySet().stream()
                        .map(part -> "=== " + part.getKey() + "\n" + part.getValue())
                        .collect(joining());
    }
}

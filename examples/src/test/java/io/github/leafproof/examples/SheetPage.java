package io.github.leafproof.examples;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a person of the trade judges of a sheet, on the page beside it.
 *
 * @param release the word at the end of the page's title
 * @param objected the checks that do not pass, and what each comes to
 * @param unconcerned the checks that do not concern the engine, in their order
 * @param exposed what the report must say, word for word, so that nobody falls into the trap
 */
record SheetPage(String release, Map<String, String> objected, List<String> unconcerned, List<String> exposed) {
    private static final Pattern TITLE = Pattern.compile("^# .* — ([a-z ]+)$", Pattern.MULTILINE);
    private static final Pattern ITEM = Pattern.compile("`([^`]+)`(?: ([a-z_]+))?");
    private static final Pattern QUOTED = Pattern.compile("“([^”]+)”");

    static SheetPage beside(String sheet) {
        Path file = Project.BENCH.resolve(sheet.replace(".json", ".md"));
        String text = Project.text(file).replaceAll("\\s*\\n {2}", " ");
        Matcher title = TITLE.matcher(text);
        if (!title.find()) {
            throw new AssertionError(file + " lacks a title that ends with the release");
        }
        Map<String, String> objected = new TreeMap<>();
        for (Matcher each = ITEM.matcher(line(text, "Objected to")); each.find(); ) {
            objected.put(each.group(1), each.group(2));
        }
        List<String> unconcerned = all(ITEM, line(text, "Not concerned"));
        return new SheetPage(title.group(1), objected, unconcerned, all(QUOTED, line(text, "Exposed by")));
    }

    private static String line(String text, String heading) {
        Matcher line =
                Pattern.compile("^- " + heading + ": (.*)$", Pattern.MULTILINE).matcher(text);
        return line.find() ? line.group(1) : "";
    }

    private static List<String> all(Pattern pattern, String text) {
        List<String> found = new ArrayList<>();
        for (Matcher each = pattern.matcher(text); each.find(); ) {
            found.add(each.group(1));
        }
        return List.copyOf(found);
    }
}

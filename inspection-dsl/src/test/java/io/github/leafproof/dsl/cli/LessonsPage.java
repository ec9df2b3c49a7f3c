package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.diagnostic.Lesson;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The lessons as the page docs/diagnostics.md. */
final class LessonsPage {

    static final String BEGINNING = """
            # Mistakes, and how they are mended

            Every mistake has a code, which keeps its meaning. Each has its section here: why it is refused, an example with what is printed about it, and the
            lines that mend it (`-` as they are, `+` as they should be). The same is shown in a terminal by `leafproof why LP201`. The first digit tells the kind:
            1 reading and grammar, 2 types and dimensions, 3 names, 4 structure of the procedure, 5 rehearsals, 6 the JSON files, 7 bounds.

            This page is written by a test from the texts that the program itself shows; examples of files change one line of the bench in `examples/bench`.

            """;

    private LessonsPage() {}

    static String contents(List<Lesson> lessons) {
        return lessons.stream()
                .map(lesson -> "- [" + heading(lesson) + "](#" + anchor(heading(lesson)) + ")\n")
                .collect(Collectors.joining());
    }

    private static String heading(Lesson lesson) {
        return lesson.code() + ": " + lesson.summary();
    }

    /** As pages are rendered: the words in small letters, blanks as hyphens, other signs left out. */
    private static String anchor(String heading) {
        return heading.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N} _-]", "")
                .replace(' ', '-');
    }

    static String section(Lesson lesson, String said) {
        String abbreviation = lesson.abbreviation().isEmpty() ? "" : lesson.abbreviation() + "\n\n";
        String broken = switch (lesson.setting().kind()) {
            case PROCEDURE -> fenced("text", lesson.example()) + abbreviation;
            case CHANGE ->
                "With this changed in `" + lesson.setting().file() + "`:\n\n" + fenced("diff", lesson.example());
            case SITUATION -> "For example: `" + lesson.example().strip() + "`\n\n";
        };
        String mended = lesson.mended().isEmpty() ? "" : fenced("diff", String.join("\n", lesson.mended()) + "\n");
        // The heading's words may change; what code hosts link to does not.
        String anchor = "<a id=\"" + lesson.code().toLowerCase(Locale.ROOT) + "\"></a>\n\n";
        return "\n" + anchor + "## " + heading(lesson) + "\n\n" + lesson.cause() + "\n\n" + broken
                + fenced("text", said) + lesson.remedy() + "\n\n" + mended;
    }

    private static String fenced(String kind, String text) {
        return "```" + kind + "\n" + text + (text.endsWith("\n") ? "" : "\n") + "```\n\n";
    }
}

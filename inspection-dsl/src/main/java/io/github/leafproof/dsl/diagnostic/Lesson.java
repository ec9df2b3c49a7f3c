package io.github.leafproof.dsl.diagnostic;

import io.github.leafproof.inspection.record.FileMistake;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What there is to learn from one kind of mistake, in a procedure or in a file beside it: why it is refused, an example
 * with what is said of it word for word, and how it is mended. The pages about mistakes and {@code leafproof why} both
 * say what stands here.
 *
 * @param code the mistake's stable name, such as {@code LP201}
 * @param summary what kind of mistake it is, in a line
 * @param cause why it is refused, in the words of the trade; lines of a page's width
 * @param setting what the example is: a procedure, a change of a file of the example bench, or a situation in words
 * @param example the lines of the example; those of a changed file begin with {@code -} as they were and with
 *     {@code +} as they are
 * @param said what is printed about the example
 * @param remedy how to mend it, in a line
 * @param mended the lines that change, {@code -} as they are and {@code +} as they should be; none where the remedy says
 *     it all
 */
public record Lesson(
        String code,
        String summary,
        String cause,
        Setting setting,
        String example,
        String said,
        String remedy,
        List<String> mended) {

    private static final String SECTION = "--- ";
    private static final String INDENT = "   ";
    private static final String ABBREVIATED =
            "What stands in \u27EA\u27EB is written as often as the number behind it says; # counts from 1, ## from 2.";

    public Lesson {
        mended = List.copyOf(mended);
    }

    /**
     * What an example is.
     *
     * @param kind how to read its lines
     * @param file the file that is changed, where one is; else empty
     */
    public record Setting(Kind kind, String file) {}

    /** The kinds of examples. */
    public enum Kind {
        /** A whole procedure. */
        PROCEDURE,
        /** A line or a few of one file of the example bench, changed. */
        CHANGE,
        /** A command, or what a file is like, in words. */
        SITUATION
    }

    /** The codes of all mistakes that a person can make, in their order. */
    public static List<String> codes() {
        return Stream.concat(Arrays.stream(Code.values()), Arrays.stream(FileMistake.values()))
                .map(Enum::name)
                .sorted()
                .toList();
    }

    /**
     * The lesson of one mistake.
     *
     * @param code its stable name, in letters of any case; {@code 201} will do for {@code LP201}
     * @return empty where no mistake has this code
     */
    public static Optional<Lesson> of(String code) {
        String upper = code.strip().toUpperCase(Locale.ROOT);
        String whole = upper.startsWith("LP") ? upper : "LP" + upper;
        return codes().stream().filter(whole::equals).findFirst().map(Lesson::read);
    }

    private static Lesson read(String code) {
        String resource = "lessons/" + code + ".txt";
        try (InputStream bytes = Lesson.class.getResourceAsStream(resource)) {
            if (bytes == null) {
                throw new IllegalStateException("the lesson of " + code + " is not written: " + resource);
            }
            return parse(code, new String(bytes.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Four parts under each other: the cause; {@code --- example} and its like; {@code --- says}; {@code --- fix}. */
    static Lesson parse(String code, String text) {
        String[] parts = text.split("(?m)^" + SECTION, -1);
        if (parts.length != 4) {
            throw new IllegalArgumentException("a lesson has four parts, and that of " + code + " has " + parts.length);
        }
        String heading = parts[1].lines().findFirst().orElse("");
        List<String> fix = parts[3].lines().skip(1).toList();
        return new Lesson(
                code,
                summary(code),
                parts[0].strip(),
                setting(heading),
                behindFirstLine(parts[1]),
                behindFirstLine(parts[2]),
                fix.get(0),
                fix.subList(1, fix.size()));
    }

    private static Setting setting(String heading) {
        if (heading.startsWith("change ")) {
            return new Setting(Kind.CHANGE, heading.substring("change ".length()));
        }
        return new Setting(heading.equals("situation") ? Kind.SITUATION : Kind.PROCEDURE, "");
    }

    private static String behindFirstLine(String part) {
        return part.substring(part.indexOf('\n') + 1);
    }

    private static String summary(String code) {
        return Stream.concat(
                        Arrays.stream(FileMistake.values())
                                .filter(mistake -> mistake.name().equals(code))
                                .map(FileMistake::meaning),
                        Arrays.stream(Code.values())
                                .filter(mistake -> mistake.name().equals(code))
                                .map(Code::summary))
                .findFirst()
                .orElseThrow();
    }

    /** The lesson as it is read in a terminal. */
    public String text() {
        String broken = switch (setting.kind()) {
            case PROCEDURE -> "For example:\n\n" + indented(example);
            case CHANGE -> "For example, with this changed in " + setting.file() + ":\n\n" + indented(example);
            case SITUATION -> "For example: " + example;
        };
        String lines = mended.isEmpty() ? "" : "\n" + indented(String.join("\n", mended) + "\n");
        return code + ": " + summary + "\n\n" + cause + "\n\n" + broken
                + (abbreviation().isEmpty() ? "" : "\n" + abbreviation() + "\n") + "\nWhat is said of it:\n\n"
                + indented(said) + "\nHow to mend it: " + remedy + "\n" + lines;
    }

    /** How to read an example that would fill pages, behind the example; empty for all others. */
    public String abbreviation() {
        return example.contains("\u27EA") ? ABBREVIATED : "";
    }

    private static String indented(String text) {
        return text.lines().map(line -> (INDENT + line).stripTrailing() + "\n").collect(Collectors.joining());
    }
}

package io.github.leafproof.inspection.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every mistake a file can hold, one folder each: {@code input.json}, what the program says of it in {@code problems.txt},
 * and {@code beyond-schema.txt} with the reason where no schema can see the mistake. A new case needs no Java.
 */
class BadFilesTest {
    private static final Path CASES = Path.of("src", "test", "resources", "record");

    @ParameterizedTest
    @MethodSource("cases")
    void what_is_wrong_is_told_with_place_reason_and_remedy(Path folder) throws IOException {
        String told = told(folder);

        keepForComparison(folder, told);
        assertThat(told).isEqualTo(Files.readString(folder.resolve("problems.txt")));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void the_schema_refuses_what_the_program_refuses_as_far_as_a_schema_can_see(Path folder) throws IOException {
        String json = Files.readString(folder.resolve("input.json"));

        boolean beyond = Files.exists(folder.resolve("beyond-schema.txt"));

        assertThat(Schemas.complaints(Format.ofFolder(folder), json).isEmpty()).isEqualTo(beyond);
    }

    @Test
    void every_mistake_that_a_file_shows_by_itself_has_a_case() throws IOException {
        Set<String> told = new TreeSet<>();
        for (Path folder : cases().toList()) {
            Matcher code = Pattern.compile("LP6\\d\\d").matcher(told(folder));
            while (code.find()) {
                told.add(code.group());
            }
        }
        Set<String> content = Stream.of(FileMistake.values())
                .map(FileMistake::name)
                .filter(code -> code.compareTo("LP611") >= 0)
                .filter(code -> code.compareTo("LP667") < 0 || code.compareTo("LP680") > 0)
                .filter(code -> code.compareTo("LP685") < 0)
                .collect(Collectors.toSet());

        assertThat(told).containsAll(content);
    }

    static Stream<Path> cases() throws IOException {
        try (Stream<Path> files = Files.walk(CASES)) {
            return files.filter(file -> file.endsWith("input.json")).map(Path::getParent).sorted().toList().stream();
        }
    }

    private static String told(Path folder) throws IOException {
        byte[] bytes = Files.readAllBytes(folder.resolve("input.json"));
        return Format.ofFolder(folder).parse("input.json", bytes).problems().stream()
                .map(problem -> problem + "\n")
                .collect(Collectors.joining());
    }

    /** So that a changed message can be looked at, and taken over when it is the better one. */
    private static void keepForComparison(Path folder, String told) throws IOException {
        Path kept = Path.of("target", "told").resolve(CASES.relativize(folder)).resolve("problems.txt");
        Files.createDirectories(kept.getParent());
        Files.writeString(kept, told);
    }
}

package io.github.leafproof.dsl.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import io.github.leafproof.dsl.source.SourceText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What the layout looks like: a folder each, with {@code before.txt} and {@code after.inspection}; what comes before is no
 * text for an editor to colour, and so is not named like one. After a change on purpose run with {@code -Dgolden.write=true} and read the differences.
 */
class LayoutCasesTest {

    private static final Path CASES = Path.of("src", "test", "resources", "layout");

    @TestFactory
    Stream<DynamicTest> each_case_is_laid_out_as_it_is_kept() throws IOException {
        try (Stream<Path> folders = Files.list(CASES)) {
            return folders.sorted().toList().stream()
                    .map(folder -> dynamicTest(folder.getFileName().toString(), () -> check(folder)));
        }
    }

    private static void check(Path folder) throws IOException {
        String tidy = tidied(Files.readString(folder.resolve("before.txt")));
        Path after = folder.resolve("after.inspection");
        if (Boolean.getBoolean("golden.write")) {
            Files.writeString(after, tidy);
        }
        assertThat(tidy).isEqualTo(Files.readString(after));
        assertThat(tidied(tidy)).isEqualTo(tidy);
    }

    private static String tidied(String text) {
        return Layout.of(SourceText.of("before.txt", text));
    }

    @Test
    void line_ends_of_every_kind_become_one_kind() {
        String tidy = "gauge a : leaf set\n\ngauge b : leaf set  // the second\ngauge c : leaf set\n";

        assertThat(tidied(tidy.replace("\n", "\r\n"))).isEqualTo(tidy);
        assertThat(tidied(tidy.replace("\n", "\r"))).isEqualTo(tidy);
        assertThat(tidied("\n\n \t\n" + tidy.stripTrailing())).isEqualTo(tidy);
        assertThat(tidied(tidy + "\n\n\t")).isEqualTo(tidy);
    }
}

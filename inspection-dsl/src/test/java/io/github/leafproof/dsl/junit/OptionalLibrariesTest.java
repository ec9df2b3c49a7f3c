package io.github.leafproof.dsl.junit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What only some programs need, all others start without. {@code ArchitectureTest} tells who may use it. */
class OptionalLibrariesTest {

    private static String text(String file) throws IOException {
        return Files.readString(Path.of(file));
    }

    @ParameterizedTest
    @ValueSource(strings = {"info.picocli", "org.junit.platform.engine", "org.assertj.core"})
    void the_module_starts_without_them(String module) throws IOException {
        assertThat(text("src/main/java/module-info.java")).contains("requires static " + module + ";");
    }

    /** Java refuses to start a module that provides a service of a module that is not there (tried on 17). */
    @Test
    void the_module_provides_no_service_of_them() throws IOException {
        assertThat(text("src/main/java/module-info.java")).doesNotContain("provides org.");
        assertThat(text("src/main/resources/META-INF/services/org.junit.platform.engine.TestEngine"))
                .isEqualTo(InspectionTestEngine.class.getName() + "\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"picocli", "junit-platform-engine", "assertj-core"})
    void no_program_gets_them_unasked(String artifact) throws IOException {
        assertThat(text("pom.xml"))
                .containsPattern("<artifactId>" + artifact + "</artifactId>\\s*(<scope>compile</scope>\\s*)?"
                        + "<optional>true</optional>");
    }
}

package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The consumer has no parent of ours, so nothing keeps its versions level with ours but this. */
class ConsumerTest {

    private static final String OURS = Project.text(Project.ROOT.resolve("pom.xml"));

    private static final String CONSUMERS = Project.text(Project.ROOT.resolve("examples/consumer/pom.xml"));

    private static String found(String in, String pattern) {
        Matcher matcher = Pattern.compile(pattern, Pattern.DOTALL).matcher(in);
        assertThat(matcher.find()).as(pattern).isTrue();
        return matcher.group(1);
    }

    @ParameterizedTest
    @CsvSource({
        "<artifactId>leafproof</artifactId>\\s*<version>(.*?)<, <leafproof.version>(.*?)<",
        "<junit.version>(.*?)<, <artifactId>junit-bom</artifactId>\\s*<version>(.*?)<",
        "<assertj.version>(.*?)<, <artifactId>assertj-core</artifactId>\\s*<version>(.*?)<",
        "maven-clean-plugin</artifactId>\\s*<version>(.*?)<, maven-clean-plugin</artifactId>\\s*<version>(.*?)<",
        "maven-resources-plugin</artifactId>\\s*<version>(.*?)<, maven-resources-plugin</artifactId>\\s*<version>(.*?)<",
        "maven-compiler-plugin</artifactId>\\s*<version>(.*?)<, maven-compiler-plugin</artifactId>\\s*<version>(.*?)<",
        "maven-surefire-plugin</artifactId>\\s*<version>(.*?)<, maven-surefire-plugin</artifactId>\\s*<version>(.*?)<"
    })
    void the_consumer_uses_what_we_use(String ours, String consumers) {
        assertThat(found(CONSUMERS, consumers)).isEqualTo(found(OURS, ours));
    }

    @Test
    void the_page_names_the_version_that_there_is() {
        String version = found(OURS, "<artifactId>leafproof</artifactId>\\s*<version>(.*?)<");

        assertThat(found(
                        Project.text(Project.ROOT.resolve("docs/testing.md")),
                        "inspection-dsl</artifactId>\\s*<version>(.*?)<"))
                .isEqualTo(version);
    }
}

package io.github.leafproof.dsl.diagnostic;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.source.SourceText;
import java.util.List;
import org.junit.jupiter.api.Test;

class DiagnosticJsonTest {

    @Test
    void nothing_wrong_is_an_empty_array() {
        assertThat(DiagnosticJson.write(List.of()).strip()).matches("\\[\\s*\\]");
    }

    @Test
    void a_diagnostic_is_an_object_with_its_place_and_words() {
        SourceText source = SourceText.of("a.inspection", "let \uD83D\uDD27 = \"\u00E9\"\nlet x = 3\n");
        Diagnostic diagnostic = Diagnostic.error(Code.LP121, source.span(7, 8), "a \"quoted\" word")
                .labelled("here")
                .alsoAt(source.span(17, 18), "there")
                .help("line\nend");

        assertThat(DiagnosticJson.write(List.of(diagnostic))).isEqualTo("""
                        [
                          {
                            "file" : "a.inspection",
                            "line" : 1,
                            "column" : 7,
                            "endLine" : 1,
                            "endColumn" : 8,
                            "code" : "LP121",
                            "level" : "error",
                            "message" : "a \\"quoted\\" word",
                            "label" : "here",
                            "labels" : [
                              {
                                "file" : "a.inspection",
                                "line" : 2,
                                "column" : 5,
                                "endLine" : 2,
                                "endColumn" : 6,
                                "label" : "there"
                              }
                            ],
                            "help" : "line\\nend"
                          }
                        ]
                        """);
    }
}

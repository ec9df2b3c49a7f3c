package io.github.leafproof.dsl.diagnostic;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.List;
import org.junit.jupiter.api.Test;

class DiagnosticPrinterTest {

    /** The form that the language's reference page shows. */
    @Test
    void a_diagnostic_shows_place_line_carets_and_remedy() {
        SourceText source =
                SourceText.of("first-look.inspection", "\n".repeat(47) + "      require lash[valve] at most 100 kPa\n");
        String line = source.line(48);
        int start = source.lineStart(48);
        Diagnostic diagnostic = Diagnostic.error(
                        Code.LP121, span(source, start, line, "100 kPa"), "this compares a length with a pressure")
                .labelled("pressure")
                .alsoAt(span(source, start, line, "lash[valve]"), "length")
                .help("lash is limited by engine.lash_max, a length (0.10 mm on this card)");

        assertThat(print(diagnostic)).isEqualTo("""
                        first-look.inspection:48:35: error LP121: this compares a length with a pressure
                           48 |       require lash[valve] at most 100 kPa
                              |               ----------- length  ^^^^^^^ pressure
                           help: lash is limited by engine.lash_max, a length (0.10 mm on this card)
                        """);
    }

    private static Span span(SourceText source, int lineStart, String line, String word) {
        return source.span(lineStart + line.indexOf(word), lineStart + line.indexOf(word) + word.length());
    }

    @Test
    void a_second_place_on_another_line_shows_that_line() {
        SourceText source = SourceText.of("a", "let x = 1\nlet y = 2\nlet x = 3\n");
        Diagnostic diagnostic = Diagnostic.warning(Code.LP121, source.span(24, 25), "x is there twice")
                .alsoAt(source.span(4, 5), "here before");

        assertThat(print(diagnostic)).isEqualTo("""
                        a:3:5: warning LP121: x is there twice
                            1 | let x = 1
                              |     - here before
                            3 | let x = 3
                              |     ^
                        """);
    }

    @Test
    void a_second_place_in_another_file_names_the_file() {
        SourceText source = SourceText.of("a.inspection", "let x = 1\n");
        SourceText other = SourceText.of("b.inspection", "\nlet x = 3\n");
        Diagnostic diagnostic = Diagnostic.error(Code.LP121, source.span(4, 5), "x is there twice")
                .alsoAt(other.span(5, 6), "and here");

        assertThat(print(diagnostic)).isEqualTo("""
                        a.inspection:1:5: error LP121: x is there twice
                            1 | let x = 1
                              |     ^
                             in b.inspection:
                            2 | let x = 3
                              |     - and here
                        """);
    }

    @Test
    void marks_that_have_no_room_beside_each_other_stand_below_each_other() {
        SourceText source = SourceText.of("a", "a + b");
        Diagnostic diagnostic = Diagnostic.error(Code.LP121, source.span(2, 3), "no")
                .labelled("sign")
                .alsoAt(source.span(0, 1), "a length")
                .alsoAt(source.span(4, 5), "a time");

        assertThat(print(diagnostic)).isEqualTo("""
                        a:1:3: error LP121: no
                            1 | a + b
                              | - a length
                              |   ^ sign
                              |     - a time
                        """);
    }

    @Test
    void a_span_of_several_lines_is_drawn_under_its_first() {
        SourceText source = SourceText.of("a", "check {\n  require\n}\n");

        assertThat(print(Diagnostic.error(Code.LP121, source.span(6, 19), "no")))
                .isEqualTo("""
                        a:1:7: error LP121: no
                            1 | check {
                              |       ^
                        """);
    }

    @Test
    void tabs_wide_letters_and_combining_marks_keep_the_caret_under_its_word() {
        SourceText source = SourceText.of("a", "\t\u9593e\u0301\uD83D\uDD27 x");

        assertThat(print(Diagnostic.error(Code.LP121, source.span(7, 8), "no")))
                .isEqualTo("a:1:7: error LP121: no\n    1 |     \u9593e\u0301\uD83D\uDD27 x\n      |           ^\n");
    }

    @Test
    void a_long_line_is_shortened_around_the_place() {
        SourceText source = SourceText.of("a", "x".repeat(500) + "!" + "y".repeat(500));

        String printed = print(Diagnostic.error(Code.LP121, source.span(500, 501), "no"));

        assertThat(printed.lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(120));
        List<String> lines = printed.lines().toList();
        assertThat(lines.get(1)).contains("\u2026x").contains("y\u2026");
        assertThat(lines.get(2).indexOf('^')).isEqualTo(lines.get(1).indexOf('!'));
    }

    @Test
    void a_stranger_cannot_write_to_the_terminal_through_a_message() {
        SourceText source = SourceText.of("a\u001B[2J", "\u001B[31m\u202Ex");

        assertThat(print(Diagnostic.error(Code.LP121, source.span(0, 1), "\u001B]0;title\u0007")
                        .help("\r")))
                .doesNotContain("\u001B", "\u0007", "\u202E", "\r");
    }

    @Test
    void colour_adds_nothing_but_colour() {
        SourceText source = SourceText.of("a", "let x = 1");
        List<Diagnostic> diagnostics = List.of(
                Diagnostic.error(Code.LP121, source.span(4, 5), "no")
                        .alsoAt(source.span(0, 3), "why")
                        .help("so"),
                Diagnostic.warning(Code.LP121, source.span(9, 9), "hm"));

        String coloured = DiagnosticPrinter.print(diagnostics, true);

        assertThat(coloured).contains("\u001B[1;31merror LP121\u001B[0m");
        assertThat(coloured.replaceAll("\u001B\\[[0-9;]*m", "")).isEqualTo(DiagnosticPrinter.print(diagnostics, false));
    }

    @Test
    void every_code_says_what_kind_of_mistake_it_is() {
        assertThat(Code.values()).allSatisfy(code -> {
            assertThat(code.name()).matches("LP[0-9]{3}");
            assertThat(code.summary()).matches("[A-Z].*[^.]");
        });
        assertThat(Code.values()).extracting(Code::summary).doesNotHaveDuplicates();
    }

    private static String print(Diagnostic diagnostic) {
        return DiagnosticPrinter.print(List.of(diagnostic), false);
    }
}

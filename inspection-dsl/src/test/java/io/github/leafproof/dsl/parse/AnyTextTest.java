package io.github.leafproof.dsl.parse;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticJson;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Whatever a file holds, reading it ends, and what is wrong with it is said about places in it. */
class AnyTextTest {

    /** Words and signs of the language, so that a random run of them gets far into the grammar. */
    private static final List<String> PIECES = List.of(
            "stage \"S\" {",
            "check c \"C\" {",
            "observe x : length",
            "let y =",
            "setup s starts a {",
            "a -> b \"how\"",
            "for v in a, b {",
            "release {",
            "rehearse \"R\" {",
            "hold when any fails or open",
            "ready otherwise",
            "enter x 3 mm",
            "expect c open",
            "require",
            "x at most 3 mm",
            "between 1 and 2",
            "within 1 of 2",
            "tolerate to 4",
            "is one of a, b",
            "choose x { a: 1 b: 2 }",
            "if x then 1 else 2",
            "not",
            "and",
            "or",
            "(",
            ")",
            "{",
            "}",
            "[",
            "]",
            ",",
            ":",
            "=",
            "->",
            "+",
            "-",
            "^",
            "/",
            "\"{x in mm, 1 digit}\"",
            "\"{\"",
            "\"",
            "in",
            "in thou",
            "0,05",
            ".5",
            "9 200 rpm",
            "3 mm.",
            "\n",
            "\t",
            "// note\n",
            "\u201C",
            "\u00B1",
            "$",
            "\uD83D\uDD27",
            "engine.bore",
            "gate",
            "advise",
            "because \"b\"",
            "is at",
            "hazard fuel",
            "with g",
            "ask \"A\"",
            "note \"n\"",
            "optional",
            "when",
            "after c",
            "define f(a : length) =",
            "gauge g : leaf set",
            "card c : one of a, \"b c\"",
            "grade a < b",
            "series of length",
            "yes/no",
            "\\",
            "\u0000",
            "%",
            "\u00B2",
            "\u00B0C",
            "per");

    @Provide
    Arbitrary<String> nearlyProcedures() {
        return Arbitraries.of(PIECES).list().ofMaxSize(60).map(pieces -> String.join(" ", pieces));
    }

    @Property(tries = 500, seed = "1")
    void a_run_of_words_is_read_to_its_end(@ForAll("nearlyProcedures") String text) {
        assertReadable(text);
    }

    @Property(tries = 500, seed = "1")
    void any_letters_are_read_to_their_end(@ForAll String text) {
        assertReadable(text);
    }

    @Provide
    Arbitrary<Integer> places() {
        return Arbitraries.integers().between(0, Example.TEXT.length() - 1);
    }

    @Property(tries = 500, seed = "1")
    void a_procedure_cut_off_anywhere_or_with_a_letter_changed_is_read_to_its_end(
            @ForAll("places") int place, @ForAll("places") int other) {
        assertReadable(Example.TEXT.substring(0, place));
        assertReadable(
                Example.TEXT.substring(0, place) + Example.TEXT.charAt(other) + Example.TEXT.substring(place + 1));
    }

    private static void assertReadable(String text) {
        SourceText source = SourceText.of("any", text);
        Parsed parsed = ProcedureParser.parse(source);
        for (Diagnostic problem : parsed.problems()) {
            assertThat(problem.span().end()).isLessThanOrEqualTo(text.length());
            problem.labels().forEach(label -> assertThat(label.span().end()).isLessThanOrEqualTo(text.length()));
        }
        assertThat(parsed.problems()).isSortedAccordingTo(Diagnostic.BY_PLACE);
        parsed.tree().declarations().forEach(declaration -> {
            Span span = declaration.span();
            assertThat(span.end()).isLessThanOrEqualTo(text.length());
        });
        assertThat(DiagnosticPrinter.print(parsed.problems(), true)).doesNotContain("\r");
        assertThat(DiagnosticJson.write(parsed.problems())).startsWith("[");
    }

    @Test
    @Timeout(120)
    void ten_megabytes_of_rubbish_are_told_from_a_procedure() {
        Random random = new Random(4);
        StringBuilder rubbish = new StringBuilder();
        while (rubbish.length() < 10_000_000) {
            rubbish.append((char) (random.nextInt(10) == 0 ? '\n' : ' ' + random.nextInt(95)));
        }

        List<Diagnostic> problems =
                ProcedureParser.parse(SourceText.of("any", rubbish.toString())).problems();

        assertThat(problems).hasSize(101);
        assertThat(problems.get(100).code()).isEqualTo(Code.LP704);
        assertThat(problems.get(100).message()).endsWith("more problems are not listed");
    }

    @Test
    void fifty_brackets_may_nest_and_one_more_may_not() {
        String most = "let x = " + "(".repeat(50) + "1" + ")".repeat(50);
        String more = "let x = " + "(".repeat(51) + "1" + ")".repeat(51);

        assertThat(codes(most)).isEmpty();
        assertThat(codes(more)).containsExactly(Code.LP702);
    }

    @Test
    void whatever_nests_has_a_bound() {
        for (String opening : List.of(
                "(",
                "{",
                "[",
                "stage \"S\" {",
                "f(",
                "choose x { a: ",
                "not ",
                "- ",
                "2 ^ ",
                "if a then ",
                "if a then b else ",
                "\"{",
                "for v in a { ")) {
            String start = opening.startsWith("stage") || opening.startsWith("for") ? "" : "let x = ";
            assertThat(codes(start + opening.repeat(100_000))).as(opening).isNotEmpty();
        }
    }

    @Test
    void texts_within_texts_have_a_bound() {
        String text = "x";
        for (int i = 0; i < 12; i++) {
            text = "\"{" + text + "}\"";
        }

        assertThat(codes("let x = " + text)).isNotEmpty();
    }

    @Test
    void a_thousand_operators_in_a_row_are_read_and_one_more_is_not() {
        String thousand = IntStream.range(0, 1001).mapToObj(i -> "a").collect(Collectors.joining(" + "));
        String either = IntStream.range(0, 1001).mapToObj(i -> "a").collect(Collectors.joining(" or "));

        assertThat(codes("let x = " + thousand)).isEmpty();
        assertThat(codes("let x = " + thousand + " * b")).isEmpty();
        assertThat(codes("let x = " + thousand + " + b")).containsExactly(Code.LP703);
        assertThat(codes("let x = " + either)).isEmpty();
        assertThat(codes("let x = " + either + " and b or c")).containsExactly(Code.LP703);
        String rule = IntStream.range(0, 1002).mapToObj(i -> "any fails").collect(Collectors.joining(", "));
        assertThat(codes("release { hold when " + rule + " }")).containsExactly(Code.LP703);
    }

    @Test
    @Timeout(120)
    void fifty_thousand_checks_are_read() {
        // How long it takes is a question for a quiet machine; @Timeout only keeps a hang from holding up the build.
        Parsed parsed = parse(50_000);

        assertThat(parsed.problems()).isEmpty();
        assertThat(parsed.tree().declarations()).hasSize(100_001);
    }

    private static Parsed parse(int checks) {
        StringBuilder text = new StringBuilder("procedure many \"Many\" revision 1\n");
        for (int i = 0; i < checks; i++) {
            text.append("observe gap_")
                    .append(i)
                    .append(" : gap with leaves ask \"Offer the leaves\"\ncheck lash_")
                    .append(i);
            text.append(" \"Lash {gap_")
                    .append(i)
                    .append("}\" critical {\n  after cold\n  require gap_")
                    .append(i);
            text.append(" between engine.lash_min and (engine.lash_max + 0.05 mm) tolerate to 0.2 mm\n}\n");
        }
        return ProcedureParser.parse(SourceText.of("many", text.toString()));
    }

    private static List<Code> codes(String text) {
        return ProcedureParser.parse(SourceText.of("any", text)).problems().stream()
                .map(Diagnostic::code)
                .toList();
    }
}

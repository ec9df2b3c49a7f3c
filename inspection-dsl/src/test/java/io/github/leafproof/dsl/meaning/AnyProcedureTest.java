package io.github.leafproof.dsl.meaning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.source.SourceText;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever a file says, it is compiled or refused, and never more than that. */
public class AnyProcedureTest {

    /** Single words and signs: mostly they do not even read. */
    private static final List<String> WORDS = List.of(
            "procedure p \"P\" revision 1",
            "check",
            "observe",
            "let",
            "define",
            "for",
            "stage",
            "gauge",
            "setup",
            "release",
            "rehearse",
            "a",
            "b",
            "v",
            "in",
            "{",
            "}",
            "[",
            "]",
            "(",
            ")",
            ",",
            ":",
            "=",
            "+",
            "-",
            "*",
            "/",
            "^",
            "<",
            "require",
            "after",
            "when",
            "if",
            "then",
            "else",
            "choose",
            "otherwise",
            "is",
            "one of",
            "at most",
            "between",
            "and",
            "within",
            "of",
            "3",
            "0.1 mm",
            "5 degC",
            "\"T\"",
            "\"{a}\"",
            "length",
            "gap",
            "yes/no",
            "grade",
            "engine.bore",
            "not",
            "or",
            "gate",
            "critical",
            "with",
            "optional",
            "tolerate to");

    /** Whole declarations with every kind of thing where every other belongs: these read, and mostly mean nothing. */
    private static final List<String> VALUES = List.of(
            "a",
            "b",
            "k",
            "f",
            "o1",
            "x[v]",
            "x[one]",
            "x",
            "3",
            "-2",
            "0.1 mm",
            "5 degC",
            "-5 degC",
            "3 K",
            "30 deg",
            "yes",
            "no",
            "\"t\"",
            "\"{a}\"",
            "\"{b in mm, 1 digit}\"",
            "engine.bore",
            "engine.box",
            "engine.maker",
            "engine.rocker_side_of_adjuster",
            "engine.nought",
            "v",
            "f(a)",
            "f(3 mm)",
            "f()",
            "min(a, b)",
            "min(a)",
            "sqrt(a)",
            "sin(30 deg)",
            "abs(b)",
            "next_leaf(a, 1 mm, 2 mm)",
            "adjuster_turn(a, 1 mm, 1 mm per turn, 1)",
            "nothing(a)",
            "(a in thou)",
            "(b in K)");

    private static final List<String> JOINTS = List.of(
            "# + #",
            "# - #",
            "# * #",
            "# / #",
            "# ^ 2",
            "# ^ #",
            "-#",
            "not #",
            "# and #",
            "# or #",
            "# at most #",
            "# at least # tolerate to #",
            "# < #",
            "# is #",
            "# is not #",
            "# between # and #",
            "# between # and # tolerate to #, #",
            "# within # of #",
            "# within # of # tolerate to #",
            "# is one of o1, o2",
            "# has all of #",
            "if # then # else #",
            "choose # { o1: # o2: # }",
            "choose # { o1: # otherwise: # }",
            "min(#, #)",
            "f(#)",
            "\"{#}\"");

    private static final List<String> TYPES = List.of(
            "length",
            "temperature",
            "gap",
            "count",
            "number",
            "text",
            "items",
            "yes/no",
            "one of o1, o2",
            "grade o1 < o2",
            "one of o1, o1",
            "pressure per time",
            "nonsense",
            "series of length",
            "date");

    private static final List<String> DECLARATIONS = List.of(
            "observe a : ~ ask \"A {#}\"\n",
            "observe b : ~ with g when #\n",
            "observe c : ~ setup s on, s off hazard fuel, q note \"{#}\" optional\n",
            "let k = #\n",
            "let a = #\n",
            "define f(a : ~) = #\n",
            "define f(w : ~, u : ~) = #\n",
            "gauge g : leaf set\n",
            "gauge g : reading of ~\n",
            "setup s starts on { on -> off \"H\" hazard q  gone -> on \"H\"  while off hazard eyes }\n",
            "hazard q \"Q\"\n",
            "for v in one, two { observe x[v] : ~  let y[v] = #  check z[v] \"{v} {#}\" gate { require # } }\n",
            "for v in one { for v in one, one { let x[v] = # } }\n",
            "for v in one { let k = #  gauge g : counter }\n",
            "check h \"H\" { require # }\n",
            "check h \"{#}\" gate criticl { after z[one], h  when #  require #  at 99 %  if fails advise #  because \"{#}\" }\n",
            "check a \"A\" { at 10 % }\n",
            "stage \"S\" { after h  check i \"I\" gate { require # } stage \"T\" { let l = # } }\n",
            "release { hold when any critical fails, h open  ready otherwise }\n",
            "release { gone when any severe odd and n fails }\n",
            "rehearse \"R\" { enter a 3, n yes  expect h passes  expect release ready }\n",
            "decide at 95 %\n",
            "applies when #\n",
            "language 7\n",
            "procedure p \"P\" revision 0\n");

    @Provide
    Arbitrary<String> runsOfWords() {
        return Arbitraries.of(WORDS).list().ofMaxSize(50).map(words -> String.join(" ", words));
    }

    @Provide
    Arbitrary<String> expressions() {
        Arbitrary<String> value = Arbitraries.of(VALUES);
        Arbitrary<String> once = Arbitraries.of(JOINTS).flatMap(joint -> filled(joint, value));
        return Arbitraries.oneOf(value, once, Arbitraries.of(JOINTS).flatMap(joint -> filled(joint, once)));
    }

    @Provide
    public Arbitrary<String> procedures() {
        Arbitrary<String> declaration = Arbitraries.of(DECLARATIONS)
                .flatMap(text -> filled(text, expressions()))
                .flatMap(text -> Arbitraries.of(TYPES).map(type -> text.replace("~", type)));
        return declaration.list().ofMaxSize(12).map(all -> "procedure p \"P\" revision 1\n" + String.join("", all));
    }

    /** The text with each of its gaps filled, one like the other or not. */
    private static Arbitrary<String> filled(String text, Arbitrary<String> fillings) {
        int gaps = (int) text.chars().filter(c -> c == '#').count();
        return fillings.list().ofSize(gaps).map(chosen -> {
            StringBuilder whole = new StringBuilder();
            int next = 0;
            for (int at = 0; at < text.length(); at++) {
                char c = text.charAt(at);
                String filling = c == '#' ? chosen.get(next++) : "";
                // A brace or a quote inside a text's hole would end the text.
                whole.append(c == '#' ? filling.startsWith("\"") ? filling : "(" + filling + ")" : String.valueOf(c));
            }
            return whole.toString();
        });
    }

    @Property(tries = 500, seed = "1")
    void a_run_of_words_is_compiled_or_refused(@ForAll("runsOfWords") String text) {
        assertCompilesOrIsRefused(text);
    }

    @Property(tries = 1500, seed = "1")
    void declarations_with_anything_anywhere_are_compiled_or_refused(@ForAll("procedures") String text) {
        assertCompilesOrIsRefused(text);
    }

    private static void assertCompilesOrIsRefused(String text) {
        Compiled compiled = Procedure.compile(SourceText.of("any", text));
        boolean anyError = false;
        for (Diagnostic diagnostic : compiled.diagnostics()) {
            anyError |= diagnostic.isError();
            assertInside(diagnostic.span().start(), diagnostic.span().end(), text);
            diagnostic
                    .labels()
                    .forEach(label ->
                            assertInside(label.span().start(), label.span().end(), text));
        }
        assertThat(compiled.procedure().isEmpty()).isEqualTo(anyError);
        assertThat(compiled.diagnostics()).isSortedAccordingTo(Diagnostic.BY_PLACE);
        assertThat(DiagnosticPrinter.print(compiled.diagnostics(), false)).doesNotContain("Exception");
    }

    private static void assertInside(int start, int end, String text) {
        assertThat(start).isBetween(0, text.length());
        assertThat(end).isBetween(start, text.length());
    }
}

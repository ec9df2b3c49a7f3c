package io.github.leafproof.dsl.parse;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.editor.EditorGrammar;
import io.github.leafproof.dsl.editor.TextMate;
import io.github.leafproof.dsl.source.SourceText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The grammar for editors says of each word what the lexer and the parser say of it. After a change of the language,
 * {@code -Dgolden.write=true} makes it anew.
 */
class EditorGrammarTest {

    private static final TextMate EDITOR = new TextMate(EditorGrammar.shipped());

    private static final List<String> NAMES = List.of("variable.other.", "entity.name.", "support.constant.");

    /** The words of the language, grouped as the template asks. */
    private static Map<String, Collection<String>> words() {
        Set<String> declarations = Keywords.written(Keywords.ITEMS);
        Set<String> clauses = Keywords.written(Keywords.NEVER_INSIDE);
        clauses.removeAll(declarations);
        Set<String> control = Keywords.written(WordKinds.CONTROL);
        Set<String> operators = Keywords.written(Keywords.RESERVED);
        Stream.of(declarations, clauses, control, Keywords.written(WordKinds.CONSTANTS), Set.of("engine"))
                .forEach(operators::removeAll);
        Set<String> all = Keywords.written(Keywords.all(Keywords.RESERVED, Keywords.NAMES));
        // The only word that the lexer spells in two ways.
        all.addAll(List.of("digit", "digits"));
        Set<String> noTypeWords = new TreeSet<>(all);
        noTypeWords.removeAll(List.of("per", "items"));
        Set<String> endsAnObservation = new TreeSet<>(declarations);
        endsAnObservation.removeAll(Keywords.written(Keywords.OBSERVE_CLAUSES));
        Map<String, Collection<String>> words = new TreeMap<>();
        words.put("DECLARATIONS", declarations);
        words.put("CLAUSES", clauses);
        words.put("CONTROL", control);
        words.put("OPERATORS", operators);
        words.put("WORDS", all);
        words.put("NO_TYPE_WORDS", noTypeWords);
        words.put("ENDS_AN_OBSERVATION", endsAnObservation);
        return words;
    }

    @Test
    void the_shipped_grammar_has_the_words_of_the_lexer() throws IOException {
        String made = EditorGrammar.made(words());
        if (Boolean.getBoolean("golden.write")) {
            Files.writeString(EditorGrammar.SHIPPED, made);
        }
        assertThat(EditorGrammar.text(EditorGrammar.SHIPPED))
                .as("a word of the language has changed: run this test with -Dgolden.write=true")
                .isEqualTo(made);
    }

    @Test
    void every_word_that_the_lexer_keeps_is_coloured_as_a_word_of_the_language() {
        for (String word : Keywords.written(Keywords.RESERVED)) {
            assertThat(EDITOR.scopes(word)[0])
                    .as(word)
                    .matches("(keyword|constant\\.language|variable\\.language)\\..*");
        }
        for (String word : Keywords.written(Keywords.NAMES)) {
            assertThat(EDITOR.scopes("require " + word)[8]).as(word).startsWith("variable.other.");
        }
    }

    /** All procedures of the project that are written as they should be, whatever they mean. */
    static Stream<SourceText> procedures() throws IOException {
        List<SourceText> texts = new ArrayList<>();
        for (Path folder :
                List.of(Path.of("src", "test", "resources"), Path.of("..", "examples"), Path.of("..", "docs"))) {
            try (Stream<Path> files = Files.walk(folder)) {
                files.filter(file -> !file.toString().contains("target"))
                        .sorted()
                        .forEach(file -> gather(file, texts));
            }
        }
        gather(Path.of("..", "README.md"), texts);
        return texts.stream()
                .filter(text -> ProcedureParser.parse(text).problems().stream().noneMatch(Diagnostic::isError));
    }

    private static void gather(Path file, List<SourceText> texts) {
        if (file.toString().endsWith(".inspection")) {
            texts.add(SourceText.of(file.toString(), EditorGrammar.text(file)));
        } else if (file.toString().endsWith(".md")) {
            Pattern.compile("^```inspection(?:-fragment)?\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE)
                    .matcher(EditorGrammar.text(file))
                    .results()
                    .forEach(fence -> texts.add(SourceText.of(file + " at " + fence.start(), fence.group(1))));
        }
    }

    @ParameterizedTest
    @MethodSource("procedures")
    void an_editor_takes_each_word_for_what_the_compiler_takes_it_for(SourceText procedure) {
        String[] scopes = EDITOR.scopes(procedure.text());
        List<String> wrong = new ArrayList<>();
        for (WordKinds.Kind kind : WordKinds.of(procedure)) {
            boolean right = Arrays.stream(scopes, kind.start(), kind.end())
                    .allMatch(scope -> kind.scope().equals(WordKinds.NAME)
                            ? NAMES.stream().anyMatch(scope::startsWith)
                            : scope.startsWith(kind.scope()));
            if (!right) {
                wrong.add(procedure.at(kind.start()).line() + ": "
                        + procedure.text().substring(kind.start(), kind.end())
                        + " is " + kind.scope() + ", coloured "
                        + Set.copyOf(Arrays.asList(scopes).subList(kind.start(), kind.end())));
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void the_procedures_that_hold_the_grammar_are_many_and_say_everything() throws IOException {
        assertThat(procedures().map(SourceText::name).toList())
                .hasSizeGreaterThan(60)
                .anyMatch(name -> name.endsWith("whole-language.inspection"))
                .anyMatch(name -> name.endsWith("first_look.inspection"))
                .anyMatch(name -> name.contains("language.md at"));
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            value = {"a == b, ==", "a && b, &&", "x 3; y, ;", "# a remark, #", "/* a remark */, /*"})
    void what_other_languages_write_is_marked_as_wrong_at_once(String text, String sign) {
        assertThat(EDITOR.scopes(text)[text.indexOf(sign)]).startsWith("invalid.illegal.");
    }

    @Test
    void a_quote_that_is_never_closed_colours_its_own_line_only() {
        String text = "let a = \"Turn {b\nlet c = 1";

        assertThat(EDITOR.scopes(text)[text.lastIndexOf("let")]).startsWith("keyword.other.declaration.");
    }
}

package io.github.leafproof.dsl.parse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The grammar on the page about the language is the one that the parser is made of. After a change of the grammar,
 * {@code -Dgolden.write=true} writes it anew.
 */
class GrammarPageTest {

    private static final Path PAGE = Path.of("..", "docs", "language.md");
    private static final Path FOLDER = Path.of("src", "main", "antlr4", "io", "github", "leafproof", "dsl", "parse");
    private static final String BEGIN = "<!-- grammar: written by GrammarPageTest -->\n";
    private static final String END = "<!-- grammar: end -->";

    /** What the lexer makes of letters, explained below the rules. */
    private static final Set<String> LEXICAL = Set.of("NUMBER", "DATE", "NAME", "COMMENT", "DIGIT", "LETTER");

    /** What is read only so that it can be said what is wrong with it, and what is no part of the language's text. */
    private static final Set<String> NOT_SHOWN = Set.of(
            "EOF",
            "UNCLOSED_STRING",
            "UNQUOTED",
            "CURLY_STRING",
            "BLANK",
            "FOREIGN",
            "FOREIGN_COMMENT",
            "SEMICOLON",
            "UNKNOWN",
            "UNIT",
            "UNIT_SIGN",
            "STATED",
            "STRING",
            "ARGUMENT_COMMA");

    private static String ebnf() throws IOException {
        String lexer = Files.readString(FOLDER.resolve("InspectionLexer.g4"));
        String parser = Files.readString(FOLDER.resolve("InspectionParser.g4"))
                // A text, however its quotes are spoilt; a file ends with its end.
                .replace("text: STRING | UNCLOSED_STRING | UNQUOTED | CURLY_STRING;", "text: STRING;")
                .replace(" EOF;", ";");
        Map<String, String> spellings = GrammarNotation.spellings(lexer);
        spellings.put("ARGUMENT_COMMA", "','");
        spellings.put("STATED", "('u' | 'U')");
        String words = lexer.lines()
                .filter(line -> LEXICAL.stream().anyMatch(name -> line.matches("(fragment )?" + name + ":.*")))
                .map(line -> line.replace("fragment ", ""))
                .collect(Collectors.joining("\n", "// ---- the words themselves ----\n", "\n"));
        return GrammarNotation.rules(parser, spellings)
                + "\n"
                + GrammarNotation.rules(words, Map.of())
                + """
                STRING ::= '"' (CHARACTER | '\\' ['"\\{}] | '{' hole '}')* '"'
                CHARACTER ::= [^"\\{}#xA#xD]
                UNIT ::= UNIT_WORD (('per' | '·' | '/') UNIT_WORD)*
                """.replace("['\"", "[\"")
                + GrammarNotation.otherSpellings(lexer).stream().collect(Collectors.joining("\n   ", "\n/* ", " */\n"));
    }

    @Test
    void the_page_shows_the_grammar_that_the_parser_is_made_of() throws IOException {
        String page = Files.readString(PAGE);
        int from = page.indexOf(BEGIN) + BEGIN.length();
        int to = page.indexOf(END);
        String made = "```ebnf\n" + ebnf() + "```\n";
        if (Boolean.getBoolean("golden.write")) {
            Files.writeString(PAGE, page.substring(0, from) + made + page.substring(to));
        }
        assertThat(Files.readString(PAGE).contains(BEGIN + made + END))
                .as("the grammar has changed: run this test with -Dgolden.write=true")
                .isTrue();
    }

    @Test
    void each_rule_that_is_used_is_shown_and_each_that_is_shown_is_used() throws IOException {
        String ebnf = ebnf().replaceAll("(?s)/\\*.*?\\*/", "")
                .replaceAll("'[^']*'", "")
                .replaceAll("\\[[^]\n]*]", "");
        Set<String> shown = words(ebnf, "(?m)^(\\w+) ::=");
        Set<String> used = words(ebnf, "\\b(\\w+)\\b(?! ::=)");

        assertThat(shown)
                .containsAll(
                        used.stream().filter(word -> !word.equals("UNIT_WORD")).toList());
        // Reading begins with the first, that of the calculator with a line; comments stand between any two words.
        assertThat(used)
                .containsAll(shown.stream()
                        .filter(word -> !List.of("file", "line", "COMMENT").contains(word))
                        .toList());
    }

    private static Set<String> words(String text, String pattern) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map((MatchResult m) -> m.group(1))
                .collect(Collectors.toSet());
    }

    @Test
    void each_word_and_sign_of_the_lexer_is_shown_as_it_is_written() throws IOException {
        Map<String, String> spellings =
                GrammarNotation.spellings(Files.readString(FOLDER.resolve("InspectionLexer.g4")));
        Set<String> byName = new TreeSet<>(LEXICAL);
        byName.addAll(NOT_SHOWN);

        assertThat(GrammarNotation.knows(spellings, byName)).isTrue();
        assertThat(spellings).containsEntry("OBSERVE", "'observe'").containsEntry("ARROW", "'->'");
    }

    @Test
    void the_page_lists_the_reserved_words_of_the_lexer() throws IOException {
        String page = Files.readString(PAGE);
        String section = page.substring(page.indexOf("## Reserved words"));
        String list = section.substring(0, section.indexOf("All other words"));

        assertThat(words(list, "`(\\w+)`")).isEqualTo(Keywords.written(Keywords.RESERVED));
    }
}

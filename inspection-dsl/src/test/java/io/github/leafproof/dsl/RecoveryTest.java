package io.github.leafproof.dsl;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** One run says all that is wrong with a procedure, and nothing that is only wrong because something else is. */
class RecoveryTest {

    private static final Pattern WORD =
            Pattern.compile("\"[^\"\\n]*\"|[\\p{L}_][\\p{L}_0-9]*|[0-9]+(\\.[0-9]+)?|->|[^\\s]");

    /** A mistake of dimensions that no damage elsewhere can have caused. */
    private static final String WRONG_AT_THE_END =
            "\ncheck absurd \"A length is no pressure\" { require 3 mm at most 100 kPa }\n";

    private static List<Diagnostic> diagnostics(String text) {
        return Procedure.compile(SourceText.of("shop.inspection", text)).diagnostics();
    }

    private static List<String> said(String... lines) {
        return diagnostics("procedure shop \"Shop\" revision 1\n" + String.join("\n", lines)).stream()
                .map(each -> each.source().at(each.span().start()).line() - 1 + " " + each.code())
                .toList();
    }

    @Test
    void a_mistake_of_grammar_hides_no_mistake_of_dimensions() {
        assertThat(said(
                        "let aim = 3 mm +",
                        "observe lash : length ask \"Lash\"",
                        "check tight \"Tight\" { require lash at most 3 kPa }"))
                .containsExactly("1 LP120", "3 LP201");
    }

    @Test
    void what_plainly_means_something_is_read_on_with() {
        assertThat(said(
                        "observe lash : length ask \"Lash\";",
                        "observe room : temperature ask \u201CRoom\u201D",
                        "check tight \"Tight\" { require lash at most 0,05 kPa && room => 3 mm }"))
                .containsExactly("1 LP109", "2 LP108", "3 LP111", "3 LP201", "3 LP117", "3 LP117", "3 LP201");
    }

    @Test
    void who_uses_what_a_lost_declaration_declares_is_not_blamed() {
        assertThat(said(
                        "observe head temperature ask \"Head\"",
                        "observe room : temperature ask \"Room\"",
                        "let warmer = head - room",
                        "gauge leaves leaf set",
                        "observe lash : gap with leaves ask \"Lash\"",
                        "check cold \"Cold\" { require warmer at most 3 K and hed at least 3 K }"))
                .containsExactly("1 LP121", "4 LP121", "6 LP301");
    }

    @Test
    void where_a_name_is_missing_nobody_is_blamed_for_using_it() {
        assertThat(said(
                        "observe : temperature ask \"Head\"",
                        "define (a : length) = a * 2",
                        "check cold \"Cold\" { require head at most twice(3 K) }"))
                .containsExactly("1 LP121", "2 LP121");
    }

    @Test
    void a_check_whose_requirement_is_lost_is_not_said_to_require_nothing() {
        assertThat(said("check cold \"Cold\" { require }", "check warm \"Warm\" { }"))
                .containsExactly("1 LP120", "2 LP407");
    }

    @Test
    void an_observation_whose_gauge_is_lost_is_not_said_to_lack_one() {
        assertThat(said(
                        "observe lash : gap with 3 ask \"Lash\"",
                        "observe other : gap ask \"Lash\"",
                        "check tight \"Tight\" { require lash at most 3 mm and other at most 3 mm }"))
                .containsExactly("1 LP121", "2 LP418");
    }

    @Test
    void a_value_that_was_cut_short_is_not_held_against_anything() {
        assertThat(said(
                        "let datum = engine.throttle_arm { metal: 0 mm   plastic: 1 mm }",
                        "observe needle : length ask \"Needle\"",
                        "check set \"Set\" { require needle within 0.2 mm of datum }"))
                .containsExactly("1 LP142");
    }

    @Test
    void a_setup_with_a_line_that_cannot_be_read_may_have_any_state() {
        assertThat(said(
                        "setup plug starts fitted { fitted out \"Unscrew\" }",
                        "observe lash : length setup plug out ask \"Lash\"",
                        "check tight \"Tight\" { require lash at most 3 mm }"))
                .containsExactly("1 LP121");
    }

    @Test
    void a_rehearsal_with_a_line_that_cannot_be_read_may_say_anything() {
        assertThat(said("check c \"C\" { require engine.choke }", "rehearse \"R\" { engine 3 expect c passes }"))
                .containsExactly("2 LP121");
    }

    @Test
    void a_release_with_a_rule_that_cannot_be_read_may_cover_everything() {
        assertThat(said("check c \"C\" { require engine.choke }", "release { hold when any minor fails\n ready 3 }"))
                .containsExactly("3 LP121");
    }

    @Test
    void the_name_of_the_procedure_and_its_checks_are_not_missed_where_they_may_be_lost() {
        assertThat(diagnostics("procedure \"Shop\" revision 1\ncheck c \"C\" { require engine.choke }\n"))
                .extracting(Diagnostic::code)
                .containsExactly(Code.LP121);
        assertThat(diagnostics("procedure shop \"Shop\" revision 1\ncheck \"C\" { require engine.choke }\n"))
                .extracting(Diagnostic::code)
                .containsExactly(Code.LP121);
        assertThat(diagnostics("check c \"C\" { require engine.choke }\nlet x = \n"))
                .extracting(Diagnostic::code)
                .containsExactly(Code.LP401, Code.LP120);
    }

    @Test
    void wherever_a_sign_without_meaning_stands_it_is_all_that_is_said_and_a_later_mistake_is_said_too()
            throws IOException {
        String sound = Files.readString(Path.of("src", "test", "resources", "first-look.inspection"));
        List<String> wrong = new ArrayList<>();
        int words = 0;
        for (Matcher word = WORD.matcher(sound); word.find(); ) {
            if (!isInComment(sound, word.start())) {
                words++;
                String broken = sound.substring(0, word.start()) + "$ " + sound.substring(word.start());
                List<Code> codes = diagnostics(broken + WRONG_AT_THE_END).stream()
                        .map(Diagnostic::code)
                        .toList();
                if (!codes.equals(List.of(Code.LP106, Code.LP201))) {
                    wrong.add(word.group() + " at " + word.start() + ": " + codes);
                }
            }
        }
        assertThat(words).isGreaterThan(250);
        assertThat(wrong).isEmpty();
    }

    private static boolean isInComment(String text, int place) {
        int line = text.lastIndexOf('\n', place) + 1;
        int slashes = text.indexOf("//", line);
        return slashes >= 0 && slashes <= place;
    }
}

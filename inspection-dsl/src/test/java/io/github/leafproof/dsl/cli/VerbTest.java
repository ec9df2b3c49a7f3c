package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A command that is named must not wait for all that are not. */
class VerbTest {

    @Test
    void of_a_command_that_is_named_nothing_else_is_made_ready() {
        assertThat(Verb.startedBy("vet", "first_look.inspection")).containsExactly(Verb.VET);
        assertThat(Verb.startedBy("verify-report", "--help")).containsExactly(Verb.VERIFY_REPORT);
        assertThat(Verb.startedBy("--trace", "inspect", "vet")).containsExactly(Verb.INSPECT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "--help", "vit", "VET", "@vet"})
    void where_none_is_named_that_we_know_all_are_there_for_the_help(String argument) {
        assertThat(Verb.startedBy(argument)).containsExactly(Verb.values());
    }

    @Test
    void what_stands_before_a_command_counts_as_behind_it() {
        assertThat(Terminal.run("--trace", "vet", "nonesuch.inspection"))
                .isEqualTo(Terminal.run("vet", "nonesuch.inspection", "--trace"));
    }
}

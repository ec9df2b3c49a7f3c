package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpellingTest {
    private static final List<String> KEYS = List.of("lash_min", "lash_max", "bore", "stroke", "Id");

    @Test
    void the_nearest_word_is_suggested() {
        assertThat(Spelling.nearest("lash_mim", KEYS)).contains("lash_min");
        assertThat(Spelling.nearest("stoke", KEYS)).contains("stroke");
        assertThat(Spelling.nearest("storke", KEYS)).contains("stroke");
        assertThat(Spelling.nearest("boore", KEYS)).contains("bore");
    }

    @Test
    void another_case_comes_before_another_letter() {
        assertThat(Spelling.nearest("BORE", List.of("BORA", "bore"))).contains("bore");
        // A Turkish computer makes a dotless letter of the capital I; the suggestion must not depend on that.
        assertThat(Spelling.nearest("ID", KEYS)).contains("Id");
    }

    @Test
    void of_two_words_as_near_the_first_given_is_suggested() {
        assertThat(Spelling.nearest("lash_mi", List.of("lash_min", "lash_mid"))).contains("lash_min");
    }

    @Test
    void of_words_as_near_the_one_that_begins_alike_and_is_as_long_is_suggested() {
        assertThat(Spelling.nearest("mn", List.of("in", "m", "mm"))).contains("mm");
    }

    @Test
    void a_word_too_far_off_is_no_suggestion() {
        assertThat(Spelling.nearest("carburettor", KEYS)).isEmpty();
        assertThat(Spelling.nearest("bonn", KEYS)).isEmpty();
        assertThat(Spelling.nearest("x", List.of("m"))).isEmpty();
        assertThat(Spelling.nearest("", KEYS)).isEmpty();
    }
}

package io.github.leafproof.inspection.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** The strong three-valued logic of S. C. Kleene (Introduction to Metamathematics, 1952, § 64; from memory). */
class FindingLawsTest {
    @Example
    void an_open_part_leaves_the_whole_open_unless_the_other_decides() {
        assertThat(Finding.OPEN.and(Finding.FAILS)).isEqualTo(Finding.FAILS);
        assertThat(Finding.OPEN.and(Finding.PASSES)).isEqualTo(Finding.OPEN);
        assertThat(Finding.OPEN.and(Finding.OPEN)).isEqualTo(Finding.OPEN);
        assertThat(Finding.PASSES.and(Finding.PASSES)).isEqualTo(Finding.PASSES);
        assertThat(Finding.OPEN.or(Finding.PASSES)).isEqualTo(Finding.PASSES);
        assertThat(Finding.OPEN.or(Finding.FAILS)).isEqualTo(Finding.OPEN);
        assertThat(Finding.FAILS.or(Finding.FAILS)).isEqualTo(Finding.FAILS);
        assertThat(Finding.OPEN.not()).isEqualTo(Finding.OPEN);
        assertThat(Finding.PASSES.not()).isEqualTo(Finding.FAILS);
    }

    @Property(seed = "1")
    void joining_does_not_depend_on_order_or_grouping(@ForAll Finding a, @ForAll Finding b, @ForAll Finding c) {
        assertThat(a.and(b)).isEqualTo(b.and(a));
        assertThat(a.or(b)).isEqualTo(b.or(a));
        assertThat(a.and(b).and(c)).isEqualTo(a.and(b.and(c)));
        assertThat(a.or(b).or(c)).isEqualTo(a.or(b.or(c)));
        assertThat(a.and(b.or(c))).isEqualTo(a.and(b).or(a.and(c)));
    }

    @Property(seed = "1")
    void de_morgan_holds_and_a_double_denial_says_nothing_new(@ForAll Finding a, @ForAll Finding b) {
        assertThat(a.and(b).not()).isEqualTo(a.not().or(b.not()));
        assertThat(a.or(b).not()).isEqualTo(a.not().and(b.not()));
        assertThat(a.not().not()).isEqualTo(a);
        assertThat(a.and(a)).isEqualTo(a);
        assertThat(a.or(a.and(b))).isEqualTo(a);
    }

    @Property(seed = "1")
    void settling_an_open_part_never_turns_round_what_was_settled(@ForAll Finding a, @ForAll boolean settled) {
        Finding open = Finding.OPEN.and(a);
        if (open != Finding.OPEN) {
            assertThat(Finding.of(settled).and(a)).isEqualTo(open);
        }
        Finding either = Finding.OPEN.or(a);
        if (either != Finding.OPEN) {
            assertThat(Finding.of(settled).or(a)).isEqualTo(either);
        }
    }

    @Example
    void what_is_plainly_so_passes_and_what_is_plainly_not_fails() {
        assertThat(Finding.of(true)).isEqualTo(Finding.PASSES);
        assertThat(Finding.of(false)).isEqualTo(Finding.FAILS);
    }

    @Property(seed = "1")
    void a_finding_is_an_outcome_of_the_same_name(@ForAll Finding a) {
        assertThat(a.outcome().name()).isEqualTo(a.name());
    }
}

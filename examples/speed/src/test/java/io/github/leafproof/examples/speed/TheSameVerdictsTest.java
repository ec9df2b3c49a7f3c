package io.github.leafproof.examples.speed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class TheSameVerdictsTest {

    private static final List<Look> LOOKS = Look.random(2_000, 7);

    static Stream<Arguments> everybody_under_both_limits() {
        return Stream.of(Contestants.values())
                .flatMap(contestant -> Stream.of(0.10, 0.12).map(lashMax -> Arguments.of(contestant, lashMax)));
    }

    @ParameterizedTest
    @MethodSource("everybody_under_both_limits")
    void comes_to_the_verdicts_of_the_work_done_by_hand(Contestants contestant, double lashMax) {
        assertThat(parting(contestant.under(lashMax), new ByHand(lashMax))).isEmpty();
    }

    /** What is judged otherwise, be it when it is judged again: the timing does nothing else. */
    private static <I> List<String> parting(Contestant<I> contestant, ByHand byHand) {
        List<String> parted = new ArrayList<>();
        for (Look look : LOOKS) {
            Verdicts expected = byHand.judged(look);
            I bound = contestant.bound(look);
            for (int round = 1; round <= 2; round++) {
                Verdicts found = new Verdicts();
                contestant.judge(bound, found);
                if (!found.equals(expected)) {
                    parted.add(look + ", round " + round + ": " + found + " and not " + expected);
                }
            }
        }
        return parted;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.10, 0.12})
    void no_check_comes_out_alike_for_all_engines(double lashMax) {
        ByHand byHand = new ByHand(lashMax);
        for (int check = 0; check <= Verdicts.RELEASE; check++) {
            Set<Integer> verdicts = new HashSet<>();
            for (Look look : LOOKS) {
                verdicts.add(byHand.judged(look).get(check));
            }
            assertThat(verdicts).as("check " + check).hasSizeGreaterThan(1);
        }
    }
}

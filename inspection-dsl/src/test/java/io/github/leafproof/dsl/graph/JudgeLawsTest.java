package io.github.leafproof.dsl.graph;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of every sheet, however it is filled in. */
class JudgeLawsTest {

    /** What counts as decided: more entries may finish or unblock a check, and never leave a decided one open. */
    private static final Set<Outcome> DECIDED = EnumSet.of(Outcome.PASSES, Outcome.FAILS);

    private static final Workshop BENCH = Workshop.of("""
            gauge leaves : leaf set
            gauge infrared : reading of temperature
            gauge depth : reading of length
            observe head : temperature with infrared ask "Head"
            observe room : temperature with infrared ask "Room"
            observe lash : gap with leaves ask "Lash"
            observe step : length with depth ask "Step"
            observe gear : grade rusty < dry < oiled ask "Valve gear"
            observe free : yes/no ask "Does it turn?"
            observe rattle : yes/no optional ask "Does it rattle?"
            let warmer = head - room
            check cold "Cold" major gate { require warmer within 3 K of 0 K }
            check inside "Lash" critical gate {
              after cold
              require lash between engine.lash_min and engine.lash_max tolerate to engine.lash_tolerated
              if open advise next_leaf(lash, engine.lash_min, engine.lash_max)
              if high advise adjuster_turn(lash, 0.06 mm, engine.adjuster_pitch, engine.rocker_ratio)
            }
            check small "Step" major { at 99 % require step between 0.2 mm and 1 mm or lash at most step }
            check turns "Turns" critical { require free and gear at least dry }
            check quiet "Quiet" minor { after inside when gear is oiled require not rattle }
            check neither "Neither" minor { require not (free and step at most 1 mm) }
            """);

    @Provide
    Arbitrary<List<Map.Entry<String, String>>> sheets() {
        Arbitrary<String> celsius =
                Arbitraries.integers().between(180, 260).map(tenths -> "\"" + tenths / 10.0 + " °C\"");
        Arbitrary<String> step =
                Arbitraries.integers().between(5, 115).map(hundredths -> "\"" + hundredths / 100.0 + " mm\"");
        Arbitrary<String> yes = Arbitraries.of("true", "false");
        Arbitrary<String> gear = Arbitraries.of("\"rusty\"", "\"dry\"", "\"oiled\"");
        Arbitrary<List<Map.Entry<String, String>>> once = Combinators.combine(celsius, celsius, step, gear, yes, yes)
                .as((head, room, deep, oil, free, rattle) -> List.of(
                        Map.entry("head", head),
                        Map.entry("room", room),
                        Map.entry("step", deep),
                        Map.entry("gear", oil),
                        Map.entry("free", free),
                        Map.entry("rattle", rattle)));
        Arbitrary<List<Map.Entry<String, String>>> felt = Combinators.combine(
                        Arbitraries.of(
                                "0.04 mm", "0.05 mm", "0.08 mm", "0.10 mm", "0.15 mm", "0.20 mm", "0.04 mm + 0.05 mm"),
                        Arbitraries.of("passes", "refuses", "drags"))
                .as((leaf, result) -> Map.entry("lash", result + " " + leaf))
                .list()
                .ofMaxSize(4);
        return Combinators.combine(once, felt, Arbitraries.integers().between(0, 63))
                .as((all, trials, chosen) -> {
                    List<Map.Entry<String, String>> entries = new ArrayList<>(trials);
                    for (int i = 0; i < all.size(); i++) {
                        if ((chosen & 1 << i) != 0) {
                            entries.add(all.get(i));
                        }
                    }
                    return entries;
                });
    }

    private static Workshop entered(List<Map.Entry<String, String>> entries) {
        Workshop workshop = BENCH;
        for (Map.Entry<String, String> entry : entries) {
            workshop = entry.getKey().equals("lash")
                    ? workshop.feel("lash", entry.getValue())
                    : workshop.observe(entry.getKey(), entry.getValue());
        }
        return workshop;
    }

    @Property(seed = "1", tries = 300, edgeCases = EdgeCasesMode.NONE)
    void the_order_of_the_entries_makes_no_difference(
            @ForAll("sheets") List<Map.Entry<String, String>> entries, @ForAll long seed) {
        List<Map.Entry<String, String>> shuffled = new ArrayList<>(entries);
        Collections.shuffle(shuffled, new Random(seed));

        Report one = entered(entries).report();
        Report other = entered(shuffled).report();

        assertThat(other.release()).isEqualTo(one.release());
        assertThat(other.releaseReason()).isEqualTo(one.releaseReason());
        assertThat(other.checks())
                .extracting(JudgeLawsTest::told)
                .isEqualTo(one.checks().stream().map(JudgeLawsTest::told).toList());
    }

    /** A check with its evidence in no order: that of a timeline is the sheet's own. */
    private static Object told(Report.Check check) {
        Object probability = check.probability() == null ? "none" : check.probability();
        return List.of(
                check.name(),
                check.outcome(),
                check.side(),
                probability,
                String.valueOf(check.value()),
                String.valueOf(check.requirement()),
                Set.copyOf(check.missing()),
                check.advice(),
                Set.copyOf(check.evidence()));
    }

    @Property(seed = "1", tries = 300, edgeCases = EdgeCasesMode.NONE)
    void no_lower_bound_exceeds_its_upper_one(@ForAll("sheets") List<Map.Entry<String, String>> entries) {
        for (Verdict verdict : entered(entries).judged().verdicts()) {
            Conformity shown = verdict.conformity();
            if (shown != null) {
                assertThat(shown.low()).isBetween(0.0, shown.high());
                assertThat(shown.high()).isLessThanOrEqualTo(1.0);
            }
        }
    }

    @Property(seed = "1", tries = 300, edgeCases = EdgeCasesMode.NONE)
    void one_more_entry_never_opens_what_was_decided_without_a_gap(
            @ForAll("sheets") List<Map.Entry<String, String>> entries) {
        Map<String, Outcome> decided = new HashMap<>();
        for (int known = 0; known <= entries.size(); known++) {
            Judgement judgement = entered(entries.subList(0, known)).judged();
            for (Verdict verdict : judgement.verdicts()) {
                String name = verdict.check().name();
                boolean restsOnLeaves = judgement.graph().observationsOf(verdict.check()).stream()
                        .anyMatch(observation -> observation.name().equals("lash"));
                if (decided.containsKey(name)) {
                    assertThat(verdict.outcome()).as(name).isEqualTo(decided.get(name));
                } else if (!restsOnLeaves
                        && DECIDED.contains(verdict.outcome())
                        && verdict.check().after().isEmpty()) {
                    decided.put(name, verdict.outcome());
                }
            }
        }
    }

    @Property(seed = "1", tries = 300, edgeCases = EdgeCasesMode.NONE)
    void a_check_is_blocked_exactly_when_a_gate_before_it_lets_nothing_through(
            @ForAll("sheets") List<Map.Entry<String, String>> entries) {
        Judgement judgement = entered(entries).judged();
        boolean cold = judgement.verdict("cold").orElseThrow().outcome().letsThrough();

        assertThat(judgement.verdict("inside").orElseThrow().outcome() == Outcome.BLOCKED)
                .isEqualTo(!cold);
    }
}

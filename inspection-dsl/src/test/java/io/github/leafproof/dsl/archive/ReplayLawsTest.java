package io.github.leafproof.dsl.archive;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.archive.CheckMoved.Change;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of every archive and every two revisions. */
class ReplayLawsTest {

    private static final List<String> LEAVES = List.of("0.04", "0.05", "0.08", "0.10", "0.15");

    /** Sound sheets, and some that are not. */
    @Provide
    Arbitrary<List<String>> archives() {
        Arbitrary<String> felt = Combinators.combine(
                        Arbitraries.of(LEAVES), Arbitraries.of(LEAVES), Arbitraries.of("freely", "stiffly", ""))
                .as((passes, refuses, turning) -> Kept.sheet(
                        "1",
                        "{\"observe\": \"free\", \"value\": true}",
                        Kept.lash(passes, refuses)
                                + (turning.isEmpty()
                                        ? ""
                                        : ", {\"observe\": \"turning\", \"value\": \"" + turning + "\"}")));
        Arbitrary<String> odd = Arbitraries.of(
                "{",
                "[]",
                Kept.sheet("2"),
                Kept.felt("3", "0.05", "0.08").replace("\"lash\", \"revision\"", "\"tank\", \"revision\""),
                Kept.felt("4", "0.05", "0.08").replace("card.json", "none.json"),
                Kept.sheet("5", "{\"observe\": \"free\", \"value\": false}"),
                Kept.sheet("6", "{\"observe\": \"free\", \"value\": \"yes\"}"),
                Kept.sheet("7", "{\"observe\": \"nothing\", \"value\": true}"));
        return Arbitraries.frequencyOf(net.jqwik.api.Tuple.of(4, felt), net.jqwik.api.Tuple.of(1, odd))
                .list()
                .ofMinSize(1)
                .ofMaxSize(12);
    }

    @Provide
    Arbitrary<String> revisions() {
        Arbitrary<String> limits = Combinators.combine(
                        Arbitraries.integers().between(1, 9),
                        Arbitraries.integers().between(0, 15))
                .as((from, width) -> String.format(Locale.ROOT, "0.%02d mm and %.2f mm", from, (from + width) / 100.0));
        Arbitrary<String> lash =
                limits.map(between -> Kept.OLD.replace("engine.lash_min and engine.lash_max", between));
        return Combinators.combine(lash, Arbitraries.integers().between(0, 4)).as((text, other) -> switch (other) {
            case 0 -> text.replace("after rocks\n", "");
            case 1 ->
                text.replace("free : yes/no", "free : one of yes_it_does, no_it_does_not")
                        .replace("require free", "require free is yes_it_does");
            case 2 ->
                text.replace("observe turning : one of freely, stiffly ask \"How does it turn?\" optional\n", "")
                        .replace("check turns \"It turns freely\" { require turning is freely }\n", "");
            case 3 -> text.replace("decide at 95 %", "decide at 60 %");
            default -> text;
        });
    }

    private static List<Comparison> compared(String old, String now, List<String> sheets) {
        return Kept.replay(old, now).compare(Kept.filed(sheets)).toList();
    }

    @Property(tries = 60)
    void a_revision_differs_nowhere_from_itself(
            @ForAll("revisions") String revision, @ForAll("archives") List<String> sheets) {
        assertThat(compared(revision, revision, sheets)).noneMatch(Comparison.Differs.class::isInstance);
    }

    @Property(tries = 60)
    void old_and_new_exchanged_exchange_each_movement(
            @ForAll("revisions") String old, @ForAll("revisions") String now, @ForAll("archives") List<String> sheets) {
        List<Comparison> forwards = compared(old, now, sheets);
        List<Comparison> backwards = compared(now, old, sheets);

        for (int i = 0; i < sheets.size(); i++) {
            if (forwards.get(i) instanceof Comparison.Differs differs) {
                assertThat(backwards.get(i))
                        .isInstanceOfSatisfying(
                                Comparison.Differs.class,
                                back -> assertThat(movements(exchanged(back))).isEqualTo(movements(differs)));
            } else if (forwards.get(i) instanceof Comparison.Damaged damaged) {
                assertThat(backwards.get(i))
                        .isInstanceOfSatisfying(
                                Comparison.Damaged.class,
                                back -> assertThat(back.problems())
                                        .containsExactlyInAnyOrderElementsOf(damaged.problems()));
            } else {
                assertThat(backwards.get(i)).isEqualTo(forwards.get(i));
            }
        }
    }

    private static Comparison.Differs exchanged(Comparison.Differs differs) {
        List<CheckMoved> checks = differs.checks().stream()
                .map(moved -> new CheckMoved(
                        moved.name(),
                        moved.title(),
                        /* before= */ moved.after(),
                        /* after= */ moved.before(),
                        moved.changes().stream()
                                .map(change -> new Change(
                                        change.what(), /* before= */ change.after(), /* after= */ change.before()))
                                .toList()))
                .toList();
        return new Comparison.Differs(
                differs.place(),
                differs.job(),
                /* before= */ differs.after(),
                /* after= */ differs.before(),
                checks,
                /* onlyOldKnows= */ differs.onlyNewKnows(),
                /* onlyNewKnows= */ differs.onlyOldKnows());
    }

    /** All that a difference says, but in no order of its checks. */
    private static Set<Object> movements(Comparison.Differs differs) {
        Set<Object> all = new HashSet<>(differs.checks());
        all.add(List.of(differs.before(), differs.after(), differs.onlyOldKnows(), differs.onlyNewKnows()));
        return all;
    }

    @Property(tries = 40)
    void the_order_of_the_sheets_changes_only_the_order_of_the_comparisons(
            @ForAll("archives") List<String> sheets, @ForAll("revisions") String now) {
        Replay replay = Kept.replay(Kept.OLD, now);
        List<Filed> filed = Kept.filed(sheets).toList();
        List<Filed> reversed = new ArrayList<>(filed);
        java.util.Collections.reverse(reversed);

        List<Comparison> forwards = replay.compare(filed.stream()).toList();
        List<Comparison> backwards = replay.compare(reversed.stream()).toList();

        assertThat(IntStream.range(0, sheets.size())
                        .mapToObj(i -> backwards.get(sheets.size() - 1 - i))
                        .toList())
                .isEqualTo(forwards);
        assertThat(counts(replay, backwards)).isEqualTo(counts(replay, forwards));
    }

    @Property(tries = 40)
    void each_sheet_is_counted_once(@ForAll("archives") List<String> sheets, @ForAll("revisions") String now) {
        Replay replay = Kept.replay(Kept.OLD, now);
        Tally tally = Tally.of(replay);
        replay.compare(Kept.filed(sheets)).forEach(tally::add);

        assertThat(tally.sheets()).isEqualTo(sheets.size());
        assertThat(tally.judged()).isEqualTo(tally.same() + tally.differing());
        assertThat(tally.releases().stream().mapToLong(Tally.Moved::engines).sum())
                .isLessThanOrEqualTo(tally.differing());
    }

    private static String counts(Replay replay, List<Comparison> compared) {
        Tally tally = Tally.of(replay);
        compared.forEach(tally::add);
        return ReplayJson.of(tally);
    }
}

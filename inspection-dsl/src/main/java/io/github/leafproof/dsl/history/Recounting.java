package io.github.leafproof.dsl.history;

import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.history.Finding.Seen;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Makes the history of an engine from the judgements on its sheets. */
public final class Recounting {

    /** More than anybody wants to read behind a finding. */
    private static final int MOST_NAMED = 10;

    private final List<Judgement> judgements;
    private final List<Sighting> sightings = new ArrayList<>();

    private Recounting(List<Judgement> judgements) {
        this.judgements = List.copyOf(judgements);
        judgements.forEach(judgement -> sightings.add(new Sighting(judgement, sightings.size() + 1)));
    }

    /**
     * The history.
     *
     * @param judgements of one engine, in the order that {@link OneEngine#inOrder} puts its sheets into; one at least
     * @param units the units that texts show their numbers in
     */
    public static History of(List<Judgement> judgements, UnitSystem units) {
        return new Recounting(judgements).history(units);
    }

    private History history(UnitSystem units) {
        Evidence.Files files = judgements.get(0).evidence().files();
        List<History.Look> looks = new ArrayList<>();
        judgements.forEach(judgement -> looks.add(look(judgement, looks.size() + 1)));
        List<Followed> values = values();
        return new History(
                files.card().content().model(),
                files.card().content().maker(),
                Objects.requireNonNull(files.sheet().content().engine().serial()),
                looks,
                findings(),
                values,
                Remarks.of(looks, values),
                units);
    }

    private static History.Look look(Judgement judgement, int number) {
        Evidence.Files files = judgement.evidence().files();
        JobSheet sheet = files.sheet().content();
        return new History.Look(
                number,
                sheet.sheet(),
                sheet.date(),
                sheet.runningTime(),
                sheet.engine().condition(),
                sheet.engine().variant(),
                judgement.graph().identity(),
                judgement.release().release(),
                Report.Input.of(files.sheet()),
                Report.Input.of(files.card()),
                Report.Input.of(files.tray()));
    }

    /** By name: what procedures call alike is taken to be the same. */
    private List<Followed> values() {
        Map<String, Map<Sighting, Node>> byName = new LinkedHashMap<>();
        for (Sighting sighting : sightings) {
            for (Node node : sighting.followed()) {
                if (sighting.of(node).isPresent()) {
                    byName.computeIfAbsent(node.name(), name -> new LinkedHashMap<>())
                            .put(sighting, node);
                }
            }
        }
        return byName.entrySet().stream()
                .filter(named -> named.getValue().size() > 1)
                .map(named -> Following.of(named.getKey(), named.getValue()))
                .toList();
    }

    private List<Finding> findings() {
        Map<String, List<Seen>> seen = new LinkedHashMap<>();
        Map<String, Node.Check> latest = new LinkedHashMap<>();
        for (int look = 1; look <= judgements.size(); look++) {
            Judgement judgement = judgements.get(look - 1);
            for (Node.Check check : judgement.graph().checks()) {
                seen.computeIfAbsent(check.name(), name -> new ArrayList<>()).add(Tracing.seen(judgement, check, look));
                latest.put(check.name(), check);
            }
        }
        List<Finding> findings = latest.values().stream()
                .flatMap(check ->
                        Optional.ofNullable(
                                Tracing.of(check, seen.getOrDefault(check.name(), List.of()), judgements.size()))
                                .stream())
                .toList();
        Map<Integer, List<String>> mended = new HashMap<>();
        for (Finding finding : findings) {
            if (finding.standing().isSettled()) {
                failedAt(finding)
                        .forEach(look -> mended.computeIfAbsent(look, at -> new ArrayList<>())
                                .add(finding.title()));
            }
        }
        return findings.stream()
                .map(finding -> isLeft(finding)
                        ? finding.withMended(mended.getOrDefault(finding.first(), List.of()).stream()
                                .limit(MOST_NAMED)
                                .toList())
                        : finding)
                .toList();
    }

    /** One fault put right is not the job closed: what failed beside it and was mended was not the cause of what is left. */
    private static boolean isLeft(Finding finding) {
        return !finding.standing().isSettled() && finding.latest() == Outcome.FAILS;
    }

    private static List<Integer> failedAt(Finding finding) {
        return finding.seen().stream()
                .filter(seen -> seen.asLeft().outcome() == Outcome.FAILS
                        || (seen.asFound() != null && seen.asFound().outcome() == Outcome.FAILS))
                .map(Seen::look)
                .toList();
    }
}

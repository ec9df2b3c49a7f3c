package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What of an inspection is still to be asked for.
 *
 * <p>Asked for is what is not known yet, is known to apply to this engine or may turn out to, and does not wait: at least
 * one check that rests on it has only gates before it that let through, or may still come to. What no check rests on is
 * asked for as well, since somebody wanted it on the sheet.
 */
final class Agenda {

    private final Judgement judgement;
    private final CheckGraph graph;
    private final Ties ties;
    private final Course course;
    private final LeafTrials trials;
    private final Map<String, Place> places = new LinkedHashMap<>();
    /** What is to be asked for as far as is known; it becomes less while it is looked at. */
    private final Set<String> asked = new HashSet<>();

    private Agenda(Judgement judgement, Ties ties, Course course) {
        this.judgement = judgement;
        this.graph = judgement.graph();
        this.ties = ties;
        this.course = course;
        this.trials = new LeafTrials(judgement, ties);
    }

    /** For each observation, by its name and in the order of the procedure, what has become of it. */
    static Map<String, Place> places(Judgement judgement, Ties ties, Course course) {
        Agenda agenda = new Agenda(judgement, ties, course);
        agenda.sort();
        return agenda.places;
    }

    private void sort() {
        Set<String> skipped = course.skipped();
        Map<String, Integer> putOff = course.timesPutOff();
        for (Node.Observation observation : graph.observations()) {
            String name = observation.name();
            Place place = place(observation);
            if (place == Place.TO_DO && skipped.contains(name)) {
                place = isEntered(observation) ? Place.DONE : Place.SKIPPED;
            } else if (place == Place.TO_DO && putOff.containsKey(name)) {
                place = Place.PUT_OFF;
            }
            places.put(name, place);
            if (place == Place.TO_DO || place == Place.PUT_OFF) {
                asked.add(name);
            }
        }
        leaveOutWhatWaits();
    }

    private boolean isEntered(Node.Observation observation) {
        return !(judgement.evidence().value(observation) instanceof Value.Missing);
    }

    /** Its place if nothing waited and nobody had passed over anything. */
    private Place place(Node.Observation observation) {
        if (judgement.evidence().value(observation) instanceof Value.Missing missing) {
            boolean tried = missing.lacks().stream().anyMatch(lack -> lack.kind() == Value.Lack.Kind.CANNOT);
            return tried ? Place.COULD_NOT : applies(observation) == Applies.NO ? Place.NOT_APPLICABLE : Place.TO_DO;
        }
        return trials.wouldSettle(observation) ? Place.TO_DO : Place.DONE;
    }

    private enum Applies {
        YES,
        NO,
        UNDECIDED
    }

    private Applies applies(Node.Observation observation) {
        List<Node.Check> checks = ties.checks(observation);
        if (!checks.isEmpty() && checks.stream().noneMatch(check -> concerns(check, observation))) {
            return Applies.NO;
        }
        if (observation.when() == null) {
            return Applies.YES;
        }
        Value applies = observation.when().value(judgement.frame());
        if (applies instanceof Value.Judged judged) {
            return judged.holds() ? Applies.YES : judged.outcome() == Outcome.FAILS ? Applies.NO : Applies.UNDECIDED;
        }
        return applies instanceof Value.Missing missing && missing.isNotAsked() ? Applies.NO : Applies.UNDECIDED;
    }

    /** What waits for something that waits itself waits as well, until nothing more is left out. */
    private void leaveOutWhatWaits() {
        boolean any = true;
        while (any) {
            any = false;
            boolean[] mayOpen = mayOpen();
            for (Node.Observation observation : graph.observations()) {
                if (asked.contains(observation.name()) && waits(observation, mayOpen)) {
                    asked.remove(observation.name());
                    places.put(observation.name(), Place.WAITING);
                    any = true;
                }
            }
        }
    }

    /** For each check whether it lets through, or may come to by what is still asked for. */
    private boolean[] mayOpen() {
        boolean[] mayOpen = new boolean[graph.checks().size()];
        for (int number : graph.checkOrder()) {
            Outcome outcome = judgement.verdicts().get(number).outcome();
            mayOpen[number] = outcome.letsThrough()
                    || (outcome != Outcome.FAILS
                            && ties.observationsOf().get(number).stream().anyMatch(asked::contains)
                            && isFree(graph.checks().get(number), mayOpen));
        }
        return mayOpen;
    }

    private static boolean isFree(Node.Check check, boolean[] mayOpen) {
        return check.after().stream().allMatch(gate -> mayOpen[gate]);
    }

    private boolean waits(Node.Observation observation, boolean[] mayOpen) {
        boolean undecided = applies(observation) == Applies.UNDECIDED
                && ties.decidedBy().getOrDefault(observation.name(), List.of()).stream()
                        .noneMatch(asked::contains);
        List<Node.Check> checks = ties.checks(observation);
        return undecided
                || (!checks.isEmpty()
                        && checks.stream()
                                .filter(check -> concerns(check, observation))
                                .noneMatch(check -> isFree(check, mayOpen)));
    }

    /** Whether a check is made on this engine. One that only lacks what may be left out would be, once that is entered. */
    private boolean concerns(Node.Check check, Node.Observation observation) {
        if (judgement.verdicts().get(check.number()).outcome() != Outcome.NOT_APPLICABLE) {
            return true;
        }
        return observation.optional()
                && (check.when() == null
                        || !(check.when().value(judgement.frame(check)) instanceof Value.Judged judged
                                && judged.outcome() == Outcome.FAILS));
    }
}

package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Ties;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

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
    private final LeafTrials trials;
    /** By the slot of each observation. */
    private final @Nullable Place[] places;
    /** What is to be asked for as far as is known, by its slot; it becomes less while it is looked at. */
    private final BitSet asked = new BitSet();

    private Agenda(Judgement judgement) {
        this.judgement = judgement;
        this.graph = judgement.graph();
        this.ties = graph.ties();
        this.trials = new LeafTrials(judgement);
        this.places = new Place[graph.slots()];
    }

    static Agenda of(Judgement judgement, Course course) {
        Agenda agenda = new Agenda(judgement);
        agenda.sort(course);
        return agenda;
    }

    /** What has become of an observation. */
    Place place(Node.Observation observation) {
        return Objects.requireNonNull(places[observation.slot()]);
    }

    /** What has become of all, in the order of the procedure. */
    List<Place> places() {
        return graph.observations().stream().map(this::place).toList();
    }

    /** Whether it is still to be asked for, now or later. */
    boolean isAskedFor(Node.Observation observation) {
        return asked.get(observation.slot());
    }

    private void sort(Course course) {
        Set<String> skipped = course.skipped();
        Map<String, Integer> putOff = course.timesPutOff();
        for (Node.Observation observation : graph.observations()) {
            String name = observation.name();
            Place place = placeByItself(observation);
            if (place == Place.TO_DO && skipped.contains(name)) {
                place = isEntered(observation) ? Place.DONE : Place.SKIPPED;
            } else if (place == Place.TO_DO && putOff.containsKey(name)) {
                place = Place.PUT_OFF;
            }
            places[observation.slot()] = place;
            asked.set(observation.slot(), place == Place.TO_DO || place == Place.PUT_OFF);
        }
        leaveOutWhatWaits();
    }

    private boolean isEntered(Node.Observation observation) {
        return !(judgement.evidence().value(observation) instanceof Value.Missing);
    }

    /** Its place if nothing waited and nobody had passed over anything. */
    private Place placeByItself(Node.Observation observation) {
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
                if (isAskedFor(observation) && waits(observation, mayOpen)) {
                    asked.clear(observation.slot());
                    places[observation.slot()] = Place.WAITING;
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
                            && anyAskedFor(ties.observations(graph.checks().get(number)))
                            && isFree(graph.checks().get(number), mayOpen));
        }
        return mayOpen;
    }

    private boolean anyAskedFor(List<Node.Observation> observations) {
        for (Node.Observation observation : observations) {
            if (isAskedFor(observation)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isFree(Node.Check check, boolean[] mayOpen) {
        return check.after().stream().allMatch(gate -> mayOpen[gate]);
    }

    private boolean waits(Node.Observation observation, boolean[] mayOpen) {
        boolean undecided = applies(observation) == Applies.UNDECIDED && !anyAskedFor(ties.deciding(observation));
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

package io.github.leafproof.dsl.history;

import io.github.leafproof.dsl.formula.Account;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.dsl.history.Finding.Result;
import io.github.leafproof.dsl.history.Finding.Seen;
import io.github.leafproof.dsl.history.Finding.Standing;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Traces one check over all looks: what it found, what was done about it, and whether that helped. */
final class Tracing {

    private final List<Seen> seen;
    private final int looks;
    private int first;
    private int lastLook;
    private int troubles;
    private Result latest = new Result(Outcome.UNTESTED, null);
    private @Nullable Integer remedied;
    private @Nullable Integer remedy;
    private boolean adjustedSince;

    private Tracing(List<Seen> seen, int looks) {
        this.seen = seen;
        this.looks = looks;
    }

    /** What a check came to at one look. */
    static Seen seen(Judgement judgement, Node.Check check, int look) {
        Verdict left = judgement.verdicts().get(check.number());
        Result asFound = judgement
                .asFound(check)
                .map(found -> result(
                        found,
                        Account.of(check.requirement(), judgement.frameAsFound(check))
                                .value()))
                .orElse(null);
        return new Seen(
                look,
                asFound,
                result(
                        left,
                        Account.of(check.requirement(), judgement.frame(check)).value()),
                adjustments(judgement, check));
    }

    private static Result result(Verdict verdict, String value) {
        return new Result(verdict.outcome(), verdict.conformity() == null || value.isEmpty() ? null : value);
    }

    private static List<String> adjustments(Judgement judgement, Node.Check check) {
        List<String> adjusted = new ArrayList<>();
        for (Node.Observation observation : judgement.graph().observationsOf(check)) {
            for (Evidence.Statement said : judgement.evidence().statements(observation)) {
                if (said.entry().given() instanceof Given.Adjusted given) {
                    adjusted.add(observation.name() + (given.turn() == null ? "" : " by " + given.turn()));
                }
            }
        }
        return adjusted;
    }

    /**
     * What a check found; null where it never found anything, and nothing was adjusted that nobody looked at again.
     *
     * @param check the check as the latest procedure has it
     * @param looks how many looks there were
     */
    static @Nullable Finding of(Node.Check check, List<Seen> seen, int looks) {
        Tracing tracing = new Tracing(seen, looks);
        seen.forEach(tracing::follow);
        return tracing.troubles > 0 || tracing.adjustedSince ? tracing.finding(check) : null;
    }

    private void follow(Seen at) {
        if (at.asFound() != null) {
            judged(at.asFound(), at.look());
        }
        if (!at.adjusted().isEmpty()) {
            adjustedSince = true;
            first = troubles == 0 ? at.look() : first;
            remedy = troubles > 0 ? Integer.valueOf(at.look()) : remedy;
        }
        judged(at.asLeft(), at.look());
    }

    private void judged(Result result, int look) {
        if (!result.isJudged()) {
            return;
        }
        if (result.isTrouble()) {
            first = troubles == 0 ? look : first;
            // Whatever was done before it was found once more has not helped.
            remedied = remedy;
            troubles++;
        } else {
            remedy = troubles > 0 ? Integer.valueOf(look) : remedy;
        }
        adjustedSince = false;
        latest = result;
        lastLook = look;
    }

    private Finding finding(Node.Check check) {
        return new Finding(
                check.name(),
                check.title(),
                check.severity(),
                seen,
                standing(),
                first,
                lastLook,
                latest.outcome(),
                standing() == Standing.CLOSED || standing() == Standing.PUT_RIGHT ? remedy : remedied,
                lastLook < looks,
                adjustedSince,
                List.of());
    }

    private Standing standing() {
        if (adjustedSince) {
            return Standing.NOT_LOOKED_AT_AGAIN;
        }
        if (latest.isTrouble()) {
            if (remedied != null) {
                return Standing.REMAINS;
            }
            return lastLook < looks ? Standing.NOT_LOOKED_AT_AGAIN : Standing.STANDS;
        }
        if (lastTrouble() < lastLook) {
            return Standing.CLOSED;
        }
        return remedied == null ? Standing.PUT_RIGHT : Standing.COMES_BACK;
    }

    private int lastTrouble() {
        return seen.stream()
                .filter(at -> at.asLeft().isTrouble()
                        || (at.asFound() != null && at.asFound().isTrouble()))
                .mapToInt(Seen::look)
                .max()
                .orElseThrow();
    }
}

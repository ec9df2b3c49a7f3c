package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.util.List;
import java.util.Set;

/** Why an engine is released, held, rejected or not yet decided about, in a sentence. */
public final class ReleaseWords {

    private static final int MOST_NAMED = 6;

    private ReleaseWords() {}

    /** The sentence for a judgement. */
    public static String of(Judgement judgement) {
        Release release = judgement.release().release();
        List<String> because = because(judgement);
        if (because.isEmpty()) {
            return release == Release.READY
                    ? "Every check that applies to this engine is met."
                    : "The procedure's own rule says so whenever none of its other cases holds.";
        }
        String begins = switch (release) {
            case READY -> "Ready: ";
            case HOLD -> "Not to go on before this is settled: ";
            case REJECT -> "Not fit as it is: ";
            case UNFINISHED -> "Not everything is known yet: ";
        };
        String named = String.join("; ", because.stream().limit(MOST_NAMED).toList());
        int more = because.size() - MOST_NAMED;
        return begins + named + (more > 0 ? "; and " + more + " more" : "") + ".";
    }

    private static List<String> because(Judgement judgement) {
        Set<String> names = Set.copyOf(judgement.release().because());
        return judgement.verdicts().stream()
                .filter(verdict -> names.contains(verdict.check().name()))
                .map(ReleaseWords::words)
                .toList();
    }

    private static String words(Verdict verdict) {
        return "\"" + verdict.check().title() + "\" " + said(verdict.outcome());
    }

    /** An outcome as a sentence's end. */
    static String said(Outcome outcome) {
        return switch (outcome) {
            case PASSES -> "passes";
            case TOLERATED -> "is tolerated";
            case FAILS -> "fails";
            case OPEN -> "is open";
            case CONTRADICTED -> "is contradicted by its own evidence";
            case UNTESTED -> "is untested";
            case BLOCKED -> "is blocked";
            case NOT_APPLICABLE -> "does not apply";
        };
    }
}

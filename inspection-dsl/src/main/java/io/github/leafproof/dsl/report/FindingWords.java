package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.history.Finding;
import io.github.leafproof.inspection.verdict.Outcome;

/** How the matter of a finding stands, in a sentence or two. */
final class FindingWords {

    private FindingWords() {}

    static String of(Finding finding) {
        return standing(finding) + since(finding) + mended(finding);
    }

    private static String standing(Finding finding) {
        String found = (isOpen(finding) ? "Left open at look " : "Found at look ") + finding.first();
        return switch (finding.standing()) {
            case REMAINS -> remains(finding);
            case STANDS ->
                found + (finding.lastLook() > finding.first() ? " and still there at look " + finding.lastLook() : "")
                        + ", and nothing is written down that was done about it.";
            case COMES_BACK ->
                "It was all right at look " + finding.remedied() + ", was there again at look " + finding.lastLook()
                        + " and has been put right once more: its cause was not found.";
            case NOT_LOOKED_AT_AGAIN ->
                finding.adjustedSince()
                        ? "It was adjusted at look " + finding.lastAdjusted() + ", and not looked at after that."
                        : found + ", and no later look went back to it.";
            case PUT_RIGHT -> "Put right at look " + finding.lastLook() + "; the next look has to show that it lasts.";
            case CLOSED -> found + "; look " + finding.lastLook() + " shows it to be all right.";
        };
    }

    private static boolean isOpen(Finding finding) {
        return finding.latest() == Outcome.OPEN;
    }

    private static String remains(Finding finding) {
        Integer remedied = finding.remedied();
        return remedied != null && remedied < finding.lastLook()
                ? "It was all right at look " + remedied + ", and is there again at look " + finding.lastLook()
                        + ": its cause was not found."
                : "Something was done about it at look " + remedied + ", and it is there all the same.";
    }

    private static String since(Finding finding) {
        boolean said = finding.standing() != Finding.Standing.REMAINS && finding.standing() != Finding.Standing.STANDS;
        return finding.unseenSince() && !said ? " No later look went back to it." : "";
    }

    private static String mended(Finding finding) {
        return finding.mended().isEmpty()
                ? ""
                : " Put right meanwhile, and not the cause: " + String.join("; ", finding.mended())
                        + ". One fault put right does not close the job.";
    }
}

package io.github.leafproof.dsl.seal;

import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Report;
import java.util.List;
import java.util.Optional;

/**
 * What is left of a report's promise: whether it is the one that was sealed, by whom, whether every file that it rests on is
 * still the same, and whether these files say what it says.
 *
 * @param name the report's file as it was named
 * @param report what it says; empty where it cannot be read
 * @param seal whether it is the one that was sealed
 * @param key the key that its seal names
 * @param knownAs the file among those given that holds this key; empty where none does
 * @param keysGiven whether anybody said whose key it should be
 * @param files the files that it rests on, as far as the report can be read
 * @param again what these files say today
 * @param problems everything that is wrong
 */
public record Verification(
        String name,
        Optional<Report> report,
        SealState seal,
        Optional<VerifyingKey> key,
        Optional<String> knownAs,
        boolean keysGiven,
        List<FoundFile> files,
        Again again,
        List<Problem> problems) {

    public Verification {
        files = List.copyOf(files);
        problems = List.copyOf(problems);
    }

    /** What the seal says. */
    public enum SealState {
        /** The report is the one that was sealed. */
        HOLDS,
        /** The report was changed since, or is another one. */
        REPORT_CHANGED,
        /** The seal was changed, so that nothing is told of the report. */
        SEAL_CHANGED,
        /** There is none. */
        NO_SEAL
    }

    /** What the files say when they are judged again. */
    public enum Again {
        /** The same report, byte for byte. */
        SAME,
        /** The same decisions in other words: another version of the program made it. */
        OTHER_WORDS,
        /** Something else was decided. */
        OTHER_DECISIONS,
        /** They cannot be judged: one is missing or changed, or they do not go together. */
        NOT_JUDGED
    }

    /** What it comes to. */
    public enum State {
        /** All is as it was when it was sealed, by a key that was asked for. */
        VERIFIED,
        /** Nothing is wrong, and not everything could be told. */
        UNFINISHED,
        /** Something was changed, or sealed by somebody else. */
        BROKEN
    }

    /** Whether the key that its seal names is none of those that were asked for. */
    public boolean isByAnotherKey() {
        return keysGiven && key.isPresent() && knownAs.isEmpty();
    }

    /** What it comes to. */
    public State state() {
        boolean changed = seal == SealState.REPORT_CHANGED
                || seal == SealState.SEAL_CHANGED
                || files.stream().anyMatch(file -> file.state() == FoundFile.State.CHANGED)
                || again == Again.OTHER_DECISIONS
                || isByAnotherKey();
        if (changed) {
            return State.BROKEN;
        }
        boolean all = seal == SealState.HOLDS
                && knownAs.isPresent()
                && report.isPresent()
                && files.stream().allMatch(file -> file.state() == FoundFile.State.UNCHANGED);
        return all ? State.VERIFIED : State.UNFINISHED;
    }

    /**
     * Verifies a report.
     *
     * @param report its file
     * @param seal the file of its seal; empty where there is none
     * @param keys the public keys that it may have been sealed with; none where that does not matter
     * @param places where the files may lie that it rests on
     */
    public static Verification of(
            Document<byte[]> report,
            Optional<Document<byte[]>> seal,
            List<Document<VerifyingKey>> keys,
            Places places) {
        return new Verifying(report, seal, keys, places).verification();
    }
}

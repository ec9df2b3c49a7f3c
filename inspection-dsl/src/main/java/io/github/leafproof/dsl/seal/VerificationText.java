package io.github.leafproof.dsl.seal;

import io.github.leafproof.dsl.report.Lines;
import io.github.leafproof.dsl.report.Paint;
import io.github.leafproof.dsl.seal.Verification.SealState;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What became of a report's promise, as a person reads it in a terminal: what it comes to first, then what it rests on. */
public final class VerificationText {

    private final Verification verification;
    private final Paint paint;
    private final Lines text = new Lines();

    private VerificationText(Verification verification, Paint paint) {
        this.verification = verification;
        this.paint = paint;
    }

    /** The text, lines ending in {@code \n}. */
    public static String of(Verification verification, boolean colour) {
        return new VerificationText(verification, Paint.of(colour)).print();
    }

    private String print() {
        text.line(paint.strong(verification.name()));
        field("report", verification.report().map(VerificationText::words).orElse("cannot be read"));
        field("seal", sealed());
        verification.key().ifPresent(this::key);
        verification.files().forEach(this::file);
        field("judged again", again());
        text.line("");
        return text + verdict();
    }

    private void field(String name, String words) {
        text.line(String.format(Locale.ROOT, "  %-14s", name) + words);
    }

    private static String words(Report report) {
        return report.procedure().title() + " (" + report.procedure().name() + ", revision "
                + report.procedure().revision() + "), " + report.date() + ": "
                + report.release().word().toUpperCase(Locale.ROOT);
    }

    private String sealed() {
        return switch (verification.seal()) {
            case HOLDS -> paint.outcome(Outcome.PASSES, "holds") + ": not a byte was changed since it was sealed";
            case REPORT_CHANGED -> paint.outcome(Outcome.FAILS, "BROKEN") + ": this is not the report that was sealed";
            case SEAL_CHANGED ->
                paint.outcome(Outcome.FAILS, "BROKEN")
                        + ": the seal itself was changed, or was never one of this report";
            case NO_SEAL -> "none: anybody may have written this report";
        };
    }

    private void key(VerifyingKey key) {
        field("key", key.fingerprint());
        field(
                "",
                verification
                        .knownAs()
                        .map(file -> "that of " + file)
                        .orElse(
                                verification.keysGiven()
                                        ? "NONE of the keys that were named"
                                        : "whose it is nobody said with --key"));
    }

    private void file(FoundFile file) {
        String name =
                file.file() == null ? file.named().name() : file.orElseThrow().name();
        String state = switch (file.state()) {
            case UNCHANGED -> paint.outcome(Outcome.PASSES, "unchanged  ");
            case CHANGED -> paint.outcome(Outcome.FAILS, "CHANGED    ");
            case MISSING -> paint.outcome(Outcome.OPEN, "NOT FOUND  ");
        };
        field(file.named().role().word(), state + name);
    }

    private String again() {
        return switch (verification.again()) {
            case SAME -> "the same files give the same report, byte for byte";
            case OTHER_WORDS -> "the same files decide alike, in another text";
            case OTHER_DECISIONS -> "the same files DECIDE OTHERWISE";
            case NOT_JUDGED ->
                verification.seal() == SealState.REPORT_CHANGED
                        ? "no: the report is another one"
                        : any(FoundFile.State.CHANGED)
                                ? "no: a file was changed"
                                : any(FoundFile.State.MISSING)
                                        ? "no: a file is not found"
                                        : "no: the files cannot be judged";
        };
    }

    /** What it comes to, in a word and a sentence; colour has no width, so it is laid on after the lines are broken. */
    private String verdict() {
        return switch (verification.state()) {
            case VERIFIED ->
                verdict(Outcome.PASSES, "VERIFIED", "report and files are those that were sealed, with the shop's key");
            case UNFINISHED -> verdict(Outcome.OPEN, "NOT ALL VERIFIED", unfinished());
            case BROKEN -> verdict(Outcome.FAILS, "NOT VERIFIED", String.join("; ", wrong()));
        };
    }

    private String verdict(Outcome like, String word, String words) {
        Lines lines = new Lines();
        lines.block("", word + ": " + words);
        return paint.outcome(like, word) + lines.toString().substring(word.length());
    }

    private boolean any(FoundFile.State state) {
        return count(state) > 0;
    }

    private long count(FoundFile.State state) {
        return verification.files().stream()
                .filter(file -> file.state() == state)
                .count();
    }

    private List<String> wrong() {
        List<String> wrong = new ArrayList<>();
        if (verification.seal() == SealState.REPORT_CHANGED) {
            wrong.add("the report is not the one that was sealed");
        }
        if (verification.seal() == SealState.SEAL_CHANGED) {
            wrong.add("the seal was changed");
        }
        if (verification.isByAnotherKey()) {
            wrong.add("it was sealed with another key");
        }
        if (any(FoundFile.State.CHANGED)) {
            wrong.add("of the files that it rests on " + count(FoundFile.State.CHANGED) + " changed");
        }
        if (verification.again() == Verification.Again.OTHER_DECISIONS) {
            wrong.add("its files decide otherwise");
        }
        return wrong;
    }

    private String unfinished() {
        return switch (verification.seal()) {
            case NO_SEAL -> "without a seal nobody answers for the report";
            case HOLDS, REPORT_CHANGED, SEAL_CHANGED ->
                verification.report().isEmpty()
                        ? "the report is the one that was sealed, and this program cannot read it"
                        : !verification.keysGiven()
                                ? "the report is the one that was sealed, by whoever has that key; name the shop's public"
                                        + " key with --key"
                                : "the report is the one that was sealed, and not all files that it rests on were found";
        };
    }
}

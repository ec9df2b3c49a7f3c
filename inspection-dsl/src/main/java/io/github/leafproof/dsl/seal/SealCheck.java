package io.github.leafproof.dsl.seal;

import io.github.leafproof.dsl.seal.Verification.SealState;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.FileMistake;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Seal;
import io.github.leafproof.inspection.record.SealFile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A seal held against the bytes of its report. It holds a signature and a digest of the same bytes: where one of the two does
 * not fit, the seal was changed, and where neither does, the report.
 *
 * @param state whether the report is the one that was sealed
 * @param key the key that the seal names, as far as it names one
 * @param seal what it says
 * @param problems what is wrong with the seal
 */
record SealCheck(
        SealState state,
        @Nullable VerifyingKey key,
        @Nullable Seal seal,
        List<Problem> problems) {

    private static final String TAKE_THE_SEAL = "take the seal that was handed over, or have the report sealed again";

    /** Of a report without a seal. */
    static SealCheck noSeal(String report) {
        return new SealCheck(
                SealState.NO_SEAL,
                null,
                null,
                List.of(new Problem(
                        FileMistake.LP787.name(),
                        report,
                        "",
                        "there is no seal beside this report",
                        "a seal is handed over with its report, as a file of the same name with .seal behind it;"
                                + " inspect --sign makes one")));
    }

    /** Holds them against each other, and the seal against the keys that it may have been made with. */
    static SealCheck of(Document<byte[]> report, Document<byte[]> sealFile, List<Document<VerifyingKey>> keys) {
        Read<Document<Seal>> read = SealFile.parse(sealFile.name(), sealFile.content());
        if (read.value().isEmpty()) {
            return new SealCheck(SealState.SEAL_CHANGED, null, null, read.problems());
        }
        Document<Seal> document = read.orElseThrow();
        Seal seal = document.content();
        byte[] signature = Base64.getDecoder().decode(seal.signature());
        @Nullable
        VerifyingKey key =
                VerifyingKey.of(Base64.getDecoder().decode(seal.publicKey())).orElse(null);
        boolean signed = key != null && key.verifies(report.content(), signature);
        boolean sameDigest = seal.sha256().equals(report.sha256());
        boolean signedByAnother = keys.stream().anyMatch(each -> each.content().verifies(report.content(), signature));
        if (!signed && !sameDigest && !signedByAnother) {
            return new SealCheck(SealState.REPORT_CHANGED, key, seal, List.of());
        }
        List<Problem> problems = new ArrayList<>();
        if (!signed) {
            problems.add(
                    signedByAnother
                            ? problem(document, "$.public_key", "this is not the key that made the signature")
                            : problem(
                                    document,
                                    "$.signature",
                                    "this signature was not made of the report with the key that the seal names; one of"
                                            + " the two was changed, and the report was not"));
        }
        if (!sameDigest) {
            problems.add(
                    problem(document, "$.sha256", "the digest here is not that of the report, and the signature is"));
        }
        if (problems.isEmpty()) {
            strewn(sealFile, seal).ifPresent(problems::add);
        }
        return new SealCheck(problems.isEmpty() ? SealState.HOLDS : SealState.SEAL_CHANGED, key, seal, problems);
    }

    /** Something between the values that no signature covers: the program writes a seal in one way only. */
    private static Optional<Problem> strewn(Document<byte[]> file, Seal seal) {
        byte[] written = SealFile.toJson(seal).getBytes(StandardCharsets.UTF_8);
        return Difference.of(file.content(), written)
                .map(other -> new Problem(
                        FileMistake.LP790.name(),
                        file.name(),
                        other.place(),
                        "this is not how a seal is written, though its signature holds",
                        TAKE_THE_SEAL));
    }

    private static Problem problem(Document<Seal> seal, String path, String message) {
        return new Problem(FileMistake.LP790.name(), seal.name(), seal.place(path), message, TAKE_THE_SEAL);
    }

    /** The report that was sealed, where it is among these texts. */
    Optional<byte[]> sealedOne(List<byte[]> texts) {
        return texts.stream()
                .filter(text -> key != null
                        && seal != null
                        && key.verifies(text, Base64.getDecoder().decode(seal.signature())))
                .findFirst();
    }
}

package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.seal.SigningKey;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.ReportFile;
import io.github.leafproof.inspection.record.SealFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a command that writes a report does about its seal.
 *
 * @param key what it seals with; null where nobody asked for a seal
 */
record Sealing(@Nullable SigningKey key, Console console) {

    /**
     * What {@code --sign} asks for; empty after telling why that cannot be had.
     *
     * @param sign the file of the private key; null where the option is not given
     * @param report where the report is written as JSON; null where it is not
     */
    static Optional<Sealing> with(@Nullable Path sign, @Nullable Path report, Console console) {
        if (sign == null) {
            return Optional.of(new Sealing(null, console));
        }
        if (report == null) {
            console.err().print("""
                    leafproof: --sign has nothing to seal
                       help: a seal is made of the report's file; name one with --json
                    """);
            return Optional.empty();
        }
        if (new Target(report, "--json", "report").overwrites(sign, console)
                || new Target(SealFile.of(report), "--sign", "seal").overwrites(sign, console)) {
            return Optional.empty();
        }
        Read<Document<SigningKey>> read = SigningKey.read(sign);
        console.complainOfFiles(read.problems());
        return read.value().map(key -> new Sealing(key.content(), console));
    }

    /** Whether all is well with the seal of a report that was written there; tells why where it is not. */
    boolean seals(Path file, Report report) {
        return key == null
                || console.wrote(
                        SealFile.of(file),
                        SealFile.toJson(key.seal(ReportFile.toJson(report).getBytes(StandardCharsets.UTF_8))));
    }
}

package io.github.leafproof.inspection.record;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

/** Writes reports and reads them back; {@code docs/formats.md} says what one holds. */
public final class ReportFile {
    private ReportFile() {}

    /** The report as JSON text. The same report gives the same text on every machine. */
    public static String toJson(Report report) {
        return JsonWriting.text(ReportWriting.report(report));
    }

    /** The SHA-256 digest of the bytes that {@link #write} writes: by it the same report on paper knows its file. */
    public static String sha256(Report report) {
        return FileBytes.sha256(toJson(report).getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes the report, UTF-8, in place of whatever the file held. When that fails, the old content is still whole.
     *
     * @return why it could not be written; empty when it was
     */
    public static Optional<Problem> write(Path file, Report report) {
        return AtomicFile.write(file, toJson(report).getBytes(StandardCharsets.UTF_8));
    }

    /** The report in this file, equal to the one written, or all that is wrong with the file. */
    public static Read<Document<Report>> read(Path file) {
        return JsonFile.read(file, ReportReading::report);
    }

    /**
     * The report in these bytes, or all that is wrong with it.
     *
     * @param name what problems call the file
     */
    public static Read<Document<Report>> parse(String name, byte[] bytes) {
        return JsonFile.parse(name, bytes, ReportReading::report);
    }
}

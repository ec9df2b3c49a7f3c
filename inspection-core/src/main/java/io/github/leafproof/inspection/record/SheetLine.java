package io.github.leafproof.inspection.record;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One line of an archive that holds a job sheet in each of its lines, as it was found; not yet read. */
public final class SheetLine {
    private final String file;
    private final long number;
    private final byte[] bytes;
    private final @Nullable Problem unusable;

    private SheetLine(String file, long number, byte[] bytes, @Nullable Problem unusable) {
        this.file = file;
        this.number = number;
        this.bytes = bytes;
        this.unusable = unusable;
    }

    /**
     * A line.
     *
     * @param file what problems call the file
     * @param number which line of it, from 1
     * @param bytes what stands in it, without its end
     */
    public static SheetLine of(String file, long number, byte[] bytes) {
        return new SheetLine(file, number, bytes.clone(), null);
    }

    /** The same without a copy, for whoever made the bytes and does not touch them again. */
    static SheetLine handedOver(String file, long number, byte[] bytes) {
        return new SheetLine(file, number, bytes, null);
    }

    /** A line that nobody could hold or get at. */
    static SheetLine unusable(String file, long number, FileMistake mistake, String message, String help) {
        Problem problem = new Problem(mistake.name(), file, number + ":1", message, help);
        return new SheetLine(file, number, new byte[0], problem);
    }

    /** What problems call the file. */
    public String file() {
        return file;
    }

    /** Which line of the file it is, from 1. */
    public long number() {
        return number;
    }

    /** How much memory it takes, in bytes. */
    public int size() {
        return bytes.length;
    }

    /** Whether nothing stands in it but blanks. */
    public boolean isBlank() {
        for (byte each : bytes) {
            if (each != ' ' && each != '\t' && each != '\r') {
                return false;
            }
        }
        return unusable == null;
    }

    /**
     * The sheet, or all that is wrong with it. The places of its problems and of its entries are those in the whole file;
     * its digest is that of the line without its end.
     */
    public Read<Document<JobSheet>> sheet() {
        return Optional.ofNullable(unusable)
                .<Read<Document<JobSheet>>>map(problem -> new Read.Refused<>(List.of(problem)))
                .orElseGet(() -> JsonFile.parse(file, bytes, number, SheetReading::sheet));
    }
}

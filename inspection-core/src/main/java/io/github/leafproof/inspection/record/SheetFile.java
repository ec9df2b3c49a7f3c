package io.github.leafproof.inspection.record;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;

/** Reads job sheets and writes them; {@code docs/formats.md} says what one holds. */
public final class SheetFile {
    private static final Set<String> TELLING = Set.of("sheet", "procedure", "revision", "entries");

    private SheetFile() {}

    /** The sheet in this file, or all that is wrong with it. */
    public static Read<Document<JobSheet>> read(Path file) {
        return JsonFile.read(file, SheetReading::sheet);
    }

    /**
     * The sheet in these bytes, or all that is wrong with it.
     *
     * @param name what problems and reports call the file
     */
    public static Read<Document<JobSheet>> parse(String name, byte[] bytes) {
        return JsonFile.parse(name, bytes, SheetReading::sheet);
    }

    /**
     * The sheet as JSON text. The same sheet gives the same text on every machine, and the text read back gives the same
     * sheet, but for the places of its entries.
     */
    public static String toJson(JobSheet sheet) {
        return JsonWriting.text(SheetWriting.sheet(sheet));
    }

    /**
     * Writes the sheet, UTF-8, in place of whatever the file held. When that fails, the old content is still whole.
     *
     * @return why it could not be written; empty when it was
     */
    public static Optional<Problem> write(Path file, JobSheet sheet) {
        return AtomicFile.write(file, toJson(sheet).getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Whether a file is meant to be a job sheet, sound or not: in a folder, cards, trays and reports may lie among the
     * sheets. What is no JSON may have been one; what is, has one of the keys by which only a sheet begins.
     */
    public static boolean isMeantBy(Path file) {
        return JsonFile.isMeant(
                file, keys -> !keys.contains("format") && keys.stream().anyMatch(TELLING::contains));
    }
}

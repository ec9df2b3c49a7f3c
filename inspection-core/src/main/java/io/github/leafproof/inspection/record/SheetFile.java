package io.github.leafproof.inspection.record;

import java.nio.file.Path;

/** Reads job sheets; {@code docs/formats.md} says what one holds. */
public final class SheetFile {
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
}

package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.gauge.GaugeTray;
import java.nio.file.Path;

/** Reads gauge trays; {@code docs/formats.md} says what one holds. */
public final class TrayFile {
    private TrayFile() {}

    /** The tray in this file, or all that is wrong with it. */
    public static Read<Document<GaugeTray>> read(Path file) {
        return JsonFile.read(file, TrayReading::tray);
    }

    /**
     * The tray in these bytes, or all that is wrong with it.
     *
     * @param name what problems and reports call the file
     */
    public static Read<Document<GaugeTray>> parse(String name, byte[] bytes) {
        return JsonFile.parse(name, bytes, TrayReading::tray);
    }
}

package io.github.leafproof.inspection.record;

import java.nio.file.Path;
import java.util.Locale;

/** The formats that this room reads, each with its reader and its schema. */
enum Format {
    ENGINE_CARD("cards"),
    GAUGE_TRAY("trays"),
    JOB_SHEET("sheets"),
    REPORT("reports"),
    SEAL("seals");

    private final String folder;

    Format(String folder) {
        this.folder = folder;
    }

    Read<?> parse(String name, byte[] bytes) {
        return switch (this) {
            case ENGINE_CARD -> CardFile.parse(name, bytes);
            case GAUGE_TRAY -> TrayFile.parse(name, bytes);
            case JOB_SHEET -> SheetFile.parse(name, bytes);
            case REPORT -> ReportFile.parse(name, bytes);
            case SEAL -> SealFile.parse(name, bytes);
        };
    }

    String schema() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-') + ".schema.json";
    }

    static Format ofFolder(Path file) {
        for (Format format : values()) {
            for (Path part : file) {
                if (part.toString().equals(format.folder)) {
                    return format;
                }
            }
        }
        throw new IllegalArgumentException(file + " lies in no folder of a format");
    }
}

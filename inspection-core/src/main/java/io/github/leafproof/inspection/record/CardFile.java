package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.engine.EngineCard;
import java.nio.file.Path;

/** Reads engine cards; {@code docs/formats.md} says what one holds. */
public final class CardFile {
    private CardFile() {}

    /** The card in this file, or all that is wrong with it. */
    public static Read<Document<EngineCard>> read(Path file) {
        return JsonFile.read(file, CardReading::card);
    }

    /**
     * The card in these bytes, or all that is wrong with it.
     *
     * @param name what problems and reports call the file
     */
    public static Read<Document<EngineCard>> parse(String name, byte[] bytes) {
        return JsonFile.parse(name, bytes, CardReading::card);
    }
}

package io.github.leafproof.dsl.rehearsal;

import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.TrayFile;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * The cards and trays that rehearsals name, each file read once, however many rehearsals of however many procedures share it.
 * A file that changes meanwhile stays what it was when it was first read. Any number of threads may ask.
 */
public final class CardsAndTrays {

    private final Map<Path, Read<Document<EngineCard>>> cards = new ConcurrentHashMap<>();
    private final Map<Path, Read<Document<GaugeTray>>> trays = new ConcurrentHashMap<>();

    /** None read yet. */
    public CardsAndTrays() {}

    /** The card in this file, or all that is wrong with it. */
    Read<Document<EngineCard>> card(Path file) {
        return cards.computeIfAbsent(file.normalize(), CardFile::read);
    }

    /** The tray in this file, or all that is wrong with it. */
    Read<Document<GaugeTray>> tray(Path file) {
        return trays.computeIfAbsent(file.normalize(), TrayFile::read);
    }

    /** The files that were read so far, in no order. */
    public Stream<Path> read() {
        return Stream.concat(cards.keySet().stream(), trays.keySet().stream());
    }
}

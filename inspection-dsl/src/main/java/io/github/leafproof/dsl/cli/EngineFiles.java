package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.archive.Cabinet;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The files of one engine: its sheet, and the card and the tray that the command names, or else the sheet.
 *
 * @param card the file of the command; null where the sheet's counts
 * @param tray the file of the command; null where the sheet's counts
 * @param targets what the command writes and must not write over one of these
 */
record EngineFiles(
        Path sheet, @Nullable Path card, @Nullable Path tray, List<Target> targets, Console console) {

    /** What the files say; empty after telling everything that is wrong with them. */
    Optional<Evidence.Files> read() {
        Read<Document<JobSheet>> sheetRead = SheetFile.read(sheet);
        console.complainOfFiles(sheetRead.problems());
        Optional<Document<EngineCard>> cardRead =
                sheetRead.value().flatMap(read -> read(card, read.content().card(), "card", CardFile::read));
        Optional<Document<GaugeTray>> trayRead =
                sheetRead.value().flatMap(read -> read(tray, read.content().tray(), "tray", TrayFile::read));
        return cardRead.isEmpty() || trayRead.isEmpty()
                ? Optional.empty()
                : Optional.of(new Evidence.Files(cardRead.get(), trayRead.get(), sheetRead.orElseThrow()));
    }

    private interface FileReader<T> {
        Read<Document<T>> read(Path file);
    }

    /** Reads the file that the command names, or else the one that the sheet does, seen from the sheet's folder. */
    private <T> Optional<Document<T>> read(
            @Nullable Path given, @Nullable String named, String what, FileReader<T> reader) {
        if (given == null && named == null) {
            console.complainOfFiles(List.of(Cabinet.unnamed(sheet.toString(), "$." + what, what)));
            return Optional.empty();
        }
        Path file = (given != null ? given : sheet.resolveSibling(String.valueOf(named))).normalize();
        if (targets.stream().anyMatch(target -> target.overwrites(file, console))) {
            return Optional.empty();
        }
        Read<Document<T>> read = reader.read(file);
        console.complainOfFiles(read.problems());
        return read.value();
    }
}

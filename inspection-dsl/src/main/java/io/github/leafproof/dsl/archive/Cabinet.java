package io.github.leafproof.dsl.archive;

import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.FileMistake;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.TrayFile;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Hands over the cards and the trays that the sheets of an archive name. Each is read once and kept; of more than 1 000 cards
 * or 1 000 trays the one that nobody has asked for longest is forgotten, and read again when it is asked for.
 */
public final class Cabinet {

    /** So many cards, and so many trays, are kept; a shop has tens of them. */
    public static final int MOST_KEPT = 1_000;

    private final Kept<EngineCard> cards;
    private final Kept<GaugeTray> trays;
    private final @Nullable Path card;
    private final @Nullable Path tray;

    private Cabinet(Kept<EngineCard> cards, Kept<GaugeTray> trays, @Nullable Path card, @Nullable Path tray) {
        this.cards = cards;
        this.trays = trays;
        this.card = card;
        this.tray = tray;
    }

    /** The files that the sheets name, each seen from its sheet's folder. */
    public static Cabinet ofFiles() {
        return new Cabinet(new Kept<>(CardFile::read), new Kept<>(TrayFile::read), null, null);
    }

    /**
     * Cards and trays in memory: where an archive is judged far from the disk that they lie on.
     *
     * @param files their bytes, by their names as the sheets' folder and what a sheet says make them, folders parted by
     *     {@code /}: {@code cards/quillan-15.json}
     */
    public static Cabinet holding(Map<String, byte[]> files) {
        Map<String, byte[]> held = new HashMap<>(files);
        return new Cabinet(
                new Kept<>(file -> find(file, held, CardFile::parse)),
                new Kept<>(file -> find(file, held, TrayFile::parse)),
                null,
                null);
    }

    /** The same, but every sheet counts as if it named this card; null where its own counts. */
    public Cabinet withCard(@Nullable Path file) {
        return new Cabinet(cards, trays, file, tray);
    }

    /** The same, but every sheet counts as if it named this tray; null where its own counts. */
    public Cabinet withTray(@Nullable Path file) {
        return new Cabinet(cards, trays, card, file);
    }

    private interface Parsing<T> {
        Read<Document<T>> parse(String name, byte[] bytes);
    }

    private static <T> Read<Document<T>> find(Path file, Map<String, byte[]> held, Parsing<T> parsing) {
        String name = Filed.named(file);
        byte[] bytes = held.get(name);
        return bytes == null
                ? refused(name, "", FileMistake.LP601, "there is no such file", "check its name and its folder")
                : parsing.parse(name, bytes);
    }

    /** A sheet with its card and its tray, or all that is wrong with the two. */
    Read<Evidence.Files> filesOf(Filed filed, Document<JobSheet> sheet) {
        Read<Document<EngineCard>> cardRead = read(filed, card, sheet.content().card(), "card", cards::of);
        Read<Document<GaugeTray>> trayRead = read(filed, tray, sheet.content().tray(), "tray", trays::of);
        if (cardRead.value().isPresent() && trayRead.value().isPresent()) {
            return new Read.Done<>(
                    new Evidence.Files(cardRead.orElseThrow(), trayRead.orElseThrow(), sheet), List.of());
        }
        List<Problem> problems = new ArrayList<>(cardRead.problems());
        problems.addAll(trayRead.problems());
        return new Read.Refused<>(problems);
    }

    private static <T> Read<Document<T>> read(
            Filed filed,
            @Nullable Path given,
            @Nullable String named,
            String what,
            Function<Path, Read<Document<T>>> reader) {
        if (given != null) {
            return reader.apply(given.normalize());
        }
        String line = filed.place().line() == 0 ? "" : filed.place().line() + ":1 ";
        String place = line + "$." + what;
        if (named == null) {
            return new Read.Refused<>(List.of(unnamed(filed.place().file(), place, what)));
        }
        try {
            return reader.apply(filed.folder().resolve(named).normalize());
        } catch (InvalidPathException noName) {
            return refused(
                    filed.place().file(),
                    place,
                    FileMistake.LP601,
                    "no file can have the name that the sheet gives for its " + what,
                    "check its name");
        }
    }

    /**
     * What is wrong with a sheet that names no card or no tray, where nobody else names one.
     *
     * @param what card or tray
     */
    public static Problem unnamed(String sheet, String place, String what) {
        return new Problem(
                FileMistake.LP613.name(),
                sheet,
                place,
                "the sheet names no " + what,
                "name it there, or with --" + what);
    }

    private static <T> Read<T> refused(String file, String place, FileMistake mistake, String message, String help) {
        return new Read.Refused<>(List.of(new Problem(mistake.name(), file, place, message, help)));
    }

    /** What was read, by the file, the longest unasked for first. */
    private static final class Kept<T> {
        private final Function<Path, Read<Document<T>>> reader;
        private final Map<Path, Read<Document<T>>> read = new LinkedHashMap<>(16, 0.75f, true);

        Kept(Function<Path, Read<Document<T>>> reader) {
            this.reader = reader;
        }

        /** One at a time: whoever asks for what is just being read is better off waiting for it. */
        synchronized Read<Document<T>> of(Path file) {
            return Optional.ofNullable(read.get(file)).orElseGet(() -> {
                Read<Document<T>> fresh = reader.apply(file);
                read.put(file, fresh);
                if (read.size() > MOST_KEPT) {
                    read.remove(read.keySet().iterator().next());
                }
                return fresh;
            });
        }
    }
}

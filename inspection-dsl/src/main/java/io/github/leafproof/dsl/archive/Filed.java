package io.github.leafproof.dsl.archive;

import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.SheetLine;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * One job sheet as it lies in an archive, not yet read: a file, or a line of one.
 *
 * @param place where it lies
 * @param folder the folder that it names its card and its tray from
 * @param reached how much of the archive is behind whoever has looked at it, from 0 to 1; not a number where nobody knows
 *     how much there is
 */
public record Filed(Place place, Path folder, double reached, Content content) {

    /**
     * Where a sheet lies.
     *
     * @param file the file as messages call it, folders parted by {@code /}
     * @param line which line of it, from 1; 0 where the sheet is all of the file
     */
    public record Place(String file, long line) {

        /** As in messages: {@code archive.jsonl:12}. */
        @Override
        public String toString() {
            return line == 0 ? file : file + ":" + line;
        }
    }

    /** What there is to be read. */
    public sealed interface Content {

        /** A file that is named as a sheet. */
        record OfFile(Path file) implements Content {}

        /** A file that was found in a folder, and may be a card or something else. */
        record FoundFile(Path file) implements Content {}

        /** A line. */
        record OfLine(SheetLine line) implements Content {}

        /** Something that nobody gets at. */
        record OutOfReach(Problem problem) implements Content {}
    }

    /** A sheet that is a file of its own. */
    public static Filed of(Path file) {
        return of(file, 1, new Content.OfFile(file));
    }

    /**
     * A sheet that is a line of a file.
     *
     * @param folder the folder that it names its card and its tray from
     */
    public static Filed of(SheetLine line, Path folder) {
        return of(line, folder, Double.NaN);
    }

    static Filed of(SheetLine line, Path folder, double reached) {
        return new Filed(new Place(line.file(), line.number()), folder, reached, new Content.OfLine(line));
    }

    static Filed of(Path file, double reached, Content content) {
        Path folder = Optional.ofNullable(file.getParent()).orElse(Path.of(""));
        return new Filed(new Place(named(file), 0), folder, reached, content);
    }

    static String named(Path file) {
        return file.toString().replace(File.separatorChar, '/');
    }

    /** The sheet, or all that is wrong with it. */
    public Read<Document<JobSheet>> sheet() {
        if (content instanceof Content.OfLine line) {
            return line.line().sheet();
        }
        if (content instanceof Content.OutOfReach lost) {
            return new Read.Refused<>(List.of(lost.problem()));
        }
        return SheetFile.read(
                content instanceof Content.OfFile file ? file.file() : ((Content.FoundFile) content).file());
    }

    /** Whether it was only found in a folder and is something else than a sheet, such as a card or a report. */
    boolean isSomethingElse() {
        return content instanceof Content.FoundFile found && !SheetFile.isMeantBy(found.file());
    }

    /** How much memory it takes until it is read, in bytes. */
    int weight() {
        return content instanceof Content.OfLine line ? line.line().size() : 0;
    }
}

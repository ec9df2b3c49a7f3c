package io.github.leafproof.inspection.record;

import java.io.File;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The journal of a sheet that is being filled in: every act in a line of its own, forced to the disk before it counts. It
 * lies beside the sheet, under the sheet's name with {@code .journal} behind it; {@code docs/formats.md} says what it holds.
 *
 * <p>Whatever the moment at which the program ends, or the machine: each act that {@link #append} has acknowledged is there
 * when the journal is opened again. A line that was cut off is dropped with a notice. A line that is not as it was written is
 * told by its place, and nothing behind it is passed over.
 *
 * <p>A journal is held by one session at a time, and others are refused. Its methods may be called from any thread.
 */
public final class Journal implements AutoCloseable {

    private final String name;
    private final Path file;
    private final JournalHold hold;
    private final JournalHead head;
    private final List<Act> acts;
    private long size;
    private String lastCheck;
    private boolean isBroken;

    private Journal(String name, Path file, JournalHold hold, JournalHead head, JournalReading.Content content) {
        this.name = name;
        this.file = file;
        this.hold = hold;
        this.head = head;
        this.acts = content.acts();
        this.size = content.wholeBytes();
        this.lastCheck = content.lastCheck();
    }

    /** The journal's file beside a sheet's. */
    public static Path beside(Path sheet) {
        return sheet.resolveSibling(sheet.getFileName() + ".journal");
    }

    /** Whether a session was begun with this sheet, so that there is something to go on with. */
    public static boolean isBegun(Path sheet) {
        return JournalHold.isBegun(beside(sheet));
    }

    /**
     * Begins the journal of a sheet.
     *
     * @return the journal; or why there is none: another session was begun with this sheet, or goes on with it, or nothing
     *     can be written there
     */
    public static Read<Journal> begin(Path sheet, JournalHead head) {
        return with(sheet, true, (name, hold, content) -> {
            if (content.head().isPresent()) {
                return new Read.Refused<>(List.of(Findings.whole(
                        name,
                        FileMistake.LP762,
                        "a session was begun with this sheet already",
                        "go on with it, or name another sheet; to drop what it holds, move this file away")));
            }
            // A first line that was cut off was never acknowledged.
            hold.channel().truncate(0);
            JournalReading.Content nothing = new JournalReading.Content(Optional.of(head), List.of(), 0, "");
            Journal journal = new Journal(name, beside(sheet), hold, head, nothing);
            return journal.write(JournalLine.head(head))
                    .<Read<Journal>>map(problem -> new Read.Refused<>(List.of(problem)))
                    .orElseGet(() -> {
                        journal.keepName();
                        return new Read.Done<>(journal, List.of());
                    });
        });
    }

    /**
     * Opens the journal of a sheet to go on with it. A last line that was cut off is dropped, and the warnings say so.
     *
     * @return the journal; or why it cannot be gone on with: there is none, another session goes on with it, or it is damaged
     */
    public static Read<Journal> open(Path sheet) {
        return with(sheet, false, (name, hold, content) -> {
            if (content.head().isEmpty()) {
                return new Read.Refused<>(List.of(JournalHold.nothingBegun(name)));
            }
            hold.channel().truncate(content.wholeBytes());
            return new Read.Done<>(
                    new Journal(name, beside(sheet), hold, content.head().get(), content), List.of());
        });
    }

    /** What is made of a file that is held. */
    private interface Making {
        Read<Journal> make(String name, JournalHold hold, JournalReading.Content content) throws IOException;
    }

    /** Takes hold, reads what is there, and lets go again unless a journal comes of it. */
    private static Read<Journal> with(Path sheet, boolean create, Making making) {
        Path file = beside(sheet);
        String name = file.toString().replace(File.separatorChar, '/');
        Read<JournalHold> taken = JournalHold.take(name, file, create);
        if (taken.value().isEmpty()) {
            return new Read.Refused<>(taken.problems());
        }
        JournalHold hold = taken.orElseThrow();
        Read<Journal> made = made(name, hold, making);
        if (made.value().isEmpty()) {
            close(hold);
        }
        return made;
    }

    private static Read<Journal> made(String name, JournalHold hold, Making making) {
        try {
            Read<JournalReading.Content> content = JournalReading.read(name, JournalHold.bytes(hold.channel()));
            if (content.value().isEmpty()) {
                return new Read.Refused<>(content.problems());
            }
            Read<Journal> made = making.make(name, hold, content.orElseThrow());
            return made.value()
                    .<Read<Journal>>map(journal -> new Read.Done<>(journal, content.problems()))
                    .orElse(made);
        } catch (IOException failed) {
            return new Read.Refused<>(List.of(JournalHold.cannot(
                    name, "the journal cannot be read", "check that its disk is there and that it is a journal")));
        }
    }

    /** For which sheet it is kept, and by which files the work is done. */
    public JournalHead head() {
        return head;
    }

    /** The acts that it held when it was opened, the oldest first; what is appended later is not among them. */
    public List<Act> acts() {
        return acts;
    }

    /**
     * Adds an act. It is on the disk when this returns without a problem.
     *
     * @return why it could not be written; then it is not in the journal, and must count as not done
     */
    public synchronized Optional<Problem> append(Act act) {
        Optional<Problem> problem = write(JournalLine.act(act));
        if (problem.isEmpty() && act instanceof Act.Opened opened) {
            hold.heldBy(opened);
        }
        return problem;
    }

    private Optional<Problem> write(Json object) {
        if (isBroken) {
            return Optional.of(broken());
        }
        if (!isAsItWasLeft()) {
            isBroken = true;
            return Optional.of(changedByOthers());
        }
        byte[] line = JournalLine.bytes(object, lastCheck);
        if (size + line.length > JournalHold.MOST_BYTES) {
            return Optional.of(JournalHold.cannot(
                    name, "the journal has become larger than any can be", "finish the sheet, and begin another"));
        }
        // An interrupt meant for somebody else would close the channel, and the journal with it.
        boolean wasInterrupted = Thread.interrupted();
        try {
            writeToDisk(line);
        } catch (IOException failed) {
            return Optional.of(withdrawn());
        } finally {
            if (wasInterrupted) {
                Thread.currentThread().interrupt();
            }
        }
        size += line.length;
        if (!isAsItWasLeft()) {
            isBroken = true;
            return Optional.of(changedByOthers());
        }
        lastCheck = String.valueOf(JournalLine.checkOf(Arrays.copyOf(line, line.length - 1)));
        return Optional.empty();
    }

    /** A file that was moved, replaced or added to no longer keeps what is written to it. */
    private boolean isAsItWasLeft() {
        try {
            return Files.size(file) == size;
        } catch (IOException gone) {
            return false;
        }
    }

    private void writeToDisk(byte[] line) throws IOException {
        FileChannel channel = hold.channel();
        ByteBuffer left = ByteBuffer.wrap(line);
        while (left.hasRemaining()) {
            channel.write(left, size + left.position());
        }
        channel.force(false);
    }

    /** Takes back what was written of a line, so that the next one begins where this one did. */
    private Problem withdrawn() {
        try {
            hold.channel().truncate(size);
            hold.channel().force(false);
            return JournalHold.cannot(
                    name,
                    "this cannot be written to the journal, and was not taken",
                    "check that the disk has room and that it is there, then do it again; all before it is kept");
        } catch (IOException failed) {
            isBroken = true;
            return broken();
        }
    }

    private Problem broken() {
        return JournalHold.cannot(
                name,
                "the journal can no longer be written, and nothing more is taken",
                "end this session, see that the disk is there and has room, and go on with the sheet; all before it is kept");
    }

    private Problem changedByOthers() {
        return JournalHold.cannot(
                name,
                "something else has moved or changed the journal meanwhile, so that this was not taken",
                "end this session; put the file back where it was, as it was, and go on with the sheet");
    }

    /** A new file is found again after a power cut only when its folder is on the disk as well; not every system can do that. */
    private void keepName() {
        @Nullable Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            } catch (IOException notHere) {
                // Where a folder cannot be forced to the disk, the system sees to it itself.
            }
        }
    }

    /** Lets go of it, so that somebody can go on with it. */
    @Override
    public synchronized void close() {
        isBroken = true;
        close(hold);
    }

    private static void close(JournalHold hold) {
        try {
            hold.close();
        } catch (IOException failed) {
            // All that counts was on the disk before.
        }
    }
}

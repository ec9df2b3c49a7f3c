package io.github.leafproof.inspection.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A journal's file, held for one session: no other gets at it meanwhile, neither in this program nor in another.
 *
 * <p>Programs keep each other off by a lock of the file system, which ends with the program, however it ends. Where a program
 * opens and closes a file that it has locked, some systems forget the lock; so within a program it is known which are held,
 * and all opening is done here, one at a time.
 */
final class JournalHold implements AutoCloseable {

    /** A journal longer than this is not read, so none is written. */
    static final int MOST_BYTES = 4 * FileBytes.MOST;

    /** Beyond all that is ever written, so that where a lock keeps others from reading, they can read the journal. */
    private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

    private static final DateTimeFormatter SINCE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    /** What this program holds, by the real path, and what is to be said of its holder. */
    private static final Map<Path, String> HELD = new HashMap<>();

    private final Path real;
    private final FileChannel channel;

    private JournalHold(Path real, FileChannel channel) {
        this.real = real;
        this.channel = channel;
    }

    /**
     * Takes hold of a journal.
     *
     * @param name what problems call it
     * @param create whether it may be made
     */
    static Read<JournalHold> take(String name, Path file, boolean create) {
        synchronized (HELD) {
            try {
                Path real = real(file);
                if (HELD.containsKey(real)) {
                    return refused(held(name, "in this program, " + HELD.get(real)));
                }
                FileChannel channel = FileChannel.open(file, options(create));
                if (!isLocked(channel)) {
                    String holder = holder(name, channel);
                    channel.close();
                    return refused(held(name, "in another program, " + holder));
                }
                HELD.put(real, "by somebody");
                return new Read.Done<>(new JournalHold(real, channel), List.of());
            } catch (NoSuchFileException missing) {
                return refused(
                        create
                                ? cannot(name, "the folder of the sheet does not exist", "make the folder first")
                                : nothingBegun(name));
            } catch (IOException failed) {
                return refused(cannot(
                        name,
                        "the journal beside the sheet cannot be opened for writing",
                        "check that you may write in this folder, that no folder has the journal's name, and that the disk is"
                                + " there"));
            }
        }
    }

    private static Set<OpenOption> options(boolean create) {
        return create
                ? Set.of(StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.CREATE)
                : Set.of(StandardOpenOption.READ, StandardOpenOption.WRITE);
    }

    /** The lock goes when the channel is closed. */
    private static boolean isLocked(FileChannel channel) throws IOException {
        try {
            @Nullable FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
            return lock != null;
        } catch (OverlappingFileLockException heldByThisProgram) {
            return false;
        }
    }

    /** One file has one path, whatever links lead to it. */
    private static Path real(Path file) throws IOException {
        Path whole = file.toAbsolutePath();
        @Nullable Path folder = whole.getParent();
        return Files.exists(whole) || folder == null
                ? whole.toRealPath()
                : folder.toRealPath().resolve(String.valueOf(whole.getFileName()));
    }

    /** Whether a first line is there, so that a session was begun. */
    static boolean isBegun(Path file) {
        synchronized (HELD) {
            try {
                if (HELD.containsKey(real(file))) {
                    return true;
                }
                byte[] bytes = Files.readAllBytes(file);
                for (byte each : bytes) {
                    if (each == '\n') {
                        return true;
                    }
                }
                return false;
            } catch (IOException notThere) {
                return false;
            }
        }
    }

    /** Says who holds it, for whoever comes and finds it held. */
    void heldBy(Act.Opened opened) {
        synchronized (HELD) {
            HELD.put(real, words(opened));
        }
    }

    FileChannel channel() {
        return channel;
    }

    /** All bytes of the file. */
    static byte[] bytes(FileChannel channel) throws IOException {
        if (channel.size() > MOST_BYTES) {
            throw new IOException("larger than any journal");
        }
        ByteBuffer bytes = ByteBuffer.allocate((int) channel.size());
        while (bytes.hasRemaining() && channel.read(bytes, bytes.position()) > 0) {
            // It goes on until the file is read.
        }
        return Arrays.copyOf(bytes.array(), bytes.position());
    }

    private static String holder(String name, FileChannel channel) throws IOException {
        return JournalReading.read(name, bytes(channel)).value().stream()
                .flatMap(content -> content.acts().stream())
                .flatMap(act -> act instanceof Act.Opened opened ? Stream.of(opened) : Stream.<Act.Opened>empty())
                .reduce((first, second) -> second)
                .map(JournalHold::words)
                .orElse("by somebody");
    }

    private static String words(Act.Opened opened) {
        String by = opened.stamp().by() == null
                ? "by somebody"
                : "by " + Shown.briefly(opened.stamp().by(), 40);
        return by + " since " + SINCE.format(opened.stamp().at()) + " (process " + opened.process() + ")";
    }

    @Override
    public void close() throws IOException {
        synchronized (HELD) {
            HELD.remove(real);
            channel.close();
        }
    }

    private static Problem held(String name, String by) {
        return Findings.whole(
                name,
                FileMistake.LP760,
                "the sheet is being filled in already: " + by,
                "go on there, or end that session first; if its program hangs, end it, and nothing is lost");
    }

    static Problem nothingBegun(String name) {
        return Findings.whole(
                name,
                FileMistake.LP763,
                "no session was begun with this sheet",
                "begin one; a journal belongs beside its sheet, so check the sheet's name and folder");
    }

    static Problem cannot(String name, String message, String help) {
        return Findings.whole(name, FileMistake.LP767, message, help);
    }

    private static Read<JournalHold> refused(Problem problem) {
        return new Read.Refused<>(List.of(problem));
    }
}

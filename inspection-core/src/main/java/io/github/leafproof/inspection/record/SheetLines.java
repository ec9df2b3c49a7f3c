package io.github.leafproof.inspection.record;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Iterator;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;

/**
 * An archive with a job sheet in each of its lines (JSON Lines: UTF-8, one JSON value a line, lines end in a line feed).
 * It is read as it is asked for, one line at a time, so that it may be larger than the memory. Blank lines are passed over.
 *
 * <p>A line longer than a sheet can be, or a disk that fails half-way, gives a line whose sheet is refused; what follows a
 * line that is too long is read as if nothing had happened.
 */
public final class SheetLines implements Iterator<SheetLine> {
    private static final int BUFFER = 64 * 1024;

    private final String file;
    private final InputStream bytes;
    private final int longest;
    private final byte[] buffer = new byte[BUFFER];
    private int at;
    private int filled;
    private long taken;
    private long number;
    private boolean ended;
    private @Nullable SheetLine next;

    private SheetLines(String file, InputStream bytes, int longest) {
        this.file = file;
        this.bytes = bytes;
        this.longest = longest;
    }

    /**
     * The lines of an archive.
     *
     * @param file what problems call it
     * @param bytes its content; whoever opened it closes it
     */
    public static SheetLines of(String file, InputStream bytes) {
        return of(file, bytes, FileBytes.MOST);
    }

    /** The same with another idea of how long a line may be, in bytes. */
    static SheetLines of(String file, InputStream bytes, int longest) {
        return new SheetLines(file, bytes, longest);
    }

    /** How many bytes of the archive the lines so far have taken, their ends included. */
    public long taken() {
        return taken;
    }

    @Override
    public boolean hasNext() {
        while (next == null && !ended) {
            SheetLine line = read();
            next = line.isBlank() ? null : line;
        }
        return next != null;
    }

    @Override
    public SheetLine next() {
        if (!hasNext() || next == null) {
            throw new NoSuchElementException("the archive has no further line");
        }
        SheetLine line = next;
        next = null;
        return line;
    }

    private SheetLine read() {
        number++;
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        boolean tooLong = false;
        try {
            while (true) {
                if (at == filled && !refill()) {
                    ended = true;
                    break;
                }
                int end = lineEnd();
                tooLong |= line.size() + (end - at) > longest;
                if (!tooLong) {
                    line.write(buffer, at, end - at);
                }
                boolean whole = end < filled;
                taken += end - at + (whole ? 1 : 0);
                at = whole ? end + 1 : end;
                if (whole) {
                    break;
                }
            }
        } catch (IOException failed) {
            ended = true;
            return SheetLine.unusable(
                    file,
                    number,
                    FileMistake.LP603,
                    "the file cannot be read any further than this line",
                    "check that its disk is there; the sheets from here on were not looked at");
        }
        return tooLong
                ? SheetLine.unusable(
                        file,
                        number,
                        FileMistake.LP604,
                        "the line is larger than " + words(longest),
                        "no job sheet is this large; each sheet stands in a line of its own")
                : SheetLine.handedOver(file, number, line.toByteArray());
    }

    private boolean refill() throws IOException {
        at = 0;
        filled = Math.max(0, bytes.read(buffer));
        return filled > 0;
    }

    /** Where the line ends that begins here; the end of the buffer where it goes on behind it. */
    private int lineEnd() {
        int end = at;
        while (end < filled && buffer[end] != '\n') {
            end++;
        }
        return end;
    }

    private static String words(int bytes) {
        int mebibyte = 1024 * 1024;
        return bytes % mebibyte == 0 ? bytes / mebibyte + " MiB" : bytes + " bytes";
    }
}

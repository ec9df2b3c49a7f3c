package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Fetches a procedure's text from the disk. Whatever is wrong with the file comes back as a diagnostic.
 *
 * @param text the text, or nothing where the file could not be read
 */
public record SourceReading(@Nullable SourceText text, List<Diagnostic> problems) {

    /** No procedure is larger: 16 MiB are some ten thousand pages. */
    public static final int LARGEST_MEBIBYTES = 16;

    /** The same in letters. */
    public static final int LARGEST = LARGEST_MEBIBYTES << 20;

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** How a sheet, a card or a tray begins, and no procedure does. */
    private static final Pattern JSON = Pattern.compile("\\s*\\{\\s*[\"}]");

    public SourceReading {
        problems = List.copyOf(problems);
    }

    /** The text, where the file could be read. */
    public Optional<SourceText> source() {
        return Optional.ofNullable(text);
    }

    /** Reads a file and calls it what its path says. */
    public static SourceReading read(Path file) {
        return read(file, file.toString());
    }

    /**
     * Reads a file.
     *
     * @param name what to call it in messages
     */
    public static SourceReading read(Path file, String name) {
        SourceText nothing = SourceText.of(name, "");
        try {
            if (!Files.exists(file)) {
                return refused(ReadingDiagnostics.missing(nothing));
            }
            if (Files.isDirectory(file)) {
                return refused(ReadingDiagnostics.folder(nothing));
            }
            try (InputStream bytes = Files.newInputStream(file)) {
                return of(name, bytes.readNBytes(LARGEST + 1));
            }
        } catch (IOException | SecurityException | InvalidPathException e) {
            return refused(ReadingDiagnostics.unreadable(nothing));
        }
    }

    /** The text that these bytes of a file hold. A byte order mark at the beginning is no part of it. */
    static SourceReading of(String name, byte[] bytes) {
        SourceText nothing = SourceText.of(name, "");
        if (bytes.length > LARGEST) {
            return refused(BoundDiagnostics.tooLarge(nothing, LARGEST_MEBIBYTES));
        }
        if (bytes.length == 0) {
            return refused(ReadingDiagnostics.empty(nothing));
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            String unmarked = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
            if (unmarked.isBlank()) {
                return refused(ReadingDiagnostics.empty(nothing));
            }
            return JSON.matcher(unmarked).lookingAt()
                    ? refused(ReadingDiagnostics.json(nothing))
                    : new SourceReading(SourceText.ofFile(name, unmarked, bytes), List.of());
        } catch (CharacterCodingException e) {
            return refused(notUtf8(name, bytes));
        }
    }

    private static Diagnostic notUtf8(String name, byte[] bytes) {
        CharBuffer good = CharBuffer.allocate(bytes.length);
        ByteBuffer input = ByteBuffer.wrap(bytes);
        CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(input, good, true);
        int place = good.position();
        String shown = new String(bytes, StandardCharsets.UTF_8);
        boolean wide = result.isError() && bytes.length > 1 && ((bytes[0] & 0xFF) == 0xFF || (bytes[0] & 0xFF) == 0xFE);
        SourceText source = SourceText.of(name, shown);
        Span span = source.span(place, Math.min(place + 1, shown.length()));
        return wide ? ReadingDiagnostics.utf16(span) : ReadingDiagnostics.notUtf8(span, bytes[input.position()] & 0xFF);
    }

    private static SourceReading refused(Diagnostic problem) {
        return new SourceReading(null, List.of(problem));
    }
}

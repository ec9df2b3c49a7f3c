package io.github.leafproof.inspection.record;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** From bytes to text, or to the place where the bytes are no text. */
final class Utf8 {
    private Utf8() {}

    /** The text, without the byte order mark that some editors put before it and nobody sees. */
    static Read<String> decode(String file, byte[] bytes, long firstLine) {
        if (bytes.length >= 2 && (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE))) {
            return refused(file, "", "the file is UTF-16, not UTF-8");
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer decoded = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), decoded, true);
        String text = decoded.flip().toString();
        if (result.isError()) {
            return refused(
                    file, new LineIndex(text, firstLine).place(text.length()), "the bytes here are not UTF-8 text");
        }
        return new Read.Done<>(text.startsWith("\uFEFF") ? text.substring(1) : text, List.of());
    }

    private static boolean startsWith(byte[] bytes, int first, int second) {
        return Byte.toUnsignedInt(bytes[0]) == first && Byte.toUnsignedInt(bytes[1]) == second;
    }

    private static <T> Read<T> refused(String file, String place, String message) {
        Problem problem = new Problem(
                FileMistake.LP606.name(),
                file,
                place,
                message,
                "save the file as UTF-8; every editor can, and JSON is always UTF-8");
        return new Read.Refused<>(List.of(problem));
    }
}

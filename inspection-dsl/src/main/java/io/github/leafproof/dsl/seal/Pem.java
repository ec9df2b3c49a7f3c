package io.github.leafproof.dsl.seal;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * One block of a PEM file (RFC 7468): a label, and bytes in Base64 between two lines that name it.
 */
final class Pem {

    static final String PRIVATE = "PRIVATE KEY";
    static final String PUBLIC = "PUBLIC KEY";

    private static final Pattern BLOCK =
            Pattern.compile("-----BEGIN ([A-Z0-9][A-Z0-9 ]*)-----([^-]*)-----END \\1-----");
    private static final int LINE = 64;

    private final String label;
    private final byte[] bytes;

    /** A block under the label that says what it holds, {@code PRIVATE KEY}. */
    Pem(String label, byte[] bytes) {
        this.label = label;
        this.bytes = bytes.clone();
    }

    String label() {
        return label;
    }

    byte[] bytes() {
        return bytes.clone();
    }

    /** All blocks of a file, in its order; what stands around them explains them, and is passed over. */
    static List<Pem> blocks(byte[] file) {
        return BLOCK.matcher(new String(file, StandardCharsets.ISO_8859_1))
                .results()
                .flatMap(block -> decoded(block.group(2)).map(bytes -> new Pem(block.group(1), bytes)).stream())
                .toList();
    }

    private static Optional<byte[]> decoded(String base64) {
        try {
            return Optional.of(Base64.getDecoder().decode(base64.replaceAll("\\s", "")));
        } catch (IllegalArgumentException noBase64) {
            return Optional.empty();
        }
    }

    /** The text of the file, lines ending in {@code \n}. */
    String text() {
        String base64 = Base64.getMimeEncoder(LINE, new byte[] {'\n'}).encodeToString(bytes);
        return "-----BEGIN " + label + "-----\n" + base64 + "\n-----END " + label + "-----\n";
    }
}

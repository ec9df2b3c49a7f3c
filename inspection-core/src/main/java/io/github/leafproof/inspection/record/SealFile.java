package io.github.leafproof.inspection.record;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Writes seals and reads them back; {@code docs/formats.md} says what one holds. */
public final class SealFile {

    private static final List<String> KEYS = List.of("format", "sha256", "public_key", "signature");
    private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{64}");

    /** A SubjectPublicKeyInfo of Ed25519 (RFC 8410), and a signature (RFC 8032). */
    private static final int KEY_BYTES = 44;

    private static final int SIGNATURE_BYTES = 64;

    private static final String REMEDY =
            "a seal is never changed by hand; take the one that was handed over, or have the" + " report sealed again";

    private SealFile() {}

    /** Where the seal of a report stands: beside it, under its name with {@code .seal} behind it. */
    public static Path of(Path report) {
        return report.resolveSibling(report.getFileName() + ".seal");
    }

    /** The seal as JSON text. The same seal gives the same text on every machine. */
    public static String toJson(Seal seal) {
        return JsonWriting.text(new JsonWriting.ObjectBuilder()
                .put("format", Seal.FORMAT)
                .put("sha256", seal.sha256())
                .put("public_key", seal.publicKey())
                .put("signature", seal.signature())
                .done());
    }

    /**
     * Writes the seal, UTF-8, in place of whatever the file held. When that fails, the old content is still whole.
     *
     * @return why it could not be written; empty when it was
     */
    public static Optional<Problem> write(Path file, Seal seal) {
        return AtomicFile.write(file, toJson(seal).getBytes(StandardCharsets.UTF_8));
    }

    /** The seal in this file, equal to the one written, or all that is wrong with the file. */
    public static Read<Document<Seal>> read(Path file) {
        return JsonFile.read(file, SealFile::seal);
    }

    /**
     * The seal in these bytes, or all that is wrong with it.
     *
     * @param name what problems call the file
     */
    public static Read<Document<Seal>> parse(String name, byte[] bytes) {
        return JsonFile.parse(name, bytes, SealFile::seal);
    }

    private static Optional<Seal> seal(Spot whole) {
        Optional<Fields> object = whole.anyFields("a seal");
        if (object.isEmpty() || !isOfKnownForm(object.get())) {
            return Optional.empty();
        }
        Fields fields = object.get();
        fields.allow(KEYS);
        Optional<String> sha256 = must(fields, "sha256").flatMap(SealFile::digest);
        Optional<String> publicKey = must(fields, "public_key").flatMap(spot -> base64(spot, KEY_BYTES));
        Optional<String> signature = must(fields, "signature").flatMap(spot -> base64(spot, SIGNATURE_BYTES));
        return sha256.isPresent() && publicKey.isPresent() && signature.isPresent()
                ? Optional.of(new Seal(sha256.get(), publicKey.get(), signature.get()))
                : Optional.empty();
    }

    private static boolean isOfKnownForm(Fields fields) {
        Optional<Spot> spot = must(fields, "format");
        Optional<String> format = spot.flatMap(said -> said.text("a form"));
        if (format.isEmpty() || format.get().equals(Seal.FORMAT)) {
            return format.isPresent();
        }
        spot.get()
                .complain(
                        FileMistake.LP788,
                        "this program reads seals of the form " + Seal.FORMAT + ", and this one is "
                                + Shown.quoted(format.get()),
                        "verify it with the version of the program that made it, or a later one");
        return false;
    }

    private static Optional<Spot> must(Fields fields, String key) {
        if (!fields.has(key)) {
            fields.complain(
                    FileMistake.LP613,
                    "the key \"" + key + "\" is missing",
                    "every seal has it; this one was changed after it was made, so take the one that was handed over");
        }
        return fields.optional(key);
    }

    private static Optional<String> digest(Spot spot) {
        return spot.text("a digest")
                .filter(text -> DIGEST.matcher(text).matches()
                        || spot.no(
                                        FileMistake.LP790,
                                        "this should be a SHA-256 digest, 64 digits of 0 to 9 and a to f, not "
                                                + Shown.quoted(text),
                                        REMEDY)
                                .isPresent());
    }

    private static Optional<String> base64(Spot spot, int bytes) {
        return spot.text("a text in Base64")
                .filter(text -> isBase64(text, bytes)
                        || spot.no(
                                        FileMistake.LP790,
                                        "this should be " + bytes + " bytes in Base64, not " + Shown.quoted(text),
                                        REMEDY)
                                .isPresent());
    }

    private static boolean isBase64(String text, int length) {
        try {
            // Decoders pass over bits behind the end that nobody reads; what is written has none set.
            byte[] bytes = Base64.getDecoder().decode(text);
            return bytes.length == length
                    && Base64.getEncoder().encodeToString(bytes).equals(text);
        } catch (IllegalArgumentException noBase64) {
            return false;
        }
    }
}

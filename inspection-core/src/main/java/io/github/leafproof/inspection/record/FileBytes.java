package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.quantity.Spelling;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The bytes of a file, or why they cannot be had. */
final class FileBytes {
    /** 16 MiB; the sheets of a whole working life are smaller. */
    static final int MOST = 16 * 1024 * 1024;

    private FileBytes() {}

    static Read<byte[]> read(String name, Path file) {
        if (Files.isDirectory(file)) {
            return refused(name, FileMistake.LP602, "this is a folder, not a file", "name a file in it");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return checked(name, in.readNBytes(MOST + 1));
        } catch (NoSuchFileException e) {
            return refused(name, FileMistake.LP601, "there is no such file", suggestion(file));
        } catch (IOException e) {
            return refused(
                    name,
                    FileMistake.LP603,
                    "the file cannot be read",
                    "check that you may read it, and that its disk is there");
        }
    }

    static Read<byte[]> checked(String name, byte[] bytes) {
        return fit(name, bytes, bytes.length);
    }

    /** The bytes, where a file with them is no larger than files are. */
    static Read<byte[]> fit(String name, byte[] bytes, long whole) {
        if (whole > MOST) {
            return refused(
                    name,
                    FileMistake.LP604,
                    "the file is larger than 16 MiB",
                    "name the file that was meant; no card, tray, sheet or report is this large");
        }
        return new Read.Done<>(bytes, List.of());
    }

    private static <T> Read<T> refused(String name, FileMistake mistake, String message, String help) {
        return new Read.Refused<>(List.of(Findings.whole(name, mistake, message, help)));
    }

    private static String suggestion(Path missing) {
        return nearestBeside(missing)
                .map(name -> "did you mean " + Shown.quoted(name) + "?")
                .orElse("check its name and its folder");
    }

    private static Optional<String> nearestBeside(Path missing) {
        Path wanted = missing.getFileName();
        Path folder = missing.toAbsolutePath().getParent();
        if (wanted == null || folder == null) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names = files.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.endsWith(".json"))
                    .sorted()
                    .toList();
            return Spelling.nearest(wanted.toString(), names);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The SHA-256 digest, 64 lower-case hexadecimal digits (FIPS 180-4). */
    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}

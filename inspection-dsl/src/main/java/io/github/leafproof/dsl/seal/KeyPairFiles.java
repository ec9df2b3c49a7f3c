package io.github.leafproof.dsl.seal;

import io.github.leafproof.inspection.record.FileMistake;
import io.github.leafproof.inspection.record.Problem;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The two files of a key, side by side. Neither is ever written over another file: a key that is gone leaves seals that
 * nobody can make any more.
 *
 * @param privateKey readable by its owner only, where the file system knows owners
 */
public record KeyPairFiles(Path privateKey, Path publicKey) {

    private static final Set<PosixFilePermission> OWNER_ONLY = PosixFilePermissions.fromString("rw-------");
    private static final Set<PosixFilePermission> EVERYBODY_READS = PosixFilePermissions.fromString("rw-r--r--");

    /** The files that this beginning of a name leads to: {@code shop} to {@code shop.private.pem} and its fellow. */
    public static KeyPairFiles of(Path stem) {
        String name = String.valueOf(stem.getFileName());
        return new KeyPairFiles(stem.resolveSibling(name + ".private.pem"), stem.resolveSibling(name + ".public.pem"));
    }

    /** Writes both; all that keeps them from being written otherwise, and then there is neither. */
    public List<Problem> write(SigningKey key) {
        List<Problem> problems = new ArrayList<>();
        Stream.of(privateKey, publicKey).filter(Files::exists).forEach(file -> problems.add(inTheWay(file)));
        if (problems.isEmpty()) {
            write(privateKey, key.pem(), OWNER_ONLY).ifPresent(problems::add);
        }
        if (problems.isEmpty()) {
            write(publicKey, key.verifyingKey().pem(), EVERYBODY_READS).ifPresent(problem -> {
                problems.add(problem);
                takeBack(privateKey);
            });
        }
        return problems;
    }

    /** Whether the file system keeps others from reading the private key. */
    public boolean isPrivate() {
        try {
            return Files.getPosixFilePermissions(privateKey).equals(OWNER_ONLY);
        } catch (IOException | UnsupportedOperationException unknown) {
            return false;
        }
    }

    private static Optional<Problem> write(Path file, String text, Set<PosixFilePermission> permissions) {
        boolean knowsOwners = file.getFileSystem().supportedFileAttributeViews().contains("posix");
        FileAttribute<?>[] attributes = knowsOwners
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(permissions)}
                : new FileAttribute<?>[0];
        Set<OpenOption> onlyNew = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        try (var channel = Files.newByteChannel(file, onlyNew, attributes)) {
            var bytes = StandardCharsets.US_ASCII.encode(text);
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            return Optional.empty();
        } catch (FileAlreadyExistsException raced) {
            return Optional.of(inTheWay(file));
        } catch (NoSuchFileException noFolder) {
            return Optional.of(problem(FileMistake.LP610, file, "its folder does not exist", "make the folder first"));
        } catch (IOException e) {
            return Optional.of(problem(
                    FileMistake.LP610,
                    file,
                    "the file cannot be written",
                    "check that you may write there and that the disk has room"));
        }
    }

    private static void takeBack(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException stays) {
            // Then it lies there, a key that nobody uses, and the next try says that it is in the way.
        }
    }

    private static Problem inTheWay(Path file) {
        return problem(
                FileMistake.LP786,
                file,
                "there is a file of this name already",
                "a key is never written over another file; take another name, or move the old key to a safe place");
    }

    private static Problem problem(FileMistake mistake, Path file, String message, String help) {
        return new Problem(mistake.name(), file.toString().replace(File.separatorChar, '/'), "", message, help);
    }
}

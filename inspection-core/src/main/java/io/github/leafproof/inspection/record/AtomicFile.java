package io.github.leafproof.inspection.record;

import java.io.File;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Writes a file so that whoever opens it finds the old content or the new one, and never a part: the bytes go to a
 * temporary file beside the target, which then takes its place.
 */
final class AtomicFile {
    private AtomicFile() {}

    /** Why the file could not be written; empty when it was. */
    static Optional<Problem> write(Path target, byte[] bytes) {
        String name = target.toString().replace(File.separatorChar, '/');
        Path whole = target.toAbsolutePath();
        @Nullable Path folder = whole.getParent();
        if (Files.isDirectory(whole) || folder == null) {
            return problem(name, "a folder of this name is in the way", "name a file in it");
        }
        try {
            replace(whole, folder, bytes);
            return Optional.empty();
        } catch (NoSuchFileException e) {
            return problem(
                    name, "its folder does not exist", "make the folder " + Shown.quoted(folder.toString()) + " first");
        } catch (IOException e) {
            return problem(
                    name, "the file cannot be written", "check that you may write there and that the disk has room");
        }
    }

    private static void replace(Path target, Path folder, byte[] bytes) throws IOException {
        Path temporary = folder.resolve("." + target.getFileName() + "." + UUID.randomUUID() + ".tmp");
        try {
            writeToDisk(temporary, bytes);
            keepPermissions(target, temporary);
            move(temporary, target);
        } finally {
            Files.deleteIfExists(temporary);
        }
    }

    /** Were the new name on the disk before the bytes are, a power cut would leave an empty file. */
    private static void writeToDisk(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
    }

    /** Whoever could read and write the old file can do so with the new one. */
    private static void keepPermissions(Path target, Path temporary) throws IOException {
        @Nullable PosixFileAttributeView view = Files.getFileAttributeView(target, PosixFileAttributeView.class);
        if (view != null && Files.exists(target)) {
            Files.setPosixFilePermissions(temporary, view.readAttributes().permissions());
        }
    }

    private static void move(Path temporary, Path target) throws IOException {
        try {
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            // Some network drives cannot do better.
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static Optional<Problem> problem(String name, String message, String help) {
        return Optional.of(Findings.whole(name, FileMistake.LP610, message, help));
    }
}

package io.github.leafproof.inspection.record;

import java.io.File;
import java.nio.file.Path;
import java.util.List;

/** A file of any kind as its bytes are, for whoever asks only whether they are still the same. */
public final class RawFile {
    private RawFile() {}

    /** The bytes of a file of at most 16 MiB with their digest, or why they cannot be had. */
    public static Read<Document<byte[]>> read(Path file) {
        String name = file.toString().replace(File.separatorChar, '/');
        Read<byte[]> read = FileBytes.read(name, file);
        return read.value()
                .<Read<Document<byte[]>>>map(bytes -> new Read.Done<>(of(name, bytes), List.of()))
                .orElseGet(() -> new Read.Refused<>(read.problems()));
    }

    /** These bytes with their digest. */
    public static Document<byte[]> of(String name, byte[] bytes) {
        return new Document<>(bytes, name, FileBytes.sha256(bytes));
    }
}

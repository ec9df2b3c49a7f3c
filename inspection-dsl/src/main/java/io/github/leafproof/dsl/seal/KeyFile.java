package io.github.leafproof.dsl.seal;

import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.FileMistake;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.RawFile;
import io.github.leafproof.inspection.record.Read;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The way from a PEM file to a key, or to the reason why it holds none that is wanted. */
final class KeyFile {

    private static final String MAKE_ONE = "leafproof make-key makes a pair of them";

    private KeyFile() {}

    /**
     * The key that a file holds.
     *
     * @param wanted the label of the block that is asked for
     * @param made a key of its bytes; empty where they are no Ed25519 key
     */
    static <T> Read<Document<T>> read(Path file, String wanted, Function<byte[], Optional<T>> made) {
        Read<Document<byte[]>> raw = RawFile.read(file);
        if (raw.value().isEmpty()) {
            return new Read.Refused<>(raw.problems());
        }
        Document<byte[]> bytes = raw.orElseThrow();
        List<Pem> blocks = Pem.blocks(bytes.content());
        Optional<Pem> block =
                blocks.stream().filter(each -> each.label().equals(wanted)).findFirst();
        if (block.isEmpty()) {
            return refused(bytes.name(), otherwise(blocks), remedy(blocks, wanted));
        }
        return block.flatMap(found -> made.apply(found.bytes()))
                .<Read<Document<T>>>map(
                        key -> new Read.Done<>(new Document<>(key, bytes.name(), bytes.sha256()), List.of()))
                .orElseGet(() -> refused(
                        bytes.name(),
                        "the key in this file is no Ed25519 key, or was damaged",
                        "reports are sealed with Ed25519 keys; " + MAKE_ONE));
    }

    private static String otherwise(List<Pem> blocks) {
        if (blocks.isEmpty()) {
            return "this file holds no key";
        }
        String label = blocks.get(0).label();
        return switch (label) {
            case Pem.PUBLIC -> "this is a public key, which verifies seals and makes none";
            case Pem.PRIVATE -> "this is a private key, which nobody but its owner should have";
            case "ENCRYPTED PRIVATE KEY" -> "this key is locked with a passphrase, and this program asks for none";
            default -> "this file holds a \"" + label + "\" and no key that is wanted here";
        };
    }

    private static String remedy(List<Pem> blocks, String wanted) {
        String label = blocks.isEmpty() ? "" : blocks.get(0).label();
        return switch (label) {
            case Pem.PUBLIC -> "name the private key of the pair";
            case Pem.PRIVATE -> "name the public key of the pair";
            case "ENCRYPTED PRIVATE KEY" -> "unlock it into a file that only you can read, and name that";
            default -> "a key begins with the line -----BEGIN " + wanted + "-----; " + MAKE_ONE;
        };
    }

    private static <T> Read<Document<T>> refused(String name, String message, String help) {
        return new Read.Refused<>(List.of(new Problem(FileMistake.LP785.name(), name, "", message, help)));
    }
}

package io.github.leafproof.inspection.record;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

/** The way from a file to what it says, the same for every format. */
final class JsonFile {
    private JsonFile() {}

    static <T> Read<Document<T>> read(Path file, Function<Spot, Optional<T>> question) {
        // Windows separates folders with a backslash; a report is to name its files alike wherever it was made.
        String name = file.toString().replace(File.separatorChar, '/');
        return then(FileBytes.read(name, file), bytes -> parse(name, bytes, question));
    }

    static <T> Read<Document<T>> parse(String name, byte[] bytes, Function<Spot, Optional<T>> question) {
        return parse(name, bytes, 1, question);
    }

    /** The same for bytes that stand further down in the file: they begin at its line of this number, from 1. */
    static <T> Read<Document<T>> parse(
            String name, byte[] bytes, long firstLine, Function<Spot, Optional<T>> question) {
        return then(
                FileBytes.checked(name, bytes),
                checked -> then(Utf8.decode(name, checked, firstLine), text -> {
                    return text.isBlank()
                            ? empty(name)
                            : ask(new Findings(name, text, firstLine), name, text, FileBytes.sha256(checked), question);
                }));
    }

    /** Whether a file is not JSON at all, or is an object with the right keys. */
    static boolean isMeant(Path file, Predicate<Set<String>> keys) {
        String name = file.toString();
        Read<String> text = then(FileBytes.read(name, file), bytes -> Utf8.decode(name, bytes, 1));
        if (text.value().isEmpty() || text.orElseThrow().isBlank()) {
            return true;
        }
        Optional<Json> whole = JsonReading.parse(text.orElseThrow(), new Findings(name, text.orElseThrow(), 1));
        return whole.map(json -> json instanceof Json.Members members
                        && keys.test(members.byKey().keySet()))
                .orElse(true);
    }

    private static <T> Read<Document<T>> ask(
            Findings findings, String name, String text, String sha256, Function<Spot, Optional<T>> question) {
        Optional<Spot> whole = JsonReading.parse(text, findings).map(json -> new Spot(json, Trail.ROOT, findings));
        Optional<T> content = whole.flatMap(question);
        List<Problem> problems = findings.inOrder();
        return findings.errors() == 0 && content.isPresent()
                ? new Read.Done<>(
                        new Document<>(
                                content.get(), name, sha256, whole.orElseThrow().placesByKeys()),
                        problems)
                : new Read.Refused<>(problems);
    }

    private static <A, B> Read<B> then(Read<A> before, Function<A, Read<B>> next) {
        return before.value().map(next).orElseGet(() -> new Read.Refused<>(before.problems()));
    }

    private static <T> Read<T> empty(String name) {
        return new Read.Refused<>(List.of(Findings.whole(
                name, FileMistake.LP605, "the file is empty", "an interrupted copy leaves such files; copy it again")));
    }
}

package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.parts.Shelf;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What a command wrote and how it ended. Folders that change from run to run are written as {@code BENCH} and
 * {@code HERE}.
 */
record Terminal(int exit, String out, String err) {

    /** The bench of the examples: procedure, cards, trays and sheets. */
    static final Path BENCH = Path.of("..", "examples", "bench");

    static Terminal run(String... arguments) {
        return run(false, arguments);
    }

    static Terminal run(boolean colour, String... arguments) {
        return typing("", colour, arguments);
    }

    /** Runs a command that reads lines. */
    static Terminal typing(String lines, String... arguments) {
        return typing(lines, false, arguments);
    }

    private static Terminal typing(String lines, boolean colour, String... arguments) {
        InputStream in = new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream outStream = new PrintStream(out, false, StandardCharsets.UTF_8);
        PrintStream errStream = new PrintStream(err, false, StandardCharsets.UTF_8);
        int exit = Leafproof.run(new Console(in, outStream, errStream, colour), arguments);
        outStream.flush();
        errStream.flush();
        return new Terminal(exit, text(out), text(err));
    }

    private static String text(ByteArrayOutputStream bytes) {
        return bytes.toString(StandardCharsets.UTF_8).replace(BENCH.toString(), "BENCH");
    }

    /** Judges a sheet of the bench by its first look. */
    static Terminal inspect(String sheet, String... more) {
        String procedure = BENCH.resolve("first_look.inspection").toString();
        String path = BENCH.resolve("sheets").resolve(sheet).toString();
        return run(Stream.concat(Stream.of("inspect", procedure, "--sheet", path), Stream.of(more))
                .toArray(String[]::new));
    }

    /** Everything it said and how it ended, a folder of the test's own left out. */
    String whole(Path here) {
        return ("exit " + exit + "\n--- standard output\n" + out + "--- standard error\n" + err)
                .replace(here.toString(), "HERE");
    }

    /** The procedures of the bench and their parts. */
    static Shelf benchShelf() {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(BENCH)) {
            for (Path file : files.filter(each -> each.toString().endsWith(".inspection"))
                    .toList()) {
                texts.put(BENCH.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return Shelf.of(texts);
    }

    /** Copies the bench, for a test that spoils some of it. */
    static void copyBench(Path to) {
        try (Stream<Path> files = Files.walk(BENCH)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(BENCH.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}

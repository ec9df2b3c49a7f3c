package io.github.leafproof.examples.speed;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * The page that tells how fast we are. Its tables stand between {@code <!-- measured: name -->} and {@code <!-- end -->}, and only
 * a run writes them.
 */
final class Page {

    private static final String END = "<!-- end -->";

    private final Path file;

    Page(Path file) {
        this.file = file.toAbsolutePath();
    }

    /** The folder of the project: the page lies in its docs. */
    Path project() {
        return Objects.requireNonNull(Objects.requireNonNull(file.getParent()).getParent());
    }

    /** Puts a table, and the machine that it was measured on, into its place. */
    void write(String name, String table) throws IOException {
        String page = Files.readString(file, StandardCharsets.UTF_8);
        String begin = "<!-- measured: " + name + " -->";
        int from = page.indexOf(begin);
        int to = page.indexOf(END, from);
        if (from < 0 || to < 0) {
            throw new IllegalArgumentException(file + " has no place for " + name);
        }
        String measured = begin + "\n" + table + "\n" + machine() + "\n" + page.substring(to);
        Files.writeString(file, page.substring(0, from) + measured, StandardCharsets.UTF_8);
    }

    private static String machine() {
        Runtime runtime = Runtime.getRuntime();
        return "Measured on " + LocalDate.now(ZoneOffset.UTC) + ": " + runtime.availableProcessors()
                + " processors (" + System.getProperty("os.arch") + clock() + "), " + System.getProperty("os.name")
                + ", " + System.getProperty("java.vm.name") + " " + Runtime.version() + ".";
    }

    /** How fast the processor's clock ticks, where the system tells. */
    private static String clock() {
        try (Stream<String> lines = Files.lines(Path.of("/proc/cpuinfo"))) {
            return lines.filter(line -> line.startsWith("cpu MHz"))
                    .map(line -> ", " + line.substring(line.indexOf(':') + 1).strip() + " MHz")
                    .findFirst()
                    .orElse("");
        } catch (IOException none) {
            return "";
        }
    }
}

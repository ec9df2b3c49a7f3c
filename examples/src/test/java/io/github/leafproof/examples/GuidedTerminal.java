package io.github.leafproof.examples;

import com.pty4j.PtyProcess;
import com.pty4j.PtyProcessBuilder;
import com.pty4j.WinSize;
import io.github.leafproof.dsl.cli.Main;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The program at a terminal of the test's own: somebody types, and what the terminal shows is written down. */
final class GuidedTerminal implements AutoCloseable {

    private static final long PATIENCE = TimeUnit.SECONDS.toNanos(120);
    private static final Pattern SIGNALS = Pattern.compile("\u001b(?:\\[[0-9;?]*[ -/]*[@-~]|[=>()][0B]?)");
    private static final Pattern PROMPT = Pattern.compile("[^\n]*> $");

    private final PtyProcess process;
    private final StringBuilder shown = new StringBuilder();
    private boolean ended;
    private int read;

    private GuidedTerminal(PtyProcess process) {
        this.process = process;
        Thread reader = new Thread(this::follow, "what the terminal shows");
        reader.setDaemon(true);
        reader.start();
    }

    /**
     * Runs a command.
     *
     * @param terminal what kind of terminal it is, as TERM says it
     */
    static GuidedTerminal run(String terminal, int columns, List<String> command) throws IOException {
        List<String> whole = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                program(),
                Main.class.getName()));
        whole.addAll(command);
        Map<String, String> environment = new HashMap<>(System.getenv());
        environment.put("TERM", terminal);
        environment.remove("COLUMNS");
        environment.remove("LINES");
        return new GuidedTerminal(new PtyProcessBuilder(whole.toArray(String[]::new))
                .setEnvironment(environment)
                .setInitialColumns(columns)
                .setInitialRows(40)
                .start());
    }

    /** Some who run tests load them from elsewhere than the class path. */
    private static String program() {
        Stream<String> loaded = GuidedTerminal.class.getClassLoader() instanceof URLClassLoader loader
                ? Arrays.stream(loader.getURLs()).map(URL::getPath)
                : Stream.of();
        return Stream.concat(loaded, Stream.of(System.getProperty("java.class.path")))
                .collect(Collectors.joining(File.pathSeparator));
    }

    private void follow() {
        try (Reader from = new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8)) {
            char[] some = new char[4096];
            for (int count = from.read(some); count >= 0; count = from.read(some)) {
                synchronized (shown) {
                    shown.append(some, 0, count);
                    shown.notifyAll();
                }
            }
        } catch (IOException closed) {
            // A terminal whose program has ended reads as an error on some systems.
        }
        synchronized (shown) {
            ended = true;
            shown.notifyAll();
        }
    }

    /** Waits for the next prompt, then types. */
    void type(String keys) {
        awaitPrompt();
        press(keys);
    }

    /** Types at once. */
    void press(String keys) {
        try {
            synchronized (shown) {
                read = shown.length();
            }
            process.getOutputStream().write(keys.getBytes(StandardCharsets.UTF_8));
            process.getOutputStream().flush();
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    void awaitPrompt() {
        await(text -> PROMPT.matcher(text).find());
    }

    private void await(Predicate<String> there) {
        long patience = System.nanoTime() + PATIENCE;
        synchronized (shown) {
            while (!there.test(plain(shown.substring(read)))) {
                long left = TimeUnit.NANOSECONDS.toMillis(patience - System.nanoTime());
                if (ended || left <= 0) {
                    throw new AssertionError("no prompt came:\n" + plain(shown.toString()));
                }
                try {
                    shown.wait(left);
                } catch (InterruptedException stopped) {
                    throw new IllegalStateException(stopped);
                }
            }
        }
    }

    void resize(int columns) {
        process.setWinSize(new WinSize(columns, 40));
    }

    /** Ends the program as a power cut would. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    /** How the program ended, which it has to do by itself. */
    int exit() throws InterruptedException {
        if (!process.waitFor(2, TimeUnit.MINUTES)) {
            throw new AssertionError("it does not end:\n" + whole());
        }
        synchronized (shown) {
            while (!ended) {
                shown.wait(TimeUnit.SECONDS.toMillis(10));
            }
        }
        return process.exitValue();
    }

    /** Everything that was shown, with its signals to the terminal. */
    String raw() {
        synchronized (shown) {
            return shown.toString();
        }
    }

    /** Everything that was shown, as a person reads it. */
    String whole() {
        return plain(raw());
    }

    private static String plain(String shown) {
        return SIGNALS.matcher(shown).replaceAll("").replace("\r", "");
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}

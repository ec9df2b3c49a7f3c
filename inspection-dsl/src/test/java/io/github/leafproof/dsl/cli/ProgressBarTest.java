package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgressBarTest {

    private static final String WIPE = "\r\u001b[K";

    private final AtomicLong clock = new AtomicLong();
    private final ByteArrayOutputStream written = new ByteArrayOutputStream();
    private final ProgressBar bar =
            new ProgressBar(new PrintStream(written, false, StandardCharsets.UTF_8), clock::get);

    private String written() {
        return written.toString(StandardCharsets.UTF_8);
    }

    @Test
    void it_is_drawn_over_itself_a_few_times_a_second_and_wiped_before_something_else_is_said() {
        bar.reached(0.5);
        bar.counted(10, 1);
        assertThat(written()).isEmpty();
        clock.addAndGet(100_000_000);
        bar.counted(50_000, 12);
        bar.counted(50_001, 12);
        bar.clear();
        bar.clear();

        assertThat(written())
                .isEqualTo(WIPE + "[###############---------------]  50 %  50000 sheets, 12 differ" + WIPE);
    }

    @Test
    void where_nobody_knows_how_much_there_is_it_only_counts() {
        clock.addAndGet(100_000_000);
        bar.counted(7, 0);

        assertThat(written()).isEqualTo(WIPE + "7 sheets, 0 differ");
    }

    @Test
    void where_nobody_looks_nothing_is_drawn() {
        ProgressBar unseen = new ProgressBar(null, clock::get);
        clock.addAndGet(1_000_000_000);

        unseen.counted(7, 0);
        unseen.clear();

        assertThat(written()).isEmpty();
    }

    @Test
    void a_file_and_nothing_are_no_terminals(@TempDir Path here) throws Exception {
        assertThat(Main.isTerminal(Files.writeString(here.resolve("errors.txt"), "")))
                .isFalse();
        assertThat(Main.isTerminal(here.resolve("none"))).isFalse();
        assertThat(Main.isTerminal(Path.of("/dev/null"))).isFalse();
    }
}

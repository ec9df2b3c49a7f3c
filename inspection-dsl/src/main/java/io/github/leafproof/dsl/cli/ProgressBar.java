package io.github.leafproof.dsl.cli;

import java.io.PrintStream;
import java.util.Locale;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/** How far a long work has come, in one line of a terminal that is written over again and again. */
final class ProgressBar {

    private static final int WIDTH = 30;
    private static final long LEAST_NANOS = 100_000_000;
    private static final String WIPE = "\r\u001b[K";

    private final @Nullable PrintStream terminal;
    private final LongSupplier nanos;
    private double reached = Double.NaN;
    private long shownAt;
    private boolean shown;

    /**
     * A bar of nothing yet.
     *
     * @param terminal where it is drawn; null where nobody looks, and then nothing is
     * @param nanos the time, in billionths of a second from any beginning
     */
    ProgressBar(@Nullable PrintStream terminal, LongSupplier nanos) {
        this.terminal = terminal;
        this.nanos = nanos;
        this.shownAt = nanos.getAsLong();
    }

    /** Says which share is behind; not a number where nobody knows how much there is. */
    void reached(double share) {
        reached = share;
    }

    /** Says how many sheets are done, and draws the bar where it was not drawn just now. */
    void counted(long sheets, long differing) {
        if (terminal == null || nanos.getAsLong() - shownAt < LEAST_NANOS) {
            return;
        }
        shownAt = nanos.getAsLong();
        shown = true;
        terminal.print(WIPE + bar() + sheets + " sheets, " + differing + " differ");
        terminal.flush();
    }

    private String bar() {
        if (Double.isNaN(reached)) {
            return "";
        }
        int full = (int) Math.round(reached * WIDTH);
        return "[" + "#".repeat(full) + "-".repeat(WIDTH - full) + "] "
                + String.format(Locale.ROOT, "%3.0f %%  ", reached * 100);
    }

    /** Takes it off the screen, before something else is written there. */
    void clear() {
        if (terminal != null && shown) {
            shown = false;
            terminal.print(WIPE);
            terminal.flush();
        }
    }
}

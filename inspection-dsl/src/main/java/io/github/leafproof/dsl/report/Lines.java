package io.github.leafproof.dsl.report;

import java.util.List;
import java.util.Locale;

/** A text for a terminal, line by line, wrapped at a hundred letters or as its reader's terminal wants it; lines end in {@code \n}. */
public final class Lines {

    private static final int WIDTH = 100;

    private final StringBuilder text = new StringBuilder();
    private final int width;

    /** No line yet. */
    public Lines() {
        this(WIDTH);
    }

    /** No line yet, and none to be longer than so many letters, as far as words can be parted. */
    public Lines(int width) {
        this.width = width;
    }

    /** A line as it is. */
    public void line(String words) {
        text.append(words.stripTrailing()).append('\n');
    }

    /** Words behind a lead, wrapped under themselves. */
    public void block(String lead, String words) {
        StringBuilder current = new StringBuilder(lead);
        boolean empty = true;
        for (String word : words.split(" ", -1)) {
            if (!empty && current.length() + 1 + word.length() > width) {
                line(current.toString());
                current = new StringBuilder(" ".repeat(lead.length()));
                empty = true;
            }
            current.append(empty ? "" : " ").append(word);
            empty = false;
        }
        line(current.toString());
    }

    /** Words behind the name of a field of a check. */
    public void field(String name, String words) {
        block(String.format(Locale.ROOT, "      %-12s", name), words);
    }

    /** Points below a title, with a blank line behind them; nothing where there are none. */
    public void list(String title, List<String> points) {
        if (!points.isEmpty()) {
            line(title);
            points.forEach(point -> block("  - ", point));
            line("");
        }
    }

    @Override
    public String toString() {
        return text.toString();
    }
}

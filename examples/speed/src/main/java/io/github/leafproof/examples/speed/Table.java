package io.github.leafproof.examples.speed;

import java.util.StringJoiner;

/** A table as Markdown writes it. */
final class Table {

    private final StringBuilder text = new StringBuilder();

    Table(String... columns) {
        row(columns);
        text.append("|---".repeat(columns.length)).append("|\n");
    }

    void row(String... cells) {
        StringJoiner row = new StringJoiner(" | ", "| ", " |\n");
        for (String cell : cells) {
            row.add(cell);
        }
        text.append(row);
    }

    String text() {
        return text.toString();
    }
}

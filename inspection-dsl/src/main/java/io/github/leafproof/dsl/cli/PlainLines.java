package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.guide.Look;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * Plain lines in, plain lines out: for scripts, pipes and terminals that can do no more. Lines that nobody types at a
 * terminal are shown behind their prompts, so that what is written reads as a conversation.
 */
final class PlainLines implements Shell {

    private final Console console;
    private final BufferedReader in;

    PlainLines(Console console) {
        this.console = console;
        this.in = new BufferedReader(new InputStreamReader(console.in(), StandardCharsets.UTF_8));
    }

    @Override
    public void show(String text) {
        console.print(text);
        console.out().flush();
    }

    @Override
    public @Nullable String read(String prompt) {
        show(prompt);
        try {
            String line = in.readLine();
            if (!console.typed()) {
                show(line == null ? "\n" : line + "\n");
            }
            return line;
        } catch (IOException unreadable) {
            return null;
        }
    }

    @Override
    public Look look() {
        return Look.plain();
    }

    @Override
    public void close() {}
}

package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.guide.Guide;
import io.github.leafproof.dsl.guide.Look;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.jline.reader.Candidate;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jspecify.annotations.Nullable;

/**
 * Lines typed at a terminal: they can be edited, fetched again with the arrow keys, and completed with the tabulator. What
 * is said is as wide as the terminal, also after its size has changed.
 */
final class EditedLines implements Shell {

    private final Terminal terminal;
    private final LineReader reader;
    private final boolean colour;

    private EditedLines(Terminal terminal, LineReader reader, boolean colour) {
        this.terminal = terminal;
        this.reader = reader;
        this.colour = colour;
    }

    /**
     * Takes over the terminal that the program runs in.
     *
     * @throws IOException when there is none, or it can do too little
     */
    static EditedLines open(Guide guide, boolean colour) throws IOException {
        Terminal terminal = TerminalBuilder.builder()
                .name("leafproof")
                .encoding(StandardCharsets.UTF_8)
                .provider("exec")
                .dumb(false)
                .build();
        LineReader reader = LineReaderBuilder.builder()
                .terminal(terminal)
                .parser((line, cursor, context) -> new WholeLine(line, cursor))
                .completer((line, typed, candidates) -> guide.completions(typed.line()).stream()
                        .map(each -> new Candidate(each, each, null, null, null, null, !each.endsWith(" ")))
                        .forEach(candidates::add))
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .option(LineReader.Option.BRACKETED_PASTE, false)
                .build();
        return new EditedLines(terminal, reader, colour);
    }

    @Override
    public void show(String text) {
        terminal.writer().print(text);
        terminal.writer().flush();
    }

    /** Ctrl-C drops what is begun; where nothing is, it leaves like Ctrl-D. */
    @Override
    public @Nullable String read(String prompt) {
        while (true) {
            try {
                return reader.readLine(prompt);
            } catch (UserInterruptException interrupted) {
                if (interrupted.getPartialLine().isBlank()) {
                    return null;
                }
            } catch (EndOfFileException nobodyTypes) {
                return null;
            }
        }
    }

    @Override
    public Look look() {
        return new Look(terminal.getSize().getColumns(), colour);
    }

    @Override
    public void close() {
        try {
            terminal.close();
        } catch (IOException gone) {
            // Whoever closed the window has closed it all.
        }
    }
}

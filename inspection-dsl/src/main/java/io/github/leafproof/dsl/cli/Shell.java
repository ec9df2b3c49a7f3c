package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.guide.Guide;
import io.github.leafproof.dsl.guide.Look;
import io.github.leafproof.dsl.guide.Said;
import org.jspecify.annotations.Nullable;

/** Where somebody types, and sees what is said to it. */
interface Shell extends AutoCloseable {

    /** Shows what is said. */
    void show(String text);

    /** The next line that is typed; null when nobody types any more. */
    @Nullable
    String read(String prompt);

    /** How wide what is said may be now, and whether in colour. */
    Look look();

    @Override
    void close();

    /** Talks until it is over. */
    default void talk(Guide guide) {
        Said said = guide.greet();
        show(said.text());
        while (!said.isOver()) {
            String line = read(said.prompt());
            guide.look(look());
            said = line == null ? guide.leave() : guide.hear(line);
            show(said.text());
        }
    }
}

package io.github.leafproof.dsl.guide;

import io.github.leafproof.dsl.session.Finished;
import io.github.leafproof.dsl.session.Heading;
import io.github.leafproof.dsl.session.Session;
import io.github.leafproof.inspection.record.Read;
import org.jspecify.annotations.Nullable;

/** What the guide leaves to the program around it: where a session is kept, and what is written at the end. */
public interface Surroundings {

    /** What is done, and on what: the procedure's title and the engine. */
    String title();

    /** Begins the session, once it is known what stands above the entries and who makes them. */
    Read<Session> begin(Heading heading, @Nullable String by);

    /** Writes what goes with a finished sheet, and says in a few lines where everything is. */
    String handOver(Finished finished);

    /** How to go on another time, as a sentence or two. */
    String howToGoOn();
}

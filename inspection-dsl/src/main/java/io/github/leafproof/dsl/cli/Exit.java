package io.github.leafproof.dsl.cli;

import io.github.leafproof.inspection.verdict.Release;

/** What a run tells the program that started it. The numbers are a promise; see the README. */
enum Exit {
    /** The engine is ready, the procedures are sound, the rehearsals came out as expected. */
    GOOD(0),
    /** The engine is held or rejected, or a rehearsal came out otherwise. */
    NOT_GOOD(1),
    /** A file or the command itself cannot be used. */
    BAD_INPUT(2),
    /** The inspection is not finished. */
    UNFINISHED(3),
    /** A mistake of ours. */
    OUR_MISTAKE(70);

    private final int code;

    Exit(int code) {
        this.code = code;
    }

    /** How a judged engine ends a run. */
    static Exit of(Release release) {
        return switch (release) {
            case READY -> GOOD;
            case HOLD, REJECT -> NOT_GOOD;
            case UNFINISHED -> UNFINISHED;
        };
    }

    int code() {
        return code;
    }
}

package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;

/** What is said of a file that the machine does not hand over; no test can make one that nobody may read. */
public final class Unreadable {

    private Unreadable() {}

    public static Diagnostic file(String name) {
        return ReadingDiagnostics.unreadable(SourceText.of(name, ""));
    }
}

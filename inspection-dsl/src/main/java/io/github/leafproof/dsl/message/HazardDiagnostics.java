package io.github.leafproof.dsl.message;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;
import java.util.List;

/** Dangers that a procedure brings and does not warn of. */
public final class HazardDiagnostics {

    private HazardDiagnostics() {}

    /** A state of the bench in which the engine runs. */
    public static Diagnostic runsInState(Span span, String setup, String state, List<String> lacking) {
        return Diagnostic.error(
                        Code.LP424,
                        span,
                        "the engine runs while " + setup + " is " + state + ", and " + silent(lacking))
                .help("say in the setup " + setup + ": while " + state + " hazard " + String.join(", ", lacking));
    }

    /** An observation that is made on an engine that runs. */
    public static Diagnostic runsWhileRead(Span span, String observation, List<String> lacking) {
        return Diagnostic.error(
                        Code.LP424, span, "the engine runs while " + observation + " is read, and " + silent(lacking))
                .help("add to the observation: hazard " + String.join(", ", lacking)
                        + "; or let it need a state that carries them");
    }

    private static String silent(List<String> lacking) {
        int last = lacking.size() - 1;
        String words =
                last == 0 ? lacking.get(0) : String.join(", ", lacking.subList(0, last)) + " or " + lacking.get(last);
        return "nothing warns of " + words;
    }
}

package io.github.leafproof.dsl.session;

/** What has become of an observation in a session. */
public enum Place {
    /** It was entered, and no further trial would settle anything. */
    DONE,
    /** It was tried, and could not be observed. */
    COULD_NOT,
    /** It is still to be entered; or it was, and another trial would settle what is still open. */
    TO_DO,
    /** It was put off until nothing else is left. */
    PUT_OFF,
    /** It was passed over. */
    SKIPPED,
    /** It has to wait: for a gate that does not let through, or for what decides whether it applies. */
    WAITING,
    /** It does not concern this engine. */
    NOT_APPLICABLE
}

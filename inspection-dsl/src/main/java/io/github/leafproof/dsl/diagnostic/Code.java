package io.github.leafproof.dsl.diagnostic;

/** The mistakes a procedure can hold. A code once given keeps its meaning. */
public enum Code {
    // 1xx: reading the file, and its grammar
    LP101("The file cannot be read");

    private final String summary;

    Code(String summary) {
        this.summary = summary;
    }

    /** What kind of mistake it is, in a line. */
    public String summary() {
        return summary;
    }
}

package io.github.leafproof.dsl.diagnostic;

/** The mistakes a procedure can hold. A code once given keeps its meaning. */
public enum Code {
    // 1xx: reading the file, and its grammar
    LP101("The file cannot be found"),
    LP102("A folder stands where a file should"),
    LP103("The file cannot be read"),
    LP104("The file is not UTF-8"),
    LP105("The file is empty"),
    LP106("A sign that means nothing"),
    LP107("A text without its closing quote"),
    LP108("Quotes that are not the straight ones"),
    LP109("A semicolon"),
    LP110("An uncertainty written into the procedure"),
    LP111("A decimal comma"),
    LP112("A number without a digit before its point"),
    LP113("A full stop behind a unit"),
    LP114("A bracket that is never closed"),
    LP115("A bracket that closes nothing"),
    LP116("Brackets of two kinds as a pair"),
    LP118("A word of the language as a name"),
    LP119("A misspelt word"),
    LP120("Something is missing"),
    LP121("Something that does not belong there"),
    LP122("A declaration inside a block that holds none"),
    LP123("A clause outside of what it belongs to"),
    LP124("A check without a title"),
    LP125("A procedure without title or revision"),
    LP127("Comparisons in a chain"),
    LP128("A confidence that is not in per cent"),
    LP129("A number that should be whole"),
    LP130("A hole of a text that is never closed"),
    LP131("A brace that closes no hole of its text"),
    LP132("A backslash before an ordinary letter"),
    LP133("A hole of a text without a value"),
    LP134("More digits than can be shown"),
    LP135("A value in the name of an option"),
    LP136("A word too many in a check's heading"),
    LP137("The same thing said twice"),
    LP138("Gates for a for"),

    // 7xx: bounds
    LP701("A file that is too large"),
    LP702("Nesting that is too deep"),
    LP703("An expression that is too long"),
    LP704("More problems than are listed");

    private final String summary;

    Code(String summary) {
        this.summary = summary;
    }

    /** What kind of mistake it is, in a line. */
    public String summary() {
        return summary;
    }
}

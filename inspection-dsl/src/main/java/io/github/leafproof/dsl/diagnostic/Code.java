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

    // 2xx: dimensions, units and types
    LP201("Unlike quantities are compared"),
    LP202("Unlike quantities are added or subtracted"),
    LP203("A unit is not known"),
    LP204("A value is shown in a unit of another dimension"),
    LP205("A number cannot be read or is out of range"),
    LP206("An absolute temperature is used as if it were a difference"),
    LP207("A power is not a small whole number"),
    LP208("A condition is needed"),
    LP209("A number or quantity is needed"),
    LP210("A choice is made by something that is no choice"),
    LP211("A choice leaves an option out"),
    LP212("The cases of a choice are of different types"),
    LP213("A function is given the wrong number of values"),
    LP214("A function is given a value of the wrong type"),
    LP215("A function makes no sense for these dimensions"),
    LP216("A measured value is compared for equality"),
    LP217("One of the options is needed"),
    LP218("Options without order are compared as if they had one"),
    LP219("A text is compared for size"),
    LP220("A condition is compared with something else than yes or no"),
    LP221("A list of items is compared for size"),
    LP222("A list of items is needed"),
    LP223("Advice is not a text"),
    LP224("A type is not known"),
    LP225("An instrument reads something that is no quantity"),
    LP226("An observation and its gauge do not go together"),

    // 3xx: names
    LP301("A name is not known"),
    LP302("A name is declared twice"),
    LP303("A fact of the engine is not known"),
    LP304("A function is not known"),
    LP305("A gauge is not known"),
    LP306("A setup is not known"),
    LP307("A state of a setup is not known"),
    LP308("A hazard is not known"),
    LP309("A check is not known"),
    LP310("An observation is not known"),
    LP311("An option is not known"),
    LP312("A word of the language is not known here"),
    LP313("Something stands twice in a list"),
    LP314("A name hides another"),
    LP315("A check is used as a value"),
    LP316("A function is used as a value"),
    LP317("An index is wrong or missing"),
    LP318("A declaration in a loop lacks the loop's index"),
    LP319("An index belongs to no loop"),

    // 4xx: how a procedure is put together
    LP401("The procedure has no name"),
    LP402("Something is said twice"),
    LP403("A revision is not a number from 1"),
    LP404("The procedure checks nothing"),
    LP405("A value is made of itself"),
    LP406("Gates wait for each other"),
    LP407("A check requires nothing"),
    LP408("A check waits for one that is no gate"),
    LP409("Limits are upside down"),
    LP410("A tolerance is negative"),
    LP411("A confidence is out of range"),
    LP412("Otherwise is not the last of the release"),
    LP413("The release does not cover every case"),
    LP414("A stage stands inside a stage"),
    LP415("Something for the whole procedure stands in a loop"),
    LP416("An observation needs two states of one setup"),
    LP417("No change leads to the state that is needed"),
    LP418("A gap is observed without leaves or pins"),
    LP419("A text depends on values where it must not"),
    LP420("The file is for a later language"),
    LP421("A part of the language is not understood"),
    LP422("Whether the procedure applies depends on more than the engine"),
    LP431("Something is declared and never used"),

    // 5xx: rehearsals
    LP501("Two rehearsals have one title"),
    LP502("A rehearsal names no engine or no gauges"),
    LP503("A rehearsal expects nothing"),

    // 7xx: bounds
    LP701("A file that is too large"),
    LP702("Nesting that is too deep"),
    LP703("An expression that is too long"),
    LP704("More problems than are listed"),
    LP711("The procedure is too large with its loops written out"),
    LP712("A value refers to later ones through too many steps"),
    LP713("A function is too large with all that it applies");

    private final String summary;

    Code(String summary) {
        this.summary = summary;
    }

    /** What kind of mistake it is, in a line. */
    public String summary() {
        return summary;
    }
}

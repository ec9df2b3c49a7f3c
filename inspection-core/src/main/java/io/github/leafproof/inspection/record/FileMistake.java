package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.record.Problem.Level;

/** Every kind of mistake a file can hold. A code once given keeps its meaning. */
public enum FileMistake {
    // The file as a whole
    LP601("There is no such file"),
    LP602("A folder stands where a file is wanted"),
    LP603("The file cannot be opened or read"),
    LP604("The file is larger than any such file can be"),
    LP605("The file is empty"),
    LP606("The file is not UTF-8 text"),
    LP607("The file is not JSON, or was cut off"),
    LP608("The file is nested deeper, or holds more or longer values, than any such file can"),
    LP609("There are more problems than are shown"),
    LP610("The file could not be written"),

    // Keys and kinds of values
    LP611("A key stands twice in the same object"),
    LP612("A key is not known"),
    LP613("A key is missing"),
    LP614("A value is of the wrong kind"),
    LP615("A text is blank, or far too long"),
    LP616("A text holds characters that cannot be shown"),
    LP617("A list is empty"),
    LP618("The same thing stands twice in a list"),
    LP619("A word is none of those that are understood"),

    // Quantities, numbers and dates
    LP621("A text is no quantity"),
    LP622("A quantity is of the wrong dimension"),
    LP623("An amount is negative or zero where that is impossible"),
    LP624("A number is out of range"),
    LP625("A date or time is not written as ISO 8601 has it"),
    LP626("Two dates are in the wrong order"),

    // Engine card
    LP631("A lower limit is above its upper limit"),
    LP632("Two facts of an engine cannot both be true"),
    LP633("A shop's own fact has the name of a standard one"),

    // Gauge tray
    LP641("A gauge is stated without any uncertainty"),
    LP642("An uncertainty is stated in two ways at once, or by half"),
    LP643("Two leaves of a set have the same marking"),
    LP644("Two gauges have the same name"),
    LP645("A set holds more leaves than any set does"),

    // Job sheet
    LP651("An entry gives nothing, or more than one thing"),
    LP652("A key does not belong to this sort of entry"),
    LP653("A correction corrects nothing"),

    // Report
    LP661("The report is of a form this program does not know"),

    // What only shows when sheet, card and tray are held against the procedure
    LP667("More is given for one observation than anybody enters"),
    LP668("A fact that the shop added to its card is not what the procedure declares it to be"),
    LP669("The procedure is not for this engine"),
    LP670("It cannot be told whether the procedure is for this engine"),
    LP671("The sheet is for another procedure"),
    LP672("The sheet is for another revision of the procedure"),
    LP673("The tray lacks a gauge that the procedure asks for"),
    LP674("A gauge is not of the kind that the procedure asks for"),
    LP675("The card has no variant of this name"),
    LP676("The procedure observes nothing of this name"),
    LP677("An observation is entered twice, with neither a correction nor an adjustment"),
    LP678("An entry gives another kind of thing than was to be observed"),
    LP679("An entry gives a choice that the procedure does not have"),
    LP680("The set cannot offer the leaves that a trial names"),

    // What looks odd, and can be used all the same
    LP681("The displacement does not follow from bore and stroke", Level.WARNING),
    LP682("A leaf measures far from its marking", Level.WARNING),
    LP683("The times of the entries run backwards", Level.WARNING),

    // What an engine's history shows, on one sheet or over several
    LP684("The running time becomes less"),
    LP685("A sheet of a history does not say which engine it is about"),
    LP686("The sheets of a history are about more than one engine"),
    LP687("A sheet of a history is there twice"),
    LP688("The procedure of a sheet is not found"),

    // A sheet that is filled in at the bench
    LP760("A sheet is being filled in by another session"),
    LP761("A sheet of this name is there, and was not written by this session"),
    LP762("A session was begun with this sheet already"),
    LP763("No session was begun with this sheet"),
    LP764("A line of a journal is not as it was written"),
    LP765("A journal is gone on with by other files than it was begun with"),
    LP766("The last line of a journal was cut off, and is dropped", Level.WARNING),
    LP767("A journal cannot be written or read"),
    LP768("There is nothing to take back"),
    LP769("The journal is of a form this program does not know"),

    // Keys and seals: whether a report is the one that was handed over, and rests on the files that it names
    LP785("A file holds no key of the kind that is wanted"),
    LP786("A key would be written over another file"),
    LP787("The report has no seal"),
    LP788("The seal is of a form this program does not know"),
    LP789("The report is not as it was when it was sealed"),
    LP790("The seal is not as it was when it was made"),
    LP791("The report was sealed with another key"),
    LP792("A file that the report rests on is not as it was"),
    LP793("A file that the report rests on is not found"),
    LP794("The files of the report, judged again, decide otherwise"),
    LP795("The files of the report, judged again, give another text", Level.WARNING);

    private final String meaning;
    private final Level level;

    FileMistake(String meaning) {
        this(meaning, Level.ERROR);
    }

    FileMistake(String meaning, Level level) {
        this.meaning = meaning;
        this.level = level;
    }

    /** What kind of mistake it is, in a line. */
    public String meaning() {
        return meaning;
    }

    /** Whether a file with this mistake cannot be used. */
    public Level level() {
        return level;
    }
}

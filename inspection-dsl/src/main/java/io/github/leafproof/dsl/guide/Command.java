package io.github.leafproof.dsl.guide;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What can be said at any prompt beside the answer. */
enum Command {
    HELP("help", "what can be said here", "?"),
    WHY("why", "what hangs on this, and what it is held to; with the name of a check, why it came out as it did"),
    CANNOT("cannot", "it cannot be observed: write why behind it"),
    LATER("later", "put it off until nothing else is left"),
    SKIP("skip", "pass it over; it is not asked for again"),
    BACK("back", "to what was entered before, to look at it or to correct it"),
    NEXT("next", "on with the best next step"),
    GO("go", "to an observation by its name"),
    CORRECT("correct", "a slip of the pen: the answer behind it counts, the old one stays visible"),
    UNDO("undo", "take the last thing back, as if it had not been said"),
    ADJUST(
            "adjust",
            "the adjuster was turned, by so much if that is known: adjust 45 deg; what was found stays as found"),
    LIST("list", "everything there is to observe, and what has become of it"),
    REPORT("report", "the report as it stands"),
    FINISH("finish", "write the sheet and the report"),
    STOP("stop", "leave; everything entered is kept", "quit exit");

    private final String word;
    private final String meaning;
    private final String others;

    Command(String word, String meaning) {
        this(word, meaning, "");
    }

    /** With other words for the same, blanks between them. */
    Command(String word, String meaning, String others) {
        this.word = word;
        this.meaning = meaning;
        this.others = " " + others + " ";
    }

    String word() {
        return word;
    }

    String meaning() {
        return meaning;
    }

    /** The command of this word, whatever its case. */
    static Optional<Command> named(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(each -> each.word.equals(lower) || each.others.contains(" " + lower + " "))
                .findFirst();
    }
}

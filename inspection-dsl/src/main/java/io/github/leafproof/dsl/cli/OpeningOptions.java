package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.guide.Opening;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.QuantityException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What stands above the entries of a new sheet; what is not given is asked for. */
final class OpeningOptions {

    @Option(names = "--by", paramLabel = "NAME", description = "Who does the work; asked for if not given.")
    private @Nullable String by;

    @Option(names = "--serial", paramLabel = "NUMBER", description = "The engine's serial number; asked for.")
    private @Nullable String serial;

    @Option(names = "--condition", paramLabel = "WORDS", description = "How it came in; asked for.")
    private @Nullable String condition;

    @Option(names = "--owner", paramLabel = "WORDS", description = "Whose it is, or which job; asked for.")
    private @Nullable String owner;

    @Option(names = "--variant", paramLabel = "NAME", description = "Which of the card's variants it is; asked for.")
    private @Nullable String variant;

    @Option(names = "--date", paramLabel = "DAY", description = "The day of the work, as 2026-03-04; asked for.")
    private @Nullable String date;

    @Option(
            names = "--running-time",
            paramLabel = "TIME",
            description = "How long the engine had run in all before, such as \"2 h\"; unknown if not given.")
    private @Nullable String runningTime;

    @Nullable
    String by() {
        return by;
    }

    /** Hands over what is given; tells what of it makes no sense. */
    boolean tell(Opening opening, Console console) {
        boolean sound = told(opening, Opening.Detail.BY, by, console);
        sound &= told(opening, Opening.Detail.SERIAL, serial, console);
        sound &= told(opening, Opening.Detail.CONDITION, condition, console);
        sound &= told(opening, Opening.Detail.OWNER, owner, console);
        sound &= told(opening, Opening.Detail.VARIANT, variant, console);
        sound &= told(opening, Opening.Detail.DATE, date, console);
        sound &= toldRunningTime(opening, console);
        return sound;
    }

    private static boolean told(Opening opening, Opening.Detail detail, @Nullable String given, Console console) {
        Optional<String> wrong = opening.know(detail, given);
        wrong.ifPresent(problem -> console.err().print("leafproof: --" + detail.word() + ": " + problem + "\n"));
        return wrong.isEmpty();
    }

    private boolean toldRunningTime(Opening opening, Console console) {
        if (runningTime == null) {
            return true;
        }
        try {
            Quantity time = Quantity.parse(runningTime);
            if (time.dimension().equals(Dimension.TIME) && time.base() >= 0) {
                opening.knowRunningTime(time);
                return true;
            }
        } catch (QuantityException noQuantity) {
            // Said below, as of any other that is no time.
        }
        console.err()
                .print("leafproof: --running-time: " + runningTime + " is no time\n   help: write it as \"2 h\"\n");
        return false;
    }
}

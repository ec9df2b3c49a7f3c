package io.github.leafproof.dsl.guide;

import io.github.leafproof.inspection.record.Act;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.record.TrialGiven;
import java.util.stream.Collectors;

/** What was entered or done, in the words it was typed in. */
final class GivenWords {

    private GivenWords() {}

    static String of(Given given) {
        if (given instanceof Given.Words words) {
            return words.text();
        }
        if (given instanceof Given.Flag flag) {
            return flag.yes() ? "yes" : "no";
        }
        if (given instanceof Given.Count count) {
            return count.number().toPlainString();
        }
        if (given instanceof Given.Series series) {
            return String.join(", ", series.readings());
        }
        if (given instanceof Given.Items items) {
            return items.items().isEmpty() ? "nothing" : String.join(", ", items.items());
        }
        if (given instanceof Given.Trials trials) {
            return trials.trials().stream().map(GivenWords::trial).collect(Collectors.joining(", "));
        }
        if (given instanceof Given.Cannot cannot) {
            return "cannot: " + cannot.why();
        }
        Given.Adjusted adjusted = (Given.Adjusted) given;
        return adjusted.turn() == null ? "adjusted" : "adjusted by " + adjusted.turn();
    }

    private static String trial(TrialGiven trial) {
        return String.join(" + ", trial.leaves()) + " " + trial.result().word();
    }

    static String of(Act act) {
        if (act instanceof Act.Entered entered) {
            return entered.entry().observe() + ": " + of(entered.entry().given());
        }
        if (act instanceof Act.Brought brought) {
            return brought.state() + " " + brought.to();
        }
        if (act instanceof Act.Skipped skipped) {
            return skipped.observe() + " was passed over";
        }
        return act instanceof Act.PutOff putOff ? putOff.observe() + " was put off" : "the last thing";
    }
}

package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.quantity.Quantity;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What somebody entered, before anybody asks what the observation wants. */
public sealed interface Given {

    /** A text: a quantity, a choice, a grade, a date or free words; the procedure knows which. */
    record Words(String text) implements Given {}

    /** Yes or no. */
    record Flag(boolean yes) implements Given {}

    /** A bare number, such as a count. */
    record Count(BigDecimal number) implements Given {
        /** Takes 3 and 3.0 for the same number. */
        public Count {
            number = number.stripTrailingZeros();
        }
    }

    /** Repeated readings in the order they were taken, each a quantity in text; all of one kind, at least one. */
    record Series(List<String> readings) implements Given {
        public Series {
            readings = List.copyOf(readings);
        }
    }

    /** Which things of a list were found; none at all is an answer too. */
    record Items(List<String> items) implements Given {
        public Items {
            items = List.copyOf(items);
        }
    }

    /** What leaves or pins were offered to a gap and what they did, in that order; at least one. */
    record Trials(List<TrialGiven> trials) implements Given {
        public Trials {
            trials = List.copyOf(trials);
        }
    }

    /** It could not be observed, and why. */
    record Cannot(String why) implements Given {}

    /** Something was adjusted; what was observed before is as found, what is observed after is as left. */
    record Adjusted(@Nullable Quantity turn) implements Given {}
}

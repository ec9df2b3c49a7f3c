package io.github.leafproof.dsl.coverage;

import io.github.leafproof.dsl.meaning.Saying;
import java.util.List;

/** How much of a place, or of a line, is shown. */
enum Standing {
    FULL("✓", "shown", "full"),
    PART("◐", "partly shown", "part"),
    NONE("✗", "not shown", "none");

    private final String sign;
    private final String words;
    private final String style;

    Standing(String sign, String words, String style) {
        this.sign = sign;
        this.words = words;
        this.style = style;
    }

    String sign() {
        return sign;
    }

    String words() {
        return words;
    }

    /** The class of the page's style. */
    String style() {
        return style;
    }

    static Standing of(Saying saying, Coverage coverage) {
        return of(List.of(saying), coverage);
    }

    /** Of several places together. */
    static Standing of(List<Saying> sayings, Coverage coverage) {
        int asked = 0;
        int missing = 0;
        for (Saying saying : sayings) {
            asked += saying.ways().size();
            missing += coverage.missing(saying).size();
        }
        return missing == 0 ? FULL : missing == asked ? NONE : PART;
    }
}

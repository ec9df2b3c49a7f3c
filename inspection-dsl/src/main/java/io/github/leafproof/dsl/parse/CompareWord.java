package io.github.leafproof.dsl.parse;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Words that compare in everyday speech, and what the language says for them. */
enum CompareWord {
    MORE("at least", ">", "above|atleast|bigger|exceeds|greater|higher|larger|longer|minimum|more|over"),
    LESS("at most", "<", "atmost|below|fewer|less|lower|maximum|shorter|smaller|under|upto"),
    SAME("is", "=", "equal|equals|same");

    /** What such a word may go on with: {@code greater than or equal to}. */
    private static final List<String> ON = List.of("than", "or", "equal", "to", "as");

    private final String written;
    private final String sign;
    private final Pattern words;

    CompareWord(String written, String sign, String words) {
        this.written = written;
        this.sign = sign;
        this.words = Pattern.compile(words);
    }

    static Optional<CompareWord> of(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(each -> each.words.matcher(lower).matches())
                .findFirst();
    }

    static boolean goesOn(String word) {
        return ON.contains(word.toLowerCase(Locale.ROOT));
    }

    /** What to write instead. */
    String remedy() {
        return this == SAME
                ? "write `is`; of a measured value say how near is near enough: `within \u2026 of \u2026`"
                : "write `" + written + "` instead, or `" + sign + "` where the limit itself is not good enough";
    }
}

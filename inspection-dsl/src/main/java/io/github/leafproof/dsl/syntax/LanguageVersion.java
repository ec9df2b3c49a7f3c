package io.github.leafproof.dsl.syntax;

import java.util.List;
import java.util.Optional;

/**
 * A version of the procedure language: {@code language 1}. A procedure that does not say is written in {@link #current()}.
 * Within a version what a procedure means stays as it is; a program refuses versions that it does not know.
 *
 * @param number the whole number behind {@code language}, from 1
 */
public record LanguageVersion(int number) implements Comparable<LanguageVersion> {

    private static final List<LanguageVersion> KNOWN = List.of(new LanguageVersion(1));

    public LanguageVersion {
        if (number < 1) {
            throw new IllegalArgumentException("versions of the language count from 1, and " + number + " is none");
        }
    }

    /** The version that this program writes, and takes a procedure for that does not say. */
    public static LanguageVersion current() {
        return KNOWN.get(KNOWN.size() - 1);
    }

    /** All versions that this program reads, the oldest first. */
    public static List<LanguageVersion> known() {
        return KNOWN;
    }

    /** The version that these digits name; empty for what is no version's number at all. */
    public static Optional<LanguageVersion> written(String digits) {
        return digits.matches("[1-9]\\d{0,8}")
                ? Optional.of(new LanguageVersion(Integer.parseInt(digits)))
                : Optional.empty();
    }

    /** Whether this program reads it. */
    public boolean isKnown() {
        return KNOWN.contains(this);
    }

    @Override
    public int compareTo(LanguageVersion other) {
        return Integer.compare(number, other.number);
    }

    /** As a procedure writes it: {@code language 1}. */
    @Override
    public String toString() {
        return "language " + number;
    }
}

package io.github.leafproof.dsl.mutants;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * By how much a number in a procedure is shifted: by a tenth of it, rounded down to one digit, and by one unit of the last
 * digit written at least. A gauge that fits its limit is off by no more than a tenth of it (common practice: ten to one), so
 * that a shift by a tenth is the least that a good gauge shows; and nobody writes a digit that does not matter.
 */
final class Shift {

    private static final Pattern NUMBER =
            Pattern.compile("(\\d{1,3}(?: \\d{3})+|\\d+)(\\.\\d+)?([eE][+\\-\u2212]?\\d+)?");
    private static final BigDecimal TENTH = new BigDecimal("0.1");
    private static final MathContext ONE_DIGIT = new MathContext(1, RoundingMode.DOWN);

    private Shift() {}

    /** An amount as written, more and less of it, its unit unchanged. */
    static List<String> ofAmount(String written) {
        Matcher matcher = NUMBER.matcher(written);
        if (!matcher.lookingAt()) {
            return List.of();
        }
        String digits = matcher.group().replace(" ", "").replace('\u2212', '-');
        String rest = written.substring(matcher.end());
        BigDecimal number = new BigDecimal(digits);
        BigDecimal by = number.multiply(TENTH).round(ONE_DIGIT).max(number.ulp());
        return List.of(plain(number.add(by)) + rest, plain(number.subtract(by)) + rest);
    }

    private static String plain(BigDecimal number) {
        return number.toPlainString();
    }

    /** A day as written, the next and the one before. */
    static List<String> ofDay(String written) {
        LocalDate day = LocalDate.parse(written);
        return List.of(day.plusDays(1).toString(), day.minusDays(1).toString());
    }
}

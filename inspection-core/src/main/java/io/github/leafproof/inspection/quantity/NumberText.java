package io.github.leafproof.inspection.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The number at the head of a quantity, and what follows it.
 *
 * <p>Numbers are read as a workshop writes them: {@code 0.05}, {@code .010}, {@code 9 200}, {@code 1.5e-3}, {@code 3/64},
 * {@code 1 1/2}. The powers of ten and of π after a fraction are what {@link Exact#text()} writes for numbers that have no
 * other exact form.
 */
record NumberText(Exact value, String rest) {
    private static final String BLANK = "[ \u00a0\u2009\u202f]";
    private static final int HIGHEST_EXPONENT = 100;
    /** So many digits and a point are a long in any case. */
    private static final int MOST_PLAIN_DIGITS = 18;

    private static final Pattern FRACTION = Pattern.compile("(?<sign>[-+\u2212]?)\\s*(?:(?<whole>\\d+)" + BLANK
            + "+)?(?<over>\\d+)/(?<under>\\d+)(?<ten>·10\\^-?\\d{1,3})?");
    private static final Pattern DECIMAL = Pattern.compile("(?<sign>[-+\u2212]?)\\s*(?<digits>"
            + "(?:\\d{1,3}(?:" + BLANK + "\\d{3})+(?!\\d)|\\d+)?"
            + "(?:\\.(?:\\d{3}(?:" + BLANK + "\\d{3})*" + BLANK + "\\d{1,3}(?!\\d)|\\d+))?)"
            + "(?<exponent>[eE][-+\u2212]?\\d+)?");
    private static final Pattern PI = Pattern.compile("·π\\^(-?\\d{1,2})");
    private static final Pattern COMMA =
            Pattern.compile("[-+\u2212]?\\s*(\\d[\\d" + BLANK.substring(1) + "*,\\d[\\d.]*).*");

    static NumberText read(String text) {
        NumberText plain = plain(text);
        return plain == null ? inAnyForm(text) : plain;
    }

    /**
     * What most quantities look like, {@code 0.05 mm}: digits with at most one point among them, and a blank and a letter, or
     * nothing, behind them. Null for all else, which has its own ways and its own mistakes.
     */
    private static @Nullable NumberText plain(String text) {
        int end = 0;
        int point = -1;
        long digits = 0;
        for (; end < text.length() && end <= MOST_PLAIN_DIGITS; end++) {
            char c = text.charAt(end);
            if (c == '.' && point < 0 && end > 0) {
                point = end;
            } else if (c >= '0' && c <= '9') {
                digits = 10 * digits + (c - '0');
            } else {
                break;
            }
        }
        if (end == 0 || end > MOST_PLAIN_DIGITS || point == end - 1 || !endsAt(text, end)) {
            return null;
        }
        return new NumberText(
                Exact.decimal(digits, point < 0 ? 0 : end - point - 1),
                text.substring(Math.min(text.length(), end + 1)));
    }

    private static boolean endsAt(String text, int end) {
        return end == text.length()
                || (text.charAt(end) == ' ' && end + 1 < text.length() && Character.isLetter(text.charAt(end + 1)));
    }

    private static NumberText inAnyForm(String text) {
        Matcher comma = COMMA.matcher(text);
        if (comma.matches()) {
            throw new QuantityException(
                    "the comma in " + comma.group(1) + " could mean a decimal or thousands",
                    "write a dot for decimals and a blank for thousands: 0.05 mm, 9 200 rpm");
        }
        Matcher fraction = FRACTION.matcher(text);
        NumberText head = fraction.lookingAt() ? fraction(fraction, text) : decimal(text);
        return head.withPi().checked(text);
    }

    private static NumberText fraction(Matcher m, String text) {
        BigInteger under = new BigInteger(m.group("under"));
        if (under.signum() == 0) {
            throw new QuantityException(m.group() + " divides by zero", "write a fraction such as 1/4");
        }
        Exact value = Exact.of(new BigInteger(m.group("over")), under);
        if (m.group("whole") != null) {
            value = value.plus(Exact.of(new BigDecimal(m.group("whole"))));
        }
        if (m.group("ten") != null) {
            int exponent = Integer.parseInt(m.group("ten").substring("·10^".length()));
            value = value.times(Exact.of(BigDecimal.ONE.scaleByPowerOfTen(exponent)));
        }
        return new NumberText(signed(value, m.group("sign")), text.substring(m.end()));
    }

    private static NumberText decimal(String text) {
        Matcher m = DECIMAL.matcher(text);
        if (!m.lookingAt() || m.group("digits").isEmpty()) {
            throw noNumber(text);
        }
        BigDecimal digits = new BigDecimal(m.group("digits").replaceAll(BLANK, ""));
        BigDecimal number = digits.scaleByPowerOfTen(exponent(m.group("exponent"), text));
        return new NumberText(signed(Exact.of(number), m.group("sign")), text.substring(m.end()));
    }

    // Checked before any arithmetic: 1e999999999 must not be written out in full.
    private static int exponent(@Nullable String written, String text) {
        if (written == null) {
            return 0;
        }
        String digits = written.substring(1).replace('\u2212', '-').replace("+", "");
        if (digits.length() > 4 || Math.abs(Integer.parseInt(digits)) > HIGHEST_EXPONENT) {
            throw new QuantityException(
                    text.strip() + " is beyond what can be measured", "numbers go from 1e-100 to just below 1e100");
        }
        return Integer.parseInt(digits);
    }

    private static QuantityException noNumber(String text) {
        String start = text.strip().toLowerCase(Locale.ROOT);
        if (start.matches("[-+\u2212]?(nan|inf|∞).*")) {
            return new QuantityException(
                    "\"" + text.strip() + "\" is not an amount anybody can measure",
                    "write a number and a unit, such as 0.05 mm");
        }
        return start.isEmpty()
                ? new QuantityException("there is nothing here", "write a number and a unit, such as 0.05 mm")
                : new QuantityException(
                        "\"" + text.strip() + "\" does not start with a number",
                        "write a number and a unit, such as 0.05 mm");
    }

    private static Exact signed(Exact value, String sign) {
        boolean negative = sign.equals("-") || sign.equals("\u2212");
        return negative ? value.negated() : value;
    }

    private NumberText withPi() {
        Matcher m = PI.matcher(rest);
        return m.lookingAt()
                ? new NumberText(value.timesPi(Integer.parseInt(m.group(1))), rest.substring(m.end()))
                : this;
    }

    private NumberText checked(String text) {
        if (rest.matches("\\s*[\\d.].*")) {
            throw new QuantityException(
                    "\"" + text.strip() + "\" is not one number and a unit",
                    "write the number in one piece, thousands in groups of three: 9 200 rpm");
        }
        return this;
    }
}

package io.github.leafproof.dsl.message;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.inspection.quantity.Spelling;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Mistakes with dimensions, units and types. */
public final class TypeDiagnostics {

    /** More words than these are not read. */
    private static final int MOST_WORDS = 12;

    private static final Pattern DIGITS = Pattern.compile("[0-9.]+");

    private TypeDiagnostics() {}

    /**
     * Two quantities that cannot be compared.
     *
     * @param unit the usual unit of the left one
     */
    public static Diagnostic unlikeComparison(Span left, String leftWords, Span right, String rightWords, String unit) {
        Diagnostic unlike = Diagnostic.error(
                        Code.LP201, right, "this compares " + a(leftWords) + " with " + a(rightWords))
                .labelled(rightWords)
                .alsoAt(left, leftWords);
        String given = right.source().of(right);
        return rightWords.equals("number")
                        && !unit.isEmpty()
                        && DIGITS.matcher(given).matches()
                ? unlike.help("write the unit with the number, such as " + given + " " + unit)
                : unlike.help(likeWithLike(leftWords, rightWords));
    }

    private static String likeWithLike(String leftWords, String rightWords) {
        if (leftWords.equals("temperature") && rightWords.equals("temperature difference")) {
            return "K is for differences; a temperature is written in °C or °F";
        }
        String wanted = leftWords.equals("gap") ? "a length" : a(leftWords);
        return rightWords.equals("number")
                ? "a limit here must be " + wanted + "; is its unit missing?"
                : "compare like with like: a limit here must be " + wanted
                        + (leftWords.equals("number") ? ", without a unit" : ", unit and all");
    }

    public static Diagnostic unlikeSum(
            Span sign, String word, Span left, String leftWords, Span right, String rightWords) {
        boolean temperatures = leftWords.startsWith("temperature") && rightWords.startsWith("temperature");
        String does = word.equals("+") ? "adds" : "takes";
        String from = word.equals("+") ? " to " : " from ";
        return Diagnostic.error(Code.LP202, sign, "this " + does + " " + a(rightWords) + from + a(leftWords))
                .alsoAt(left, leftWords)
                .alsoAt(right, rightWords)
                .help(
                        temperatures
                                ? "a temperature less a temperature is a difference, and a difference, written in K, can"
                                        + " be added to a temperature or taken from it"
                                : "only like quantities have a sum or a difference; is a unit wrong, or missing?");
    }

    public static Diagnostic unknownUnit(Span span, String message, String remedy) {
        return Diagnostic.error(Code.LP203, span, message).help(remedy);
    }

    public static Diagnostic unitOfOtherDimension(Span value, String valueWords, Span unit, String unitWords) {
        return Diagnostic.error(Code.LP204, unit, "this shows " + a(valueWords) + " in a unit of " + unitWords)
                .labelled(unitWords)
                .alsoAt(value, valueWords)
                .help("choose a unit of " + valueWords);
    }

    /** The same of {@code 1/2 in}, which is one half of what there is to an inch. */
    public static Diagnostic dividedByItsUnit(Span value, String valueWords, Span unit, String unitWords) {
        return unitOfOtherDimension(value, valueWords, unit, unitWords)
                .help("what divides takes its unit with it: write 0.5 in, or 1 in / 2, and not 1/2 in");
    }

    public static Diagnostic badNumber(Span span, String message, String remedy) {
        return Diagnostic.error(Code.LP205, span, message).help(remedy);
    }

    // done: what was to be done with the temperature: multiplied, divided, turned to its negative
    public static Diagnostic absoluteTemperature(Span span, String done) {
        return Diagnostic.error(Code.LP206, span, "a temperature cannot be " + done)
                .help("only a difference of temperatures can, such as head - room");
    }

    public static Diagnostic badPower(Span span, int largest) {
        return Diagnostic.error(Code.LP207, span, "a power must be a plain whole number up to " + largest)
                .help("write it as digits, as in x ^ 2; for a root write sqrt(x)");
    }

    public static Diagnostic noCondition(Span span, String words) {
        return Diagnostic.error(Code.LP208, span, "this is " + a(words) + ", and a condition is needed here")
                .labelled(words)
                .help("compare it with something: at least, at most, between … and …, within … of …, is");
    }

    public static Diagnostic noNumber(Span span, String words) {
        return Diagnostic.error(Code.LP209, span, "this is " + a(words) + ", and a number or a quantity is needed here")
                .labelled(words)
                .help(
                        words.equals("date")
                                ? "dates are compared with: is before, is after, is not before, is not after, between …"
                                        + " and …; a date less a date is a time"
                                : "only numbers and quantities can be computed with or held against limits");
    }

    public static Diagnostic nothingToChoose(Span span, String words) {
        return Diagnostic.error(
                        Code.LP210, span, "this is " + a(words) + ", and only one of a few options can be chosen by")
                .labelled(words)
                .help(
                        words.equals("yes/no")
                                ? "for a yes or no write: if … then … else …"
                                : "choose by what was declared as one of … or grade …; a quantity is compared with limits");
    }

    public static Diagnostic choiceNotExhausted(Span span, List<String> left) {
        return Diagnostic.error(Code.LP211, span, "the choice says nothing for " + few(left))
                .help("add " + (left.size() == 1 ? "it" : "them") + ", or a line: otherwise: …");
    }

    public static Diagnostic unlikeArms(Span one, String firstWords, Span other, String otherWords) {
        return Diagnostic.error(Code.LP212, other, "this may be " + a(firstWords) + " or " + a(otherWords))
                .labelled(otherWords)
                .alsoAt(one, firstWords)
                .help("let every case give the same kind of value");
    }

    public static Diagnostic wrongArguments(Span span, String function, String wanted, int given) {
        return Diagnostic.error(Code.LP213, span, function + " takes " + wanted + ", and " + given(given))
                .help("write them in its parentheses, with commas between");
    }

    private static String given(int values) {
        return values == 0 ? "none is given" : values == 1 ? "one is given" : values + " are given";
    }

    public static Diagnostic wrongArgument(Span span, String given, String function, String parameter, String wanted) {
        return Diagnostic.error(
                        Code.LP214,
                        span,
                        "this is " + a(given) + ", and " + parameter + " of " + function + " must be " + a(wanted))
                .labelled(given)
                .help(
                        wanted.equals("gap")
                                ? "give it what is observed as a gap"
                                : wanted.equals("number") ? "give it a plain number" : "give it " + a(wanted));
    }

    public static Diagnostic functionDimensions(Span span, String function, List<String> given, String remedy) {
        return Diagnostic.error(
                        Code.LP215,
                        span,
                        function + " of "
                                + given.stream().map(TypeDiagnostics::a).collect(Collectors.joining(" and "))
                                + " makes no sense")
                .help(remedy);
    }

    // near: how the tolerance is written that was probably meant, or null
    public static Diagnostic measuredEqual(Span span, String words, @Nullable String near) {
        return Diagnostic.error(Code.LP216, span, "a measured " + words + " is never exactly equal to anything")
                .help(
                        near == null
                                ? "say how near is near enough: within … of …, or between … and …"
                                : "± says how well a value is known; for a tolerance write: " + near);
    }

    public static Diagnostic noOption(Span span, String words, List<String> options) {
        return Diagnostic.error(Code.LP217, span, "this is " + a(words) + ", and one of the options is needed here")
                .help("the options are " + few(options));
    }

    public static Diagnostic notGraded(Span span, List<String> options) {
        return Diagnostic.error(Code.LP218, span, "these options have no order: " + few(options))
                .help("if they have one, declare them as a grade, lowest first: grade … < …");
    }

    public static Diagnostic textCompared(Span span) {
        return Diagnostic.error(Code.LP219, span, "a text can only be, or not be, another text")
                .help("write: is \"…\"");
    }

    public static Diagnostic yesNoCompared(Span span) {
        return Diagnostic.error(Code.LP220, span, "a yes or no is compared with nothing but yes or no")
                .help("write it alone, or with not before it");
    }

    public static Diagnostic itemsCompared(Span span) {
        return Diagnostic.error(Code.LP221, span, "a list of items has no size to compare")
                .help("write: … has all of engine.box");
    }

    public static Diagnostic noItems(Span span, String words) {
        return Diagnostic.error(Code.LP222, span, "this is " + a(words) + ", and a list of items is needed here")
                .labelled(words)
                .help("a list is what is observed as items, or engine.box");
    }

    public static Diagnostic noAdvice(Span span, String words) {
        return Diagnostic.error(Code.LP223, span, "advice is a text, and this is " + a(words))
                .labelled(words)
                .help("put it into words: \"Turn it {…}\"");
    }

    public static Diagnostic unknownType(Span span, String words, List<String> known) {
        return Diagnostic.error(Code.LP224, span, words + " is no type")
                .help(Spelling.nearest(words, known)
                        .map(near -> "did you mean " + near + "?")
                        .orElse("types are the dimensions in words (length, temperature, …), number, count, yes/no,"
                                + " one of …, grade …, text, date, gap, items, series of …"));
    }

    public static Diagnostic notOnACard(Span span, String words) {
        return Diagnostic.error(Code.LP321, span, "a card cannot state " + a(words))
                .help(
                        "a card states a quantity, a number, a count, yes or no, an option, a text or a list of items; what"
                                + " is found on one engine is observed");
    }

    public static Diagnostic noReading(Span span, String words) {
        return Diagnostic.error(Code.LP225, span, "an instrument reads a quantity, and this is " + a(words))
                .help("as in: gauge infrared : reading of temperature");
    }

    public static Diagnostic gaugeForOther(Span type, String typeWords, Span gauge, String gaugeWords) {
        return Diagnostic.error(Code.LP226, gauge, a(typeWords) + " is not observed with " + gaugeWords)
                .labelled(gaugeWords)
                .alsoAt(type, typeWords)
                .help("a gap is felt with a leaf set or a pin set, a quantity is read from an instrument for it,"
                        + " a count may be kept by a counter");
    }

    /** With its article: a length, an angle, yes or no. */
    static String a(String words) {
        if (words.equals("yes/no")) {
            return "a yes or no";
        }
        if (words.equals("items")) {
            return "a list of items";
        }
        if (words.startsWith("one of ")) {
            return "an option (" + words + ")";
        }
        return ("aeiou".indexOf(words.charAt(0)) >= 0 ? "an " : "a ") + words;
    }

    private static String few(List<String> words) {
        String some = String.join(", ", words.subList(0, Math.min(MOST_WORDS, words.size())));
        return words.size() > MOST_WORDS ? some + " and " + (words.size() - MOST_WORDS) + " more" : some;
    }
}

package io.github.leafproof.dsl.message;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Name;
import io.github.leafproof.dsl.syntax.Target;
import io.github.leafproof.inspection.quantity.Spelling;
import io.github.leafproof.inspection.quantity.Unit;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Mistakes with names: unknown ones, doubled ones, ones used for what they are not. */
public final class NameDiagnostics {

    /** More names than these are not read. */
    private static final int MOST_NAMES = 12;

    private NameDiagnostics() {}

    public static Diagnostic unknown(Span span, String name, Collection<String> known) {
        String lower = name.toLowerCase(Locale.ROOT);
        return Diagnostic.error(Code.LP301, span, "nothing is called " + name)
                .help(
                        lower.equals("true") || lower.equals("false")
                                ? "write " + (lower.equals("true") ? "yes" : "no")
                                : nearest(name, known, "declare it with observe or let"));
    }

    /** The same where an expression stands by itself, and only names that were given a value before it are known. */
    public static Diagnostic notGivenBefore(Span span, String name, Collection<String> known) {
        Diagnostic unknown = Diagnostic.error(Code.LP301, span, "nothing is called " + name);
        return unknown.help(
                Unit.find(name).isPresent()
                        ? "a unit stands behind a number: 1 " + name
                        : nearest(name, known, "write its value, or give it one first: " + name + " = 0.10 mm"));
    }

    public static Diagnostic declaredTwice(Name name, String key, Span first) {
        return Diagnostic.error(Code.LP302, name.span(), key + " is declared twice")
                .labelled("again here")
                .alsoAt(first, "first here")
                .help("give one of them another name; no two things of a procedure are called the same");
    }

    public static Diagnostic unknownFact(Span span, String name, List<String> known) {
        return Diagnostic.error(Code.LP303, span, "an engine has no fact called " + name)
                .help(nearestFact(name, known)
                        .map(near -> "did you mean engine." + near + "?")
                        .orElse(
                                "docs/formats.md lists the facts of an engine; one that the shop adds to its cards is declared"
                                        + " first: card " + name + " : length"));
    }

    public static Diagnostic standardFact(Name name) {
        return Diagnostic.error(Code.LP320, name.span(), "engine." + name + " is known without a declaration")
                .help("take the line out, or give the shop's own fact another name");
    }

    /** Of facts of one kind (materials.cylinder) only the last word is compared: the rest is alike anyway. */
    private static Optional<String> nearestFact(String name, List<String> known) {
        String kind = name.substring(0, name.lastIndexOf('.') + 1);
        List<String> alike = known.stream()
                .filter(fact -> fact.startsWith(kind))
                .map(fact -> fact.substring(kind.length()))
                .toList();
        return Spelling.nearest(name.substring(kind.length()), alike).map(near -> kind + near);
    }

    public static Diagnostic unknownFunction(Span span, String name, List<String> known) {
        return Diagnostic.error(Code.LP304, span, "there is no function called " + name)
                .help(nearest(name, known, "the functions are " + listed(known)));
    }

    public static Diagnostic unknownGauge(Name name, Collection<String> known) {
        return Diagnostic.error(Code.LP305, name.span(), "no gauge is called " + name.text())
                .help(nearest(
                        name.text(),
                        known,
                        known.isEmpty()
                                ? "declare it, as in: gauge " + name.text() + " : leaf set, or reading of temperature"
                                : "the gauges are " + listed(known) + "; another is declared first, as in: gauge "
                                        + name.text() + " : leaf set"));
    }

    public static Diagnostic unknownSetup(Name name, Collection<String> known) {
        return Diagnostic.error(Code.LP306, name.span(), "no setup is called " + name.text())
                .help(nearest(name.text(), known, "declare it with setup"));
    }

    public static Diagnostic unknownState(Name state, String setup, Collection<String> known) {
        return Diagnostic.error(Code.LP307, state.span(), setup + " is never " + state.text())
                .help("what " + setup + " can be: " + listed(known));
    }

    public static Diagnostic unknownHazard(Name name, Collection<String> known) {
        return Diagnostic.error(Code.LP308, name.span(), "no hazard is called " + name.text())
                .help(nearest(name.text(), known, "the hazards are " + listed(known)));
    }

    public static Diagnostic unknownCheck(Span span, String name, Collection<String> known) {
        return Diagnostic.error(Code.LP309, span, "no check is called " + name)
                .help(nearest(name, known, "the checks are " + listed(known)));
    }

    public static Diagnostic unknownObservation(Span span, String name, Collection<String> known) {
        return Diagnostic.error(Code.LP310, span, "no observation is called " + name)
                .help(nearest(name, known, "the observations are " + listed(known)));
    }

    public static Diagnostic unknownOption(Span span, String word, List<String> known) {
        return Diagnostic.error(Code.LP311, span, word + " is none of the options here")
                .help(nearest(word, known, "the options are " + listed(known)));
    }

    /**
     * A word where only a few will do.
     *
     * @param what what kind of word is wanted: severity, outcome, release
     */
    public static Diagnostic unknownWord(Name word, String what, List<String> known) {
        String article = what.startsWith("o") ? "an " : "a ";
        return Diagnostic.error(Code.LP312, word.span(), word.text() + " is not " + article + what)
                .help(nearest(word.text(), known, "one of " + listed(known)));
    }

    public static Diagnostic optionTwice(Span span, String word) {
        return Diagnostic.error(Code.LP313, span, word + " stands here twice").help("take one of them out");
    }

    public static Diagnostic hidden(Name name, String other) {
        return Diagnostic.error(Code.LP314, name.span(), name.text() + " is already the name of " + other)
                .help("choose another name, so that no reader mistakes one for the other");
    }

    public static Diagnostic checkIsNoValue(Span span, String name) {
        return Diagnostic.error(Code.LP315, span, name + " is a check, which has an outcome and no value")
                .help("to wait for it write: after " + name);
    }

    public static Diagnostic functionIsNoValue(Span span, String name) {
        return Diagnostic.error(Code.LP316, span, name + " is a function and needs its values")
                .help("write them in parentheses: " + name + "(…)");
    }

    public static Diagnostic wrongIndex(Target target, List<String> rounds) {
        return Diagnostic.error(Code.LP317, target.span(), "there is no " + target)
                .help("it stands in a loop; write one of " + listed(rounds));
    }

    public static Diagnostic indexTooMany(Target target) {
        String name = target.name().text();
        return Diagnostic.error(Code.LP317, target.span(), "there is no " + target)
                .help(name + " stands in no loop; write " + name + " alone");
    }

    public static Diagnostic loopIndexMissing(Target target, String variable) {
        String name = target.toString();
        return Diagnostic.error(Code.LP318, target.span(), name + " would be declared once for every " + variable)
                .help("tell them apart: " + name + "[" + variable + "]");
    }

    public static Diagnostic indexWithoutLoop(Name index) {
        return Diagnostic.error(Code.LP319, index.span(), "no loop here runs over " + index.text())
                .help("put it inside: for " + index.text() + " in …, … { }");
    }

    private static String nearest(String word, Collection<String> known, String otherwise) {
        return Spelling.nearest(word, known)
                .map(near -> "did you mean " + near + "?")
                .orElse(otherwise);
    }

    private static String listed(Collection<String> words) {
        if (words.isEmpty()) {
            return "none so far";
        }
        String some = String.join(", ", words.stream().limit(MOST_NAMES).toList());
        return words.size() > MOST_NAMES ? some + " and " + (words.size() - MOST_NAMES) + " more" : some;
    }
}

package io.github.leafproof.dsl.message;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;

/** What can never come, or always comes, whatever is entered. All of it is legal, and probably not what was meant. */
public final class ReachDiagnostics {

    private static final String LOOK_AGAIN = "look at the limits and words in it once more, or take it out";

    private ReachDiagnostics() {}

    /** Silence would pass for soundness. */
    public static Diagnostic notThoughtThrough(Span procedure) {
        return Diagnostic.warning(
                        Code.LP716,
                        procedure,
                        "there is more to this procedure than can be thought through before it is used")
                .help(
                        "warnings of what can never come, or always comes, may be lacking; let choices go over fewer options"
                                + " at a time");
    }

    public static Diagnostic neverApplies(Span when, String check, Span declared) {
        return Diagnostic.warning(Code.LP433, when, "this never holds, so " + check + " is never judged")
                .alsoAt(declared, "the check")
                .help(LOOK_AGAIN);
    }

    public static Diagnostic neverAppliesBehindGates(Span when, String check, Span declared) {
        return Diagnostic.warning(
                        Code.LP433,
                        when,
                        "this never holds once the gates of " + check + " have passed, so it is never judged")
                .alsoAt(declared, "the check")
                .help("let this agree with what the gates show, or wait for other gates");
    }

    public static Diagnostic alwaysHolds(Span condition, String so) {
        return Diagnostic.warning(Code.LP434, condition, "this always holds, so " + so)
                .help(LOOK_AGAIN);
    }

    public static Diagnostic alwaysHoldsWhereItApplies(Span condition, Span when) {
        return Diagnostic.warning(Code.LP434, condition, "this always holds where the check applies")
                .alsoAt(when, "where it applies")
                .help("require something that can fail there, or take it out");
    }

    public static Diagnostic neverPasses(Span requirement, String check) {
        return Diagnostic.warning(Code.LP435, requirement, check + " can never pass: this never holds")
                .help(LOOK_AGAIN);
    }

    public static Diagnostic neverPassesWhereJudged(Span requirement, String check, Span declared) {
        return Diagnostic.warning(
                        Code.LP435,
                        requirement,
                        check + " can never pass: this never holds where the check applies and its gates have passed")
                .alsoAt(declared, "the check")
                .help("compare it with the when and the gates: they contradict each other");
    }

    public static Diagnostic waitsForever(Span check, String name, String gate, Span declared) {
        return Diagnostic.warning(
                        Code.LP436, check, name + " waits for " + gate + ", which never lets anything through")
                .alsoAt(declared, "the gate")
                .help("let the gate pass in some case, or do not wait for it");
    }

    public static Diagnostic gatesContradict(Span check, String name, String gate, Span declared) {
        return Diagnostic.warning(
                        Code.LP436,
                        check,
                        name + " is never judged: " + gate + " cannot pass together with its other gates and its when")
                .alsoAt(declared, "the gate")
                .help("wait for gates that can pass on one and the same engine");
    }

    public static Diagnostic adviceNeverGiven(Span occasion, String check, String word) {
        return Diagnostic.warning(Code.LP437, occasion, "this is never said: " + check + " never comes out " + word)
                .help(adviceRemedy(word));
    }

    private static String adviceRemedy(String word) {
        return switch (word) {
            case "high" -> "what is required has no upper limit to exceed; write if fails, or take the advice out";
            case "low" -> "what is required has no lower limit to fall below; write if fails, or take the advice out";
            case "tolerated" -> "tolerate something first: at most 0.10 mm tolerate to 0.14 mm; or take the advice out";
            case "open" -> "nothing uncertain is required here; write if fails, or take the advice out";
            case "contradicted" -> "only the leaves of a gap contradict each other; take the advice out";
            case "blocked" -> "the check waits for no gate; take the advice out";
            default -> "take the advice out, or require what can come out so";
        };
    }

    public static Diagnostic armNeverChosen(Span arm, Span subject) {
        return Diagnostic.warning(Code.LP438, arm, "this is never chosen")
                .alsoAt(subject, "is never that")
                .help("take it out");
    }

    public static Diagnostic otherwiseNeverChosen(Span value) {
        return Diagnostic.warning(Code.LP438, value, "this is never chosen: every option has a line of its own")
                .help("take the otherwise out");
    }

    public static Diagnostic ruleNeverHolds(Span rule) {
        return Diagnostic.warning(Code.LP439, rule, "this is never decided: the checks named here never come out so")
                .help("compare it with what each of them can come to");
    }

    public static Diagnostic ruleComesTooLate(Span rule, Span earlier) {
        return Diagnostic.warning(Code.LP439, rule, "this is never decided: a line above decides first")
                .alsoAt(earlier, "decides first")
                .help("the first line that holds decides; move this one above it, or take it out");
    }

    public static Diagnostic saysGateAgain(Span condition, String check) {
        return Diagnostic.warning(
                        Code.LP440, condition, "whenever " + check + " is judged, its gates have shown this already")
                .help("take it out, or do not wait for the gate that says the same");
    }

    public static Diagnostic neverAsked(Span when, String observation) {
        return Diagnostic.warning(Code.LP441, when, "this never holds, so " + observation + " is never asked for")
                .help(LOOK_AGAIN);
    }

    public static Diagnostic settled(Span condition, boolean holds) {
        return Diagnostic.warning(
                        Code.LP442,
                        condition,
                        holds
                                ? "this always holds, so what stands behind else never counts"
                                : "this never holds, so what stands behind then never counts")
                .help("keep the part that counts, or look at the condition once more");
    }

    public static Diagnostic measuredExactly(Span comparison) {
        return Diagnostic.warning(
                        Code.LP443,
                        comparison,
                        "this rests on something measured, and of that nobody can tell whether it is exactly anything")
                .help("allow for its uncertainty: within … of …, or between … and …");
    }
}

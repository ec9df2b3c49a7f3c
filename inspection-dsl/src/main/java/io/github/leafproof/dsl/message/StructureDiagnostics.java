package io.github.leafproof.dsl.message;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.List;

/** Mistakes in how a procedure is put together. */
public final class StructureDiagnostics {

    /** A longer circle is shown without its middle. */
    private static final int MOST_STEPS_SHOWN = 10;

    private StructureDiagnostics() {}

    public static Diagnostic noHeader(SourceText source) {
        return Diagnostic.error(Code.LP401, source, new Span(0, 0), "the procedure has no name")
                .help("begin with, for instance: procedure first_look \"First look\" revision 1");
    }

    public static Diagnostic givenTwice(SourceText source, Span again, Span first) {
        return Diagnostic.error(Code.LP402, source, again, "this can be said once in a procedure")
                .labelled("again here")
                .alsoAt(source, first, "first here")
                .help("keep one of them");
    }

    public static Diagnostic badRevision(SourceText source, Span span) {
        return Diagnostic.error(Code.LP403, source, span, "revisions count from 1")
                .help("write revision 1, and raise it when the meaning of the procedure changes");
    }

    public static Diagnostic noCheck(SourceText source, Span span) {
        return Diagnostic.error(Code.LP404, source, span, "the procedure checks nothing")
                .help("add a check, as in: check cold \"Engine is cold\" { require … }");
    }

    public static Diagnostic valueCircle(SourceText source, Span span, List<String> path) {
        return Diagnostic.error(Code.LP405, source, span, path.get(0) + " is made of itself: " + arrows(path))
                .help("neither a value nor a function can rest on itself; take one of these steps out");
    }

    public static Diagnostic gateCircle(SourceText source, Span span, List<String> path) {
        return Diagnostic.error(Code.LP406, source, span, path.get(0) + " would wait for itself: " + arrows(path))
                .help("take one after away, or none of these checks can ever be judged");
    }

    public static Diagnostic nothingRequired(SourceText source, Span span, String name) {
        return Diagnostic.error(Code.LP407, source, span, name + " requires nothing")
                .help("say what must hold: require …");
    }

    public static Diagnostic noGate(SourceText source, Span span, String name, Span declared) {
        return Diagnostic.error(Code.LP408, source, span, name + " is not a gate")
                .alsoAt(source, declared, "declared here")
                .help("write gate behind the title of " + name + ", so that readers see what waits for it");
    }

    public static Diagnostic limitsUpsideDown(
            SourceText source, Span low, String lowWords, Span high, String highWords) {
        return Diagnostic.error(Code.LP409, source, low, "nothing lies between " + lowWords + " and " + highWords)
                .labelled("the lower limit")
                .alsoAt(source, high, "the upper limit")
                .help("write the smaller limit first");
    }

    public static Diagnostic negativeTolerance(SourceText source, Span span) {
        return Diagnostic.error(Code.LP410, source, span, "nothing lies within less than zero of anything")
                .help("a tolerance counts to both sides and has no sign");
    }

    public static Diagnostic badConfidence(SourceText source, Span span) {
        return Diagnostic.error(Code.LP411, source, span, "a confidence lies from 50 % to 99.99 %")
                .help("95 % is usual; 50 % is simple acceptance, where a value counts as it reads");
    }

    public static Diagnostic otherwiseNotLast(SourceText source, Span span) {
        return Diagnostic.error(Code.LP412, source, span, "what comes after otherwise is never reached")
                .help("move it to the end of the release");
    }

    public static Diagnostic noOtherwise(SourceText source, Span span) {
        return Diagnostic.error(Code.LP413, source, span, "the release does not say what holds in every other case")
                .help("end it with: ready otherwise");
    }

    public static Diagnostic stageInStage(SourceText source, Span span, String outer) {
        return Diagnostic.error(Code.LP414, source, span, "a stage cannot stand inside the stage \"" + outer + "\"")
                .help("close the one before it first");
    }

    public static Diagnostic notInALoop(SourceText source, Span span) {
        return Diagnostic.error(Code.LP415, source, span, "this is said once for the whole procedure, not in a loop")
                .help("move it out of the for");
    }

    public static Diagnostic twoStates(SourceText source, Span span, String setup) {
        return Diagnostic.error(Code.LP416, source, span, setup + " cannot be two things at once")
                .help("keep one of the states of " + setup);
    }

    public static Diagnostic noWayTo(
            SourceText source, Span span, String setup, String from, String to, Span declared) {
        return Diagnostic.error(Code.LP417, source, span, "nothing leads " + setup + " from " + from + " to " + to)
                .alsoAt(source, declared, "declared here")
                .help("say in the setup how it is done: " + from + " -> " + to + " \"…\"");
    }

    public static Diagnostic gapWithoutGauge(SourceText source, Span span) {
        return Diagnostic.error(Code.LP418, source, span, "a gap is felt with something")
                .help("name the leaf set or pin set: with leaves");
    }

    public static Diagnostic textNotFixed(SourceText source, Span span) {
        return Diagnostic.error(Code.LP419, source, span, "this text must read the same for every engine")
                .help("only the variable of a loop may stand in its braces; what is measured can be shown in an ask or"
                        + " an advised text");
    }

    public static Diagnostic notYet(SourceText source, Span span) {
        return Diagnostic.error(Code.LP421, source, span, "this is kept for later, and means nothing yet")
                .help("take it out; docs/language.md says what a procedure can say");
    }

    public static Diagnostic appliesAsksMore(SourceText source, Span span) {
        return Diagnostic.error(
                        Code.LP422, source, span, "whether the procedure applies must follow from the engine alone")
                .help("ask for facts of the engine only, such as engine.displacement; leave the rest to a check");
    }

    public static Diagnostic gateForNothing(SourceText source, Span span, String name) {
        return Diagnostic.warning(Code.LP431, source, span, name + " is a gate, but nothing waits for it")
                .help("let a check wait for it with after " + name + ", or take the word gate out");
    }

    public static Diagnostic toleratedInside(SourceText source, Span tolerated, Span limit) {
        return Diagnostic.error(Code.LP423, source, tolerated, "this tolerates nothing that the limit does not allow")
                .labelled("tolerated")
                .alsoAt(source, limit, "the limit")
                .help("a tolerated limit lies beyond the limit; are the two the wrong way round?");
    }

    public static Diagnostic unused(SourceText source, Span span, String name, String what) {
        return Diagnostic.warning(Code.LP431, source, span, name + " is " + what)
                .help("take it out, or use it");
    }

    public static Diagnostic moreProblems(SourceText source, Span last, int more) {
        String words = more == 1 ? "one more problem is not listed" : more + " more problems are not listed";
        return Diagnostic.error(Code.LP704, source, new Span(last.end(), last.end()), words)
                .help("mend those above first");
    }

    public static Diagnostic tooLarge(SourceText source, Span span, int most) {
        return Diagnostic.error(
                        Code.LP711,
                        source,
                        span,
                        "with its loops written out the procedure is larger than " + most + " parts, or 64 MiB of text")
                .help("loops inside loops multiply: take values or a loop out");
    }

    public static Diagnostic listTooLong(SourceText source, Span first, int most) {
        return Diagnostic.error(Code.LP714, source, first, "there are more than " + most + " in this list")
                .help("this is the first that is too many; is it one list, or several?");
    }

    public static Diagnostic tooMuchInAll(SourceText source, Span span, int most) {
        return Diagnostic.error(
                        Code.LP713,
                        source,
                        span,
                        "all functions applied so far come to more than " + most + " steps of computing")
                .help("compute once in a let what is used again and again");
    }

    public static Diagnostic tooDeep(SourceText source, Span span) {
        return Diagnostic.error(Code.LP702, source, span, "this is nested too deep")
                .help("name a part of it with let and use the name");
    }

    public static Diagnostic tooManySteps(SourceText source, Span span, int most) {
        return Diagnostic.error(
                        Code.LP712,
                        source,
                        span,
                        "this refers to what is declared further down, and so on, through too many steps: " + most
                                + " are followed, or fewer long ones")
                .help("declare values and functions above those that use them");
    }

    public static Diagnostic functionTooLarge(SourceText source, Span span, int most, int deepest) {
        return Diagnostic.error(
                        Code.LP713,
                        source,
                        span,
                        "with all the functions it uses, this one comes to more than " + most
                                + " steps of computing, or to more than " + deepest + " within each other")
                .help("each function that uses another twice doubles it; keep in a let what is used twice");
    }

    private static String arrows(List<String> path) {
        int left = path.size() - MOST_STEPS_SHOWN;
        if (left <= 1) {
            return String.join(" -> ", path);
        }
        return String.join(" -> ", path.subList(0, MOST_STEPS_SHOWN - 1)) + " -> " + left + " more -> "
                + path.get(path.size() - 1);
    }
}

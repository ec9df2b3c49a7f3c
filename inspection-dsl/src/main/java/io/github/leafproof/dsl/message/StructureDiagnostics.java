package io.github.leafproof.dsl.message;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;
import java.util.List;

/** Mistakes in how a procedure is put together. */
public final class StructureDiagnostics {

    /** A longer circle is shown without its middle. */
    private static final int MOST_STEPS_SHOWN = 10;

    private StructureDiagnostics() {}

    // begins: where the procedure begins, behind the comments that stand above it
    public static Diagnostic noHeader(Span begins) {
        return Diagnostic.error(Code.LP401, begins, "the procedure has no name")
                .help(
                        "begin with, for instance: procedure first_look \"First look\" revision 1; a part for others to use has"
                                + " no such line, and is judged with the procedure that uses it");
    }

    public static Diagnostic givenTwice(Span again, Span first) {
        return Diagnostic.error(Code.LP402, again, "this can be said once in a procedure")
                .labelled("again here")
                .alsoAt(first, "first here")
                .help("keep one of them");
    }

    public static Diagnostic badRevision(Span span) {
        return Diagnostic.error(Code.LP403, span, "revisions count from 1")
                .help("write revision 1, and raise it when the meaning of the procedure changes");
    }

    public static Diagnostic noCheck(Span span) {
        return Diagnostic.error(Code.LP404, span, "the procedure checks nothing")
                .help("add a check, as in: check cold \"Engine is cold\" { require … }");
    }

    public static Diagnostic valueCircle(Span span, List<String> path) {
        return Diagnostic.error(Code.LP405, span, path.get(0) + " is made of itself: " + arrows(path))
                .help("neither a value nor a function can rest on itself; take one of these steps out");
    }

    public static Diagnostic gateCircle(Span span, List<String> path) {
        return Diagnostic.error(Code.LP406, span, path.get(0) + " would wait for itself: " + arrows(path))
                .help("take one after away, or none of these checks can ever be judged");
    }

    public static Diagnostic askingCircle(Span span, List<String> path) {
        return Diagnostic.error(
                        Code.LP432,
                        span,
                        path.get(0) + " is asked only when " + path.get(0) + " is known: " + arrows(path))
                .labelled("nobody can answer this before it is asked")
                .help("let its when rest on something that is entered before, or take one of these steps out");
    }

    public static Diagnostic nothingRequired(Span span, String name) {
        return Diagnostic.error(Code.LP407, span, name + " requires nothing").help("say what must hold: require …");
    }

    public static Diagnostic noGate(Span span, String name, Span declared) {
        return Diagnostic.error(Code.LP408, span, name + " is not a gate")
                .alsoAt(declared, "declared here")
                .help("write gate behind the title of " + name + ", so that readers see what waits for it");
    }

    // where: empty, or in which case: " where throttle_arm is metal"
    public static Diagnostic limitsUpsideDown(Span low, String lowWords, Span high, String highWords, String where) {
        return Diagnostic.error(Code.LP409, low, "nothing lies between " + lowWords + " and " + highWords + where)
                .labelled("the lower limit")
                .alsoAt(high, "the upper limit")
                .help("write the smaller limit first");
    }

    // where: empty, or in which case: " where throttle_arm is metal"
    public static Diagnostic negativeTolerance(Span span, String where) {
        return Diagnostic.error(
                        Code.LP410,
                        span,
                        "nothing lies within less than zero of anything"
                                + (where.isEmpty() ? "" : ", as this is" + where))
                .help("a tolerance counts to both sides and has no sign");
    }

    public static Diagnostic badConfidence(Span span) {
        return Diagnostic.error(Code.LP411, span, "a confidence lies from 50 % to 99.99 %")
                .help("95 % is usual; 50 % is simple acceptance, where a value counts as it reads");
    }

    public static Diagnostic otherwiseNotLast(Span span) {
        return Diagnostic.error(Code.LP412, span, "what comes after otherwise is never reached")
                .help("move it to the end of the release");
    }

    public static Diagnostic noOtherwise(Span span) {
        return Diagnostic.error(Code.LP413, span, "the release does not say what holds in every other case")
                .help("end it with: ready otherwise");
    }

    public static Diagnostic stageInStage(Span span, String outer) {
        return Diagnostic.error(Code.LP414, span, "a stage cannot stand inside the stage \"" + outer + "\"")
                .help("close the one before it first");
    }

    public static Diagnostic notInALoop(Span span) {
        return Diagnostic.error(Code.LP415, span, "this is said once for the whole procedure, not in a loop")
                .help("move it out of the for");
    }

    public static Diagnostic twoStates(Span span, String setup) {
        return Diagnostic.error(Code.LP416, span, setup + " cannot be two things at once")
                .help("keep one of the states of " + setup);
    }

    public static Diagnostic noWayTo(Span span, String setup, String from, String to, Span declared) {
        return Diagnostic.error(Code.LP417, span, "nothing leads " + setup + " from " + from + " to " + to)
                .alsoAt(declared, "declared here")
                .help("say in the setup how it is done: " + from + " -> " + to + " \"…\"");
    }

    public static Diagnostic gapWithoutGauge(Span span) {
        return Diagnostic.error(Code.LP418, span, "a gap is felt with something")
                .help("name the leaf set or pin set: with leaves");
    }

    public static Diagnostic textNotFixed(Span span) {
        return Diagnostic.error(Code.LP419, span, "this text must read the same for every engine")
                .help("only the variable of a loop may stand in its braces; what is measured can be shown in an ask or"
                        + " an advised text");
    }

    public static Diagnostic appliesAsksMore(Span span) {
        return Diagnostic.error(Code.LP422, span, "whether the procedure applies must follow from the engine alone")
                .help("ask for facts of the engine only, such as engine.displacement; leave the rest to a check");
    }

    public static Diagnostic gateForNothing(Span span, String name) {
        return Diagnostic.warning(Code.LP431, span, name + " is a gate, but nothing waits for it")
                .help("let a check wait for it with after " + name + ", or take the word gate out");
    }

    public static Diagnostic toleratedInside(Span tolerated, Span limit) {
        return Diagnostic.error(Code.LP423, tolerated, "this tolerates nothing that the limit does not allow")
                .labelled("tolerated")
                .alsoAt(limit, "the limit")
                .help("a tolerated limit lies beyond the limit; are the two the wrong way round?");
    }

    public static Diagnostic unused(Span span, String name, String what) {
        return Diagnostic.warning(Code.LP431, span, name + " is " + what).help("take it out, or use it");
    }

    public static Diagnostic moreProblems(Span last, int more, boolean anyError) {
        String words = more == 1 ? "one more problem is not listed" : more + " more problems are not listed";
        // A hundred warnings are no reason not to use a procedure.
        Diagnostic said = anyError
                ? Diagnostic.error(Code.LP704, last.behind(), words)
                : Diagnostic.warning(Code.LP704, last.behind(), words);
        return said.help("mend those above first");
    }

    public static Diagnostic tooLarge(Span span, int most) {
        return Diagnostic.error(
                        Code.LP711,
                        span,
                        "with its loops written out the procedure is larger than " + most + " parts, or 64 MiB of text")
                .help("loops inside loops multiply: take values or a loop out");
    }

    public static Diagnostic listTooLong(Span first, int most) {
        return Diagnostic.error(Code.LP714, first, "there are more than " + most + " in this list")
                .help("this is the first that is too many; is it one list, or several?");
    }

    public static Diagnostic tooMuchInAll(Span span, int most) {
        return Diagnostic.error(
                        Code.LP713,
                        span,
                        "all functions applied so far come to more than " + most + " steps of computing")
                .help("compute once in a let what is used again and again");
    }

    public static Diagnostic leansOnTooMuch(Span span) {
        return Diagnostic.error(
                        Code.LP715,
                        span,
                        "values and checks up to this one rest on more observations, all together, than a report can hold")
                .help("let a check rest on what it judges, and not on everything that was observed before it");
    }

    public static Diagnostic tooDeep(Span span) {
        return Diagnostic.error(Code.LP702, span, "this is nested too deep")
                .help("name a part of it with let and use the name");
    }

    public static Diagnostic tooManySteps(Span span, int most) {
        return Diagnostic.error(
                        Code.LP712,
                        span,
                        "this refers to what is declared further down, and so on, through too many steps: " + most
                                + " are followed, or fewer long ones")
                .help("declare values and functions above those that use them");
    }

    public static Diagnostic functionTooLarge(Span span, int most, int deepest) {
        return Diagnostic.error(
                        Code.LP713,
                        span,
                        "with all the functions it uses, this one comes to more than " + most
                                + " steps of computing, or to more than " + deepest + " within each other")
                .help("each function that uses another twice doubles it; keep in a let what is used twice");
    }

    static String arrows(List<String> path) {
        int left = path.size() - MOST_STEPS_SHOWN;
        if (left <= 1) {
            return String.join(" -> ", path);
        }
        return String.join(" -> ", path.subList(0, MOST_STEPS_SHOWN - 1)) + " -> " + left + " more -> "
                + path.get(path.size() - 1);
    }
}

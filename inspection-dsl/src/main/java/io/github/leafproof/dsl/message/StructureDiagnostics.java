package io.github.leafproof.dsl.message;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.List;

/** Mistakes in how a procedure is put together. */
public final class StructureDiagnostics {

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
        return Diagnostic.error(Code.LP403, source, span, "revisions count from 1");
    }

    public static Diagnostic noCheck(SourceText source, Span span) {
        return Diagnostic.error(Code.LP404, source, span, "the procedure checks nothing")
                .help("add a check, as in: check cold \"Engine is cold\" { require … }");
    }

    public static Diagnostic valueCircle(SourceText source, Span span, List<String> path) {
        return Diagnostic.error(Code.LP405, source, span, path.get(0) + " is made of itself: " + arrows(path))
                .help("break the circle: one of these must come from observations alone");
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
                .help("say how it is done: " + from + " -> " + to + " \"…\"");
    }

    public static Diagnostic gapWithoutGauge(SourceText source, Span span) {
        return Diagnostic.error(Code.LP418, source, span, "a gap is felt with something")
                .help("name the leaf set or pin set: with leaves");
    }

    public static Diagnostic textNotFixed(SourceText source, Span span) {
        return Diagnostic.error(Code.LP419, source, span, "this text must read the same for every engine")
                .help("only the name of a loop may stand in its braces; values belong into advice or ask");
    }

    public static Diagnostic laterLanguage(SourceText source, Span span, int version) {
        return Diagnostic.error(
                        Code.LP420,
                        source,
                        span,
                        "this is written in language " + version + "; language 1 is known here")
                .help("use a later Leafproof");
    }

    public static Diagnostic notYet(SourceText source, Span span) {
        return Diagnostic.error(Code.LP421, source, span, "this part of the language is not understood here")
                .help("docs/language.md says what is");
    }

    public static Diagnostic appliesAsksMore(SourceText source, Span span) {
        return Diagnostic.error(
                        Code.LP422, source, span, "whether the procedure applies must follow from the engine alone")
                .help("ask for facts of the engine only, such as engine.displacement; leave the rest to a check");
    }

    public static Diagnostic unused(SourceText source, Span span, String name, String what) {
        return Diagnostic.warning(Code.LP431, source, span, name + " is " + what)
                .help("take it out, or use it");
    }

    public static Diagnostic tooManyDeclarations(SourceText source, Span span, int most) {
        return Diagnostic.error(
                Code.LP711, source, span, "with its loops written out the procedure has more than " + most + " parts");
    }

    public static Diagnostic tooManySteps(SourceText source, Span span, int most) {
        return Diagnostic.error(
                        Code.LP712,
                        source,
                        span,
                        "this value refers to later ones through more than " + most + " steps")
                .help("declare values before those that use them");
    }

    public static Diagnostic functionTooLarge(SourceText source, Span span, int most) {
        return Diagnostic.error(
                        Code.LP713,
                        source,
                        span,
                        "with all that it applies this function comes to more than " + most + " steps")
                .help("keep what is used twice in a let");
    }

    private static String arrows(List<String> path) {
        return String.join(" -> ", path);
    }
}

package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.LanguageVersion;
import io.github.leafproof.dsl.syntax.Name;
import io.github.leafproof.dsl.syntax.Target;
import io.github.leafproof.dsl.syntax.Text;
import java.util.List;
import java.util.stream.Collectors;

/** What is said about declarations whose words are in order but which lack or repeat something. */
final class ClauseDiagnostics {

    private ClauseDiagnostics() {}

    static Diagnostic checkWithoutTitle(Target check) {
        return Diagnostic.error(Code.LP124, check.span(), "the check " + check + " has no title")
                .help("write what it is about behind its name: check " + check + " \"Engine is cold\" { \u2026 }");
    }

    static Diagnostic procedureIncomplete(Span header, boolean noTitle, boolean noRevision) {
        String lacks = noTitle && noRevision ? "title and no revision" : noTitle ? "title" : "revision";
        return Diagnostic.error(Code.LP125, header, "the procedure has no " + lacks)
                .help("write: procedure first_look \"First look\" revision 1");
    }

    static Diagnostic chainedComparison(Span first, Span second) {
        return Diagnostic.error(Code.LP127, second, "comparisons cannot be chained")
                .alsoAt(first, "already compared here")
                .help("write `x between 1 mm and 3 mm`, or join two comparisons with `and`");
    }

    static Diagnostic confidenceWithoutPercent(Expression.Amount amount) {
        return Diagnostic.error(Code.LP128, amount.span(), "a confidence is given in per cent")
                .help("write it with the sign, such as 95 %; for a limit write `at least` or `at most`");
    }

    static Diagnostic notWhole(Span number, String what) {
        return Diagnostic.error(Code.LP129, number, what + " is a whole number of at most 9 digits");
    }

    static Diagnostic strayHeaderWord(Name word, Name severity) {
        return Diagnostic.error(Code.LP136, word.span(), "`" + word + "` is one word too many")
                .alsoAt(severity.span(), "the severity")
                .help("behind a check's title stand its severity and `gate`, each at most once");
    }

    static Diagnostic nameOfSeveralWords(Span name, List<String> parts) {
        return Diagnostic.error(Code.LP145, name, "a name is one word")
                .help("write " + String.join("_", parts)
                        + "; a name has letters, digits and _, and begins with no digit");
    }

    static Diagnostic revisionWithoutWord(Span number, String digits) {
        return Diagnostic.error(Code.LP120, number.before(), "`revision` is missing before `" + digits + "`")
                .help("write: revision " + digits);
    }

    static Diagnostic beforeTheTitle(Name word, Text title) {
        return Diagnostic.error(Code.LP144, word.span(), "`" + word + "` stands before the title")
                .alsoAt(title.span(), "the title")
                .help("behind the name of a check stands its title, and then its severity and `gate`");
    }

    static Diagnostic beforeTheName(Name word, Name name, Text title) {
        return Diagnostic.error(Code.LP144, word.span(), "`" + word + "` stands before the name")
                .alsoAt(name.span(), "the name")
                .help("write: check " + name + " "
                        + GrammarDiagnostics.shortened(title.span().source().of(title.span())) + " " + word);
    }

    static Diagnostic saidTwice(Span again, String word, Span before) {
        return Diagnostic.error(Code.LP137, again, "`" + word + "` is said twice")
                .alsoAt(before, "said here before")
                .help("keep one of them");
    }

    static Diagnostic limitsOfNothing(Span sign, Expression.Amount amount) {
        String written = amount.unit().isEmpty() ? amount.number() : amount.number() + " " + amount.unit();
        return Diagnostic.error(Code.LP231, sign, "no value stands before this sign")
                .help("a tolerance is written without it: `within " + written
                        + " of …`; how well a value is known stands behind the value, as in 5 mm ± 0.1 mm");
    }

    static Diagnostic commaBetweenArms(Span comma) {
        return Diagnostic.error(Code.LP141, comma, "no comma stands between the answers of a choice")
                .help("take it out; several options for one answer begin on a line of their own");
    }

    static Diagnostic anotherVersion(Span number, String version, List<LanguageVersion> known) {
        String numbers =
                known.stream().map(each -> String.valueOf(each.number())).collect(Collectors.joining(" or "));
        return Diagnostic.error(Code.LP139, number, "this file is written for version " + version + " of the language")
                .help("this program reads version " + numbers + "; a later program may read it");
    }

    static Diagnostic afterInFor(Span after) {
        return Diagnostic.error(Code.LP138, after, "`after` cannot stand in a for")
                .help("write it into the stage around it, or into each check");
    }
}

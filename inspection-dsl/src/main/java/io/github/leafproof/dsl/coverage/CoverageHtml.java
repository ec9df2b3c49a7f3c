package io.github.leafproof.dsl.coverage;

import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.meaning.Saying;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import java.util.List;

/**
 * Coverage as a page for a browser: the procedure's own text, file by file, with what rehearsals show and what they do not
 * marked where it is written. One file that loads nothing from elsewhere and runs no program.
 */
public final class CoverageHtml {

    private final StringBuilder page = new StringBuilder();

    private CoverageHtml() {}

    /** What the rehearsals of these procedures show; the same coverage gives the same page on every machine. */
    public static String write(List<Coverage> procedures) {
        CoverageHtml html = new CoverageHtml();
        html.begin(procedures);
        for (int number = 0; number < procedures.size(); number++) {
            html.procedure(procedures.get(number), number + 1);
        }
        html.page.append("</main>\n</body>\n</html>\n");
        return html.page.toString();
    }

    private void begin(List<Coverage> procedures) {
        String title = procedures.size() == 1
                ? "What the rehearsals of " + name(procedures.get(0)) + " show"
                : "What the rehearsals of " + procedures.size() + " procedures show";
        page.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>")
                .append(Markup.escaped(title))
                .append("</title>\n<style>\n")
                .append(HtmlStyle.CSS)
                .append("</style>\n</head>\n<body>\n<main>\n<h1>")
                .append(Markup.escaped(title))
                .append("</h1>\n");
        legend();
        if (procedures.size() > 1) {
            page.append("<div class=\"scroll\"><table>\n");
            for (int number = 0; number < procedures.size(); number++) {
                Coverage coverage = procedures.get(number);
                row(
                        "",
                        "<a href=\"#p" + (number + 1) + "\">" + Markup.escaped(name(coverage)) + "</a>",
                        coverage.share());
            }
            page.append("</table></div>\n");
        }
    }

    private void legend() {
        page.append("<p class=\"legend\">");
        for (Standing standing : Standing.values()) {
            page.append("<span class=\"")
                    .append(standing.style())
                    .append("\"><span class=\"sign\" aria-hidden=\"true\">")
                    .append(standing.sign())
                    .append("</span> <mark class=\"")
                    .append(standing.style())
                    .append("\">")
                    .append(standing.words())
                    .append("</mark></span>\n");
        }
        page.append("</p>\n<p class=\"quiet\">Open a line that has a sign, by a click or by Tab and Enter, to see what"
                + " is shown of it, by which rehearsals, and what would show the rest.</p>\n");
    }

    private static String name(Coverage coverage) {
        return coverage.procedure().graph().identity().name();
    }

    private void row(String style, String first, Share share) {
        page.append("<tr").append(style).append("><th scope=\"row\">").append(first);
        page.append("</th><td class=\"number\">")
                .append(share.shown())
                .append(" of ")
                .append(share.asked());
        page.append("</td><td class=\"number\">").append(share.words()).append("</td></tr>\n");
    }

    private void procedure(Coverage coverage, int number) {
        CheckGraph.Identity identity = coverage.procedure().graph().identity();
        page.append("<h2 id=\"p").append(number).append("\">").append(Markup.escaped(identity.title()));
        page.append(" <span class=\"quiet\">")
                .append(Markup.escaped(identity.name()))
                .append(", revision ");
        page.append(identity.revision()).append("</span></h2>\n<div class=\"scroll\"><table>\n");
        row(" class=\"all\"", "all that it can say", coverage.share());
        for (Saying.Kind kind : Saying.Kind.values()) {
            if (coverage.share(kind).asked() > 0) {
                row("", kind.several(), coverage.share(kind));
            }
        }
        page.append("</table></div>\n");
        missing(coverage, number);
        List<SourceText> files = coverage.procedure().written().sources();
        for (int file = 0; file < files.size(); file++) {
            new FileHtml(coverage, files.get(file), id(number, file), "p" + number + "-r", page).write();
        }
        rehearsals(coverage, number);
    }

    private static String id(int procedure, int file) {
        return "p" + procedure + "-f" + file;
    }

    private void missing(Coverage coverage, int number) {
        List<SourceText> files = coverage.procedure().written().sources();
        List<Saying> lacking = coverage.sayings().stream()
                .filter(saying -> !coverage.missing(saying).isEmpty())
                .toList();
        if (lacking.isEmpty()) {
            page.append("<p>Its rehearsals show all of it.</p>\n");
            return;
        }
        page.append("<details class=\"list\"><summary>What no rehearsal shows: ")
                .append(lacking.size())
                .append(lacking.size() == 1 ? " place" : " places")
                .append("</summary>\n<ul class=\"missing\">\n");
        for (Saying saying : lacking) {
            Span span = saying.span();
            page.append("<li><a href=\"#")
                    .append(id(number, files.indexOf(span.source())))
                    .append("-l")
                    .append(span.source().at(span.start()).line())
                    .append("\">")
                    .append(Markup.escaped(CoverageText.place(span)))
                    .append("</a> ")
                    .append(Markup.escaped(CoverageText.title(saying) + ": " + Markup.ways(coverage.missing(saying))))
                    .append("</li>\n");
        }
        page.append("</ul>\n</details>\n");
    }

    private void rehearsals(Coverage coverage, int number) {
        List<Declaration.Rehearse> rehearsals = coverage.procedure().rehearsals();
        page.append("<h3>Its rehearsals</h3>\n");
        page.append(rehearsals.isEmpty() ? "<p>It has none.</p>\n" : "<ol class=\"rehearsals\">\n");
        for (int each = 0; each < rehearsals.size(); each++) {
            page.append("<li id=\"p")
                    .append(number)
                    .append("-r")
                    .append(each + 1)
                    .append("\">");
            page.append(Markup.escaped(rehearsals.get(each).title().plain()));
            page.append(coverage.isPlayed(each) ? "" : " <span class=\"quiet\">(not played)</span>");
            page.append("</li>\n");
        }
        page.append(rehearsals.isEmpty() ? "" : "</ol>\n");
    }
}

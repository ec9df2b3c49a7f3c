package io.github.leafproof.dsl.coverage;

import static io.github.leafproof.dsl.html.Html.element;
import static io.github.leafproof.dsl.html.Html.heading;
import static io.github.leafproof.dsl.html.Html.item;
import static io.github.leafproof.dsl.html.Html.link;
import static io.github.leafproof.dsl.html.Html.list;
import static io.github.leafproof.dsl.html.Html.ordered;
import static io.github.leafproof.dsl.html.Html.p;
import static io.github.leafproof.dsl.html.Html.sign;
import static io.github.leafproof.dsl.html.Html.span;
import static io.github.leafproof.dsl.html.Html.words;

import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Page;
import io.github.leafproof.dsl.html.Part;
import io.github.leafproof.dsl.html.Table;
import io.github.leafproof.dsl.meaning.Saying;
import io.github.leafproof.dsl.meaning.Way;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import java.util.ArrayList;
import java.util.List;

/**
 * Coverage as a page for a browser: the procedure's own text, file by file, with what rehearsals show and what they do not
 * marked where it is written. One file that loads nothing from elsewhere and runs no program.
 */
public final class CoverageHtml {

    private final List<Part> main = new ArrayList<>();

    private CoverageHtml() {}

    /** What the rehearsals of these procedures show; the same coverage gives the same page on every machine. */
    public static String write(List<Coverage> procedures) {
        String title = procedures.size() == 1
                ? "What the rehearsals of " + name(procedures.get(0)) + " show"
                : "What the rehearsals of " + procedures.size() + " procedures show";
        CoverageHtml html = new CoverageHtml();
        html.begin(title, procedures);
        for (int number = 0; number < procedures.size(); number++) {
            html.procedure(procedures.get(number), number + 1);
        }
        return new Page(title, CoverageStyle.CSS, List.of(element("main", html.main))).text();
    }

    private void begin(String title, List<Coverage> procedures) {
        main.add(heading(1, title));
        main.add(p(List.of(Standing.values()).stream().map(CoverageHtml::sample).toArray(Part[]::new))
                .style("legend"));
        main.add(p("Open a line that has a sign, by a click or by Tab and Enter, to see what is shown of it, by which"
                        + " rehearsals, and what would show the rest.")
                .style("quiet"));
        if (procedures.size() > 1) {
            Table table = Table.of("How much is shown of each procedure", "procedure", "shown", "share")
                    .numbers("shown", "share");
            for (int number = 0; number < procedures.size(); number++) {
                Coverage coverage = procedures.get(number);
                row(table, "", link("#p" + (number + 1), words(name(coverage))), coverage.share());
            }
            main.add(table.element());
        }
    }

    private static Element sample(Standing standing) {
        return span(
                        sign(standing.sign()),
                        words(" "),
                        element("mark", standing.words()).style(standing.style()),
                        words(" "))
                .style(standing.style());
    }

    private static String name(Coverage coverage) {
        return coverage.procedure().graph().identity().name();
    }

    private static void row(Table table, String style, Part first, Share share) {
        table.row(style, first, words(share.shown() + " of " + share.asked()), words(share.words()));
    }

    private void procedure(Coverage coverage, int number) {
        CheckGraph.Identity identity = coverage.procedure().graph().identity();
        main.add(heading(
                        2,
                        words(identity.title() + " "),
                        span(identity.name() + ", revision " + identity.revision())
                                .style("quiet"))
                .id("p" + number));
        Table table = Table.of("How much is shown of " + identity.name(), "of what it can say", "shown", "share")
                .numbers("shown", "share");
        row(table, "all", words("all that it can say"), coverage.share());
        for (Saying.Kind kind : Saying.Kind.values()) {
            if (coverage.share(kind).asked() > 0) {
                row(table, "", words(kind.several()), coverage.share(kind));
            }
        }
        main.add(table.element());
        main.add(missing(coverage, number));
        List<SourceText> files = coverage.procedure().written().sources();
        for (int file = 0; file < files.size(); file++) {
            main.addAll(new FileHtml(coverage, files.get(file), id(number, file), "p" + number + "-r").parts());
        }
        rehearsals(coverage, number);
    }

    private static String id(int procedure, int file) {
        return "p" + procedure + "-f" + file;
    }

    private static Element missing(Coverage coverage, int number) {
        List<SourceText> files = coverage.procedure().written().sources();
        List<Saying> lacking = coverage.sayings().stream()
                .filter(saying -> !coverage.missing(saying).isEmpty())
                .toList();
        if (lacking.isEmpty()) {
            return p("Its rehearsals show all of it.");
        }
        List<Element> places = new ArrayList<>();
        for (Saying saying : lacking) {
            Span span = saying.span();
            String line = id(number, files.indexOf(span.source())) + "-l"
                    + span.source().at(span.start()).line();
            String lacks = CoverageText.title(saying) + ": " + ways(coverage.missing(saying));
            places.add(item(link("#" + line, words(CoverageText.place(span))), words(" " + lacks)));
        }
        String title = "What no rehearsal shows: " + lacking.size() + (lacking.size() == 1 ? " place" : " places");
        return element("details", element("summary", title), list(places).style("missing"))
                .style("list");
    }

    /** Ways in a row. */
    static String ways(List<Way> ways) {
        return String.join(", ", ways.stream().map(Way::word).toList());
    }

    private void rehearsals(Coverage coverage, int number) {
        List<Declaration.Rehearse> rehearsals = coverage.procedure().rehearsals();
        main.add(heading(3, "Its rehearsals"));
        if (rehearsals.isEmpty()) {
            main.add(p("It has none."));
            return;
        }
        List<Element> items = new ArrayList<>();
        for (int each = 0; each < rehearsals.size(); each++) {
            String title = rehearsals.get(each).title().plain();
            Element item = coverage.isPlayed(each)
                    ? item(words(title))
                    : item(words(title + " "), span("(not played)").style("quiet"));
            items.add(item.id("p" + number + "-r" + (each + 1)));
        }
        main.add(ordered(items).style("rehearsals"));
    }
}

package io.github.leafproof.dsl.coverage;

import static io.github.leafproof.dsl.html.Html.div;
import static io.github.leafproof.dsl.html.Html.element;
import static io.github.leafproof.dsl.html.Html.heading;
import static io.github.leafproof.dsl.html.Html.item;
import static io.github.leafproof.dsl.html.Html.link;
import static io.github.leafproof.dsl.html.Html.list;
import static io.github.leafproof.dsl.html.Html.p;
import static io.github.leafproof.dsl.html.Html.sign;
import static io.github.leafproof.dsl.html.Html.span;
import static io.github.leafproof.dsl.html.Html.unseen;
import static io.github.leafproof.dsl.html.Html.words;

import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Part;
import io.github.leafproof.dsl.meaning.Saying;
import io.github.leafproof.dsl.meaning.Way;
import io.github.leafproof.dsl.source.SourceText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The text of one file with its places marked. Where one place lies in another, the smaller is marked. */
final class FileHtml {

    private final Coverage coverage;
    private final SourceText file;
    private final String id;
    private final String rehearsalId;
    private final Reaching reaching;
    private final @Nullable Saying[] at;
    private final Map<Integer, List<Saying>> byLine = new LinkedHashMap<>();

    /** @param id what the ids of its lines begin with; {@code rehearsalId} is what those of rehearsals begin with */
    FileHtml(Coverage coverage, SourceText file, String id, String rehearsalId) {
        this.coverage = coverage;
        this.file = file;
        this.id = id;
        this.rehearsalId = rehearsalId;
        this.reaching = new Reaching(coverage.procedure());
        this.at = new Saying[file.text().length()];
        coverage.sayings().stream()
                .filter(saying ->
                        saying.span().source() == file && !saying.ways().isEmpty())
                .sorted(Comparator.comparingInt((Saying saying) ->
                                saying.span().start() - saying.span().end())
                        .thenComparingInt(saying -> saying.span().start()))
                .forEach(this::place);
    }

    private void place(Saying saying) {
        for (int offset = saying.span().start(); offset < saying.span().end(); offset++) {
            at[offset] = saying;
        }
        int line = file.at(saying.span().start()).line();
        byLine.computeIfAbsent(line, same -> new ArrayList<>()).add(saying);
    }

    /** The file's heading, and its text line by line. */
    List<Element> parts() {
        List<Saying> all = byLine.values().stream().flatMap(List::stream).toList();
        int asked = all.stream().mapToInt(saying -> saying.ways().size()).sum();
        int missing =
                all.stream().mapToInt(saying -> coverage.missing(saying).size()).sum();
        Share share = new Share(asked - missing, asked);
        String shown = share.shown() + " of " + share.asked() + ", " + share.words();
        int last = file.lines() - (file.line(file.lines()).isEmpty() ? 1 : 0);
        List<Element> lines = new ArrayList<>();
        for (int line = 1; line <= last; line++) {
            lines.add(line(line));
        }
        return List.of(
                heading(3, words(file.name() + " "), span(shown).style("quiet")).id(id),
                div(lines).style("text"));
    }

    private Element line(int line) {
        List<Saying> places = byLine.getOrDefault(line, List.of());
        Element number = span(String.valueOf(line)).style("number");
        Element code = span(code(line).toArray(Part[]::new)).style("code");
        if (places.isEmpty()) {
            return div(span().style("sign"), number, code).style("line").id(id + "-l" + line);
        }
        Standing standing = Standing.of(places, coverage);
        List<Element> told = places.stream()
                .sorted(Comparator.comparingInt(saying -> saying.span().start()))
                .flatMap(saying -> told(saying).stream())
                .toList();
        Element summary = element("summary", sign(standing.sign()), unseen(standing.words()), number, code)
                .style(standing.style());
        return element("details", summary, div(told).style("told"))
                .style("line")
                .id(id + "-l" + line);
    }

    private List<Part> code(int line) {
        List<Part> code = new ArrayList<>();
        int start = file.lineStart(line);
        int end = start + file.line(line).length();
        int from = start;
        for (int offset = start; offset <= end; offset++) {
            if (offset == end || !Objects.equals(at[offset], at[from])) {
                code.add(stretch(from, offset));
                from = offset;
            }
        }
        return code;
    }

    private Part stretch(int from, int to) {
        String letters = file.text().substring(from, to);
        Saying saying = from < to ? at[from] : null;
        return saying == null || letters.isBlank()
                ? words(letters)
                : element("mark", letters).style(Standing.of(saying, coverage).style());
    }

    private List<Element> told(Saying saying) {
        List<Element> told = new ArrayList<>();
        told.add(p(CoverageText.title(saying)));
        told.add(list(saying.ways().stream().map(way -> way(saying, way)).toList()));
        if (!saying.never().isEmpty()) {
            told.add(div(words("never: " + CoverageHtml.ways(List.copyOf(saying.never()))))
                    .style("quiet"));
        }
        return told;
    }

    private Element way(Saying saying, Way way) {
        if (!coverage.isShown(saying, way)) {
            String lacking = way.word() + ": not shown; " + reaching.words(saying, way);
            return item(sign(Standing.NONE.sign()), span(lacking)).style("missing");
        }
        List<Part> shown = new ArrayList<>(List.of(words(way.word() + ": shown by ")));
        for (int number : coverage.showing(saying, way)) {
            shown.add(words(shown.size() == 1 ? "" : ", "));
            shown.add(link("#" + rehearsalId + (number + 1), words(String.valueOf(number + 1))));
        }
        return item(sign(Standing.FULL.sign()), span(shown.toArray(Part[]::new)))
                .style("shown");
    }
}

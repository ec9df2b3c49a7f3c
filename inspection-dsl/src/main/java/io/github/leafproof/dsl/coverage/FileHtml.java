package io.github.leafproof.dsl.coverage;

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
    private final StringBuilder page;
    private final Reaching reaching;
    private final @Nullable Saying[] at;
    private final Map<Integer, List<Saying>> byLine = new LinkedHashMap<>();

    /** @param id what the ids of its lines begin with; {@code rehearsalId} is what those of rehearsals begin with */
    FileHtml(Coverage coverage, SourceText file, String id, String rehearsalId, StringBuilder page) {
        this.coverage = coverage;
        this.file = file;
        this.id = id;
        this.rehearsalId = rehearsalId;
        this.page = page;
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

    void write() {
        List<Saying> all = byLine.values().stream().flatMap(List::stream).toList();
        int asked = all.stream().mapToInt(saying -> saying.ways().size()).sum();
        int missing =
                all.stream().mapToInt(saying -> coverage.missing(saying).size()).sum();
        Share share = new Share(asked - missing, asked);
        page.append("<h3 id=\"").append(id).append("\">").append(Markup.escaped(file.name()));
        page.append(" <span class=\"quiet\">")
                .append(share.shown())
                .append(" of ")
                .append(share.asked());
        page.append(", ").append(share.words()).append("</span></h3>\n<div class=\"text\">\n");
        int last = file.lines() - (file.line(file.lines()).isEmpty() ? 1 : 0);
        for (int line = 1; line <= last; line++) {
            line(line);
        }
        page.append("</div>\n");
    }

    private void line(int line) {
        List<Saying> places = byLine.getOrDefault(line, List.of());
        String begin = "id=\"" + id + "-l" + line + "\"";
        if (places.isEmpty()) {
            page.append("<div class=\"line\" ").append(begin).append("><span class=\"sign\"></span>");
            code(line);
            page.append("</div>\n");
            return;
        }
        Standing standing = Standing.of(places, coverage);
        page.append("<details class=\"line\" ").append(begin);
        page.append("><summary class=\"")
                .append(standing.style())
                .append("\"><span class=\"sign\" aria-hidden=\"true\">");
        page.append(standing.sign()).append("</span><span class=\"hidden\">").append(standing.words());
        page.append("</span>");
        code(line);
        page.append("</summary>\n<div class=\"told\">\n");
        places.stream()
                .sorted(Comparator.comparingInt(saying -> saying.span().start()))
                .forEach(this::told);
        page.append("</div>\n</details>\n");
    }

    private void code(int line) {
        page.append("<span class=\"number\">").append(line).append("</span><span class=\"code\">");
        int start = file.lineStart(line);
        int end = start + file.line(line).length();
        int from = start;
        for (int offset = start; offset <= end; offset++) {
            if (offset == end || !Objects.equals(at[offset], at[from])) {
                stretch(from, offset);
                from = offset;
            }
        }
        page.append("</span>");
    }

    private void stretch(int from, int to) {
        String letters = Markup.escaped(file.text().substring(from, to));
        Saying saying = from < to ? at[from] : null;
        if (saying == null || letters.isBlank()) {
            page.append(letters);
        } else {
            page.append("<mark class=\"")
                    .append(Standing.of(saying, coverage).style())
                    .append("\">")
                    .append(letters)
                    .append("</mark>");
        }
    }

    private void told(Saying saying) {
        page.append("<p>").append(Markup.escaped(CoverageText.title(saying))).append("</p>\n<ul>\n");
        for (Way way : saying.ways()) {
            boolean shown = coverage.isShown(saying, way);
            Standing standing = shown ? Standing.FULL : Standing.NONE;
            page.append("<li class=\"").append(shown ? "shown" : "missing");
            page.append("\"><span class=\"sign\" aria-hidden=\"true\">").append(standing.sign());
            page.append("</span><span>").append(way.word()).append(shown ? ": shown by " : ": ");
            page.append(shown ? rehearsals(saying, way) : "not shown; " + Markup.escaped(reaching.words(saying, way)));
            page.append("</span></li>\n");
        }
        page.append("</ul>\n");
        if (!saying.never().isEmpty()) {
            page.append("<div class=\"quiet\">never: ")
                    .append(Markup.ways(List.copyOf(saying.never())))
                    .append("</div>\n");
        }
    }

    private String rehearsals(Saying saying, Way way) {
        return String.join(
                ", ",
                coverage.showing(saying, way).stream()
                        .map(number -> "<a href=\"#" + rehearsalId + (number + 1) + "\">" + (number + 1) + "</a>")
                        .toList());
    }
}

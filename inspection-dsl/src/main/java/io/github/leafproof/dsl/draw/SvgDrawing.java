package io.github.leafproof.dsl.draw;

import static io.github.leafproof.dsl.html.Html.element;

import io.github.leafproof.dsl.draw.Picture.Box;
import io.github.leafproof.dsl.draw.Picture.Kind;
import io.github.leafproof.dsl.draw.Picture.Tie;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Ink;
import io.github.leafproof.dsl.html.Markup;
import io.github.leafproof.dsl.html.Part;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A picture as SVG: real text, a title and a description for those who have it read aloud, light or dark as the reader's
 * screen is. Letters and words tell the outcomes; colour only repeats them.
 */
public final class SvgDrawing {

    /** The rules that a page needs which shows {@link #sheets}. */
    public static final String STYLE = SvgStyle.TEXT;

    /** As high as the head of an arrow. */
    private static final int ARROW = 5;

    private final PictureLayout layout;
    private final Picture picture;
    private final Legend legend;
    private final Svg svg = new Svg();
    private final Map<String, Integer> crossings = new HashMap<>();

    private SvgDrawing(Picture picture) {
        this.picture = picture;
        this.layout = PictureLayout.of(picture);
        this.legend = new Legend(picture);
    }

    /** The drawing as a file, lines ending in {@code \n}; the same picture gives the same text on every machine. */
    public static String of(Picture picture) {
        SvgDrawing drawing = new SvgDrawing(picture);
        drawing.draw();
        Element whole = drawing.sheet(0, drawing.height(), picture.title(), drawing.description(), "graph");
        List<Part> parts = new ArrayList<>(List.of(element("style", SvgStyle.TEXT), SvgStyle.arrows()));
        Element styled = new Element(
                "svg",
                whole.attributes(),
                Stream.concat(parts.stream(), whole.parts().stream()).toList());
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + Markup.of(List.of(styled.with("xmlns", "http://www.w3.org/2000/svg")
                        .with("width", drawing.width())
                        .with("height", drawing.height())));
    }

    /**
     * The drawing for a page, a sheet for each stage and one for the legend: set one below the other without a gap they are
     * the whole, and paper can part them. The page's style sheet has to hold {@link #STYLE}.
     */
    @SuppressWarnings("exports") // Pages are made in this house; other programs take the whole text.
    public static List<Element> sheets(Picture picture) {
        SvgDrawing drawing = new SvgDrawing(picture);
        drawing.draw();
        return drawing.sheets();
    }

    private List<Element> sheets() {
        List<Element> sheets = new ArrayList<>();
        int top = 0;
        for (PictureLayout.Band band : layout.bands()) {
            int bottom = band.y() + band.height() + PictureLayout.LANE_GAP / 2;
            String title = band.title().isEmpty() ? picture.title() : band.title();
            sheets.add(sheet(top, bottom, title, description(band.title()), "graph-" + sheets.size()));
            top = bottom;
        }
        sheets.add(sheet(top, height(), "Legend", "What the shapes, lines and letters mean.", "graph-legend"));
        Element first = sheets.get(0);
        sheets.set(
                0,
                new Element(
                        "svg",
                        first.attributes(),
                        Stream.concat(Stream.of(SvgStyle.arrows()), first.parts().stream())
                                .toList()));
        return sheets;
    }

    private int width() {
        return layout.right() + PictureLayout.MARGIN;
    }

    private int height() {
        return layout.bottom() + legend.height(width()) + PictureLayout.MARGIN;
    }

    /** What stands between two lines of the sheet. */
    private Element sheet(int top, int bottom, String title, String description, String id) {
        List<Element> parts = new ArrayList<>();
        parts.add(element("title", title).id(id + "-title"));
        parts.add(element("desc", description).id(id + "-desc"));
        svg.strokes().stream()
                .filter(stroke -> stroke.bottom() >= top && stroke.top() <= bottom)
                .forEach(stroke -> parts.add(stroke.element()));
        return element("svg", parts)
                .style("graph")
                .with("viewBox", "0 " + top + " " + width() + " " + (bottom - top))
                .with("role", "img")
                .with("aria-labelledby", id + "-title " + id + "-desc");
    }

    private void draw() {
        svg.element("rect", "class", "paper", "width", width(), "height", height());
        svg.standsBetween(0, height());
        svg.words("text", picture.title(), "class", "head", "x", PictureLayout.MARGIN, "y", 38);
        svg.words("text", picture.subtitle(), "class", "note", "x", PictureLayout.MARGIN, "y", 60);
        svg.standsBetween(0, 64);
        layout.bands().forEach(this::band);
        links();
        layout.rails().forEach(this::rail);
        layout.boxes().forEach(this::box);
        legend.draw(svg, layout.bottom(), width());
        svg.standsBetween(layout.bottom(), height());
    }

    private String description() {
        long checks =
                picture.boxes().stream().filter(box -> box.kind().isJudgement()).count();
        StringBuilder words = new StringBuilder(
                picture.subtitle() + ". " + picture.lanes().size() + " stages, " + checks + " checks.");
        picture.lanes().forEach(lane -> words.append(notable(lane)));
        return words.toString();
    }

    /** The description of one stage. */
    private String description(String stage) {
        StringBuilder words = new StringBuilder();
        for (Picture.Lane lane : picture.lanes()) {
            if (lane.title().equals(stage)) {
                long checks = lane.boxes().stream()
                        .filter(box -> box.kind().isJudgement())
                        .count();
                words.append(checks)
                        .append(checks == 1 ? " check." : " checks.")
                        .append(notable(lane));
            }
        }
        return words.toString();
    }

    /** The checks of a stage that neither pass nor are left out. */
    private static String notable(Picture.Lane lane) {
        StringBuilder words = new StringBuilder();
        for (Box box : lane.boxes()) {
            if (box.outcome() != null && box.outcome() != Outcome.PASSES && box.outcome() != Outcome.NOT_APPLICABLE) {
                words.append(' ')
                        .append(box.title())
                        .append(": ")
                        .append(Ink.of(box.outcome()).word())
                        .append('.');
            }
        }
        return words.toString();
    }

    private void band(PictureLayout.Band band) {
        svg.element(
                "rect",
                "class",
                "lane",
                "x",
                PictureLayout.MARGIN,
                "y",
                band.y(),
                "width",
                layout.right() - PictureLayout.MARGIN,
                "height",
                band.height(),
                "rx",
                8);
        if (!band.title().isEmpty()) {
            svg.words("text", band.title(), "class", "stage", "x", PictureLayout.MARGIN + 14, "y", band.y() + 23);
        }
        svg.standsBetween(band.y(), band.y() + band.height());
    }

    /** What is read, from the left into each box, the uppermost source first. */
    private void links() {
        Map<String, List<Picture.Link>> into = new HashMap<>();
        for (Picture.Link link : picture.links()) {
            if (link.tie() != Tie.GATES) {
                into.computeIfAbsent(link.to(), to -> new ArrayList<>()).add(link);
            }
        }
        for (Placed to : layout.boxes()) {
            List<Picture.Link> links = into.getOrDefault(to.box().id(), List.of());
            List<Picture.Link> sorted = links.stream()
                    .sorted(Comparator.comparingInt(
                            link -> layout.box(link.from()).y()))
                    .toList();
            for (int i = 0; i < sorted.size(); i++) {
                link(sorted.get(i), to, to.port(i, sorted.size()));
            }
        }
    }

    private void link(Picture.Link link, Placed to, int y) {
        svg.element(
                "path",
                "class",
                link.tie().name().toLowerCase(Locale.ROOT),
                "d",
                path(layout.box(link.from()), link, to, y),
                "marker-end",
                "url(#" + arrow(link.tie()) + ")");
        int start = layout.box(link.from()).middle();
        svg.standsBetween(Math.min(start, y) - ARROW, Math.max(start, y) + ARROW);
    }

    private String path(Placed from, Picture.Link link, Placed to, int y) {
        int start = from.middle();
        int end = to.x() - 7;
        if (from.x() >= to.x()) {
            // In one column: round its left side.
            return "M" + from.x() + " " + start + " C" + (from.x() - 34) + " " + start + " " + (to.x() - 34) + " " + y
                    + " " + end + " " + y;
        }
        if (layout.lane(link.from()) != layout.lane(link.to())) {
            // Straight down in the gap before the column, each source on a line of its own as far as there is room.
            int rail = to.x() - 16 - 6 * (crossings.computeIfAbsent(link.from(), none -> crossings.size()) % 10);
            return "M" + from.right() + " " + start + " H" + rail + " V" + y + " H" + end;
        }
        int gap = Math.max(from.right(), to.x() - PictureLayout.COLUMN_GAP);
        int bend = (to.x() - gap) / 2;
        return "M" + from.right() + " " + start + " H" + gap + " C" + (gap + bend) + " " + start + " " + (to.x() - bend)
                + " " + y + " " + end + " " + y;
    }

    /** Down on the right of all checks: a dot where it branches, and an arrow into each check that waits. */
    private void rail(PictureLayout.Rail rail) {
        int out = rail.gate().bottom() - 10;
        int x = rail.x();
        int lowest = out;
        int highest = out;
        svg.open("g").words("title", rail.gate().box().title() + ": must let through first");
        for (PictureLayout.Arrival arrival : rail.arrivals()) {
            int y = arrival.y();
            svg.element(
                    "path",
                    "class",
                    "gates",
                    "d",
                    "M" + x + " " + y + " H" + (arrival.waiting().right() + 8),
                    "marker-end",
                    "url(#gated)");
            svg.element("circle", "class", "joint", "cx", x, "cy", y, "r", 3);
            lowest = Math.max(lowest, y);
            highest = Math.min(highest, y);
        }
        svg.element(
                "path",
                "class",
                "gates",
                "d",
                "M" + rail.gate().right() + " " + out + " H" + x + " M" + x + " " + highest + " V" + lowest);
        svg.close();
        svg.standsBetween(highest - ARROW, lowest + ARROW);
    }

    private void box(Placed placed) {
        Box box = placed.box();
        String kind = box.kind().name().toLowerCase(Locale.ROOT);
        String outcome = box.outcome() == null ? "" : " " + box.outcome().word();
        svg.open("g", "class", kind + outcome);
        svg.words("title", tooltip(box));
        svg.element(
                "rect",
                "class",
                "box",
                "x",
                placed.x(),
                "y",
                placed.y(),
                "width",
                placed.width(),
                "height",
                placed.height(),
                "rx",
                round(box.kind()));
        if (box.kind() == Kind.GATE) {
            int x = placed.right() - 6;
            svg.element("path", "class", "bar", "d", "M" + x + " " + placed.y() + " V" + placed.bottom());
        }
        int x = placed.x() + Placed.PADDING;
        int y = placed.y() + Placed.PADDING;
        if (box.outcome() != null) {
            mark(placed, Ink.of(box.outcome()));
            x += Placed.MARK;
            y += Placed.NOTE_STEP;
        }
        for (int i = 0; i < placed.lines().size(); i++) {
            boolean title = i < placed.titleLines();
            y += title ? Placed.TITLE_STEP : Placed.NOTE_STEP;
            svg.words("text", placed.lines().get(i), "class", title ? "name" : "note", "x", x, "y", y - 4);
        }
        svg.close();
        svg.standsBetween(placed.y(), placed.bottom());
    }

    /** How round the corners of a box are. */
    static int round(Kind kind) {
        return switch (kind) {
            case OBSERVATION -> 7;
            case VALUE -> 18;
            case CHECK, GATE -> 2;
        };
    }

    /** The head of an arrow. */
    static String arrow(Tie tie) {
        return switch (tie) {
            case FEEDS -> "fed";
            case DECIDES -> "decided";
            case GATES -> "gated";
        };
    }

    private static String tooltip(Box box) {
        return box.title()
                + (box.outcome() == null ? "" : ": " + Ink.of(box.outcome()).word())
                + (box.hint().isEmpty() ? "" : ": " + box.hint());
    }

    private void mark(Placed placed, Ink ink) {
        svg.element(
                "rect",
                "class",
                "mark",
                "x",
                placed.x(),
                "y",
                placed.y(),
                "width",
                Placed.MARK,
                "height",
                placed.height(),
                "rx",
                2);
        svg.words(
                "text",
                ink.letter(),
                "class",
                "letter",
                "x",
                placed.x() + Placed.MARK / 2,
                "y",
                placed.middle() + 6,
                "text-anchor",
                "middle");
        svg.words(
                "text",
                ink.word().toUpperCase(Locale.ROOT),
                "class",
                "word",
                "x",
                placed.x() + Placed.PADDING + Placed.MARK,
                "y",
                placed.y() + Placed.PADDING + 11);
    }
}

package io.github.leafproof.dsl.draw;

import io.github.leafproof.dsl.draw.Picture.Box;
import io.github.leafproof.dsl.draw.Picture.Kind;
import io.github.leafproof.dsl.draw.Picture.Tie;
import io.github.leafproof.dsl.html.Ink;
import io.github.leafproof.dsl.html.Lettering;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What the shapes, the lines and the letters of a drawing mean, in rows at its foot. */
final class Legend {

    private static final int STEP = 26;
    private static final int SAMPLE = 44;
    private static final int APART = 22;

    private final List<Item> items = new ArrayList<>();

    /** A sample and its meaning. */
    private sealed interface Item {
        String meaning();

        void sample(Svg svg, int x, int y);

        default int width() {
            return SAMPLE + APART + (int) Lettering.width(meaning(), Placed.NOTE_SIZE);
        }
    }

    private record Shape(Kind kind, String meaning) implements Item {
        @Override
        public void sample(Svg svg, int x, int y) {
            svg.open("g", "class", kind.name().toLowerCase(Locale.ROOT));
            svg.element(
                    "rect",
                    "class",
                    "box",
                    "x",
                    x,
                    "y",
                    y,
                    "width",
                    36,
                    "height",
                    18,
                    "rx",
                    SvgDrawing.round(kind) / 2);
            if (kind == Kind.GATE) {
                svg.element("path", "class", "bar", "d", "M" + (x + 31) + " " + y + " V" + (y + 18));
            }
            svg.close();
        }
    }

    private record Line(Tie tie, String meaning) implements Item {
        @Override
        public void sample(Svg svg, int x, int y) {
            String line = tie.name().toLowerCase(Locale.ROOT);
            svg.element(
                    "path",
                    "class",
                    line,
                    "d",
                    "M" + x + " " + (y + 9) + " H" + (x + 28),
                    "marker-end",
                    "url(#" + SvgDrawing.arrow(tie) + ")");
        }
    }

    private record Mark(Outcome outcome) implements Item {
        @Override
        public String meaning() {
            return Ink.of(outcome).word();
        }

        @Override
        public void sample(Svg svg, int x, int y) {
            svg.open("g", "class", outcome.word());
            svg.element("rect", "class", "mark", "x", x + 8, "y", y, "width", 22, "height", 18, "rx", 2);
            svg.words(
                    "text",
                    Ink.of(outcome).letter(),
                    "class",
                    "letter",
                    "x",
                    x + 19,
                    "y",
                    y + 14,
                    "text-anchor",
                    "middle");
            svg.close();
        }
    }

    /** Of what occurs in the picture. */
    Legend(Picture picture) {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        Set<Outcome> outcomes = EnumSet.noneOf(Outcome.class);
        Set<Tie> ties = EnumSet.noneOf(Tie.class);
        for (Box box : picture.boxes()) {
            kinds.add(box.kind());
            if (box.outcome() != null) {
                outcomes.add(box.outcome());
            }
        }
        picture.links().forEach(link -> ties.add(link.tie()));
        kinds.forEach(kind -> items.add(new Shape(kind, meaning(kind))));
        ties.forEach(tie -> items.add(new Line(tie, meaning(tie))));
        outcomes.forEach(outcome -> items.add(new Mark(outcome)));
    }

    private static String meaning(Kind kind) {
        return switch (kind) {
            case OBSERVATION -> "observed";
            case VALUE -> "computed";
            case CHECK -> "check";
            case GATE -> "gate: others wait for it";
        };
    }

    private static String meaning(Tie tie) {
        return switch (tie) {
            case FEEDS -> "is read by";
            case DECIDES -> "decides whether it applies";
            case GATES -> "must let through first";
        };
    }

    /** How high it is on a sheet of this width. */
    int height(int width) {
        int rows = 1;
        int x = PictureLayout.MARGIN;
        for (Item item : items) {
            if (x + item.width() > width - PictureLayout.MARGIN) {
                rows++;
                x = PictureLayout.MARGIN;
            }
            x += item.width();
        }
        return rows * STEP;
    }

    void draw(Svg svg, int top, int width) {
        int x = PictureLayout.MARGIN;
        int y = top;
        for (Item item : items) {
            if (x + item.width() > width - PictureLayout.MARGIN) {
                x = PictureLayout.MARGIN;
                y += STEP;
            }
            item.sample(svg, x, y);
            svg.words("text", item.meaning(), "class", "note", "x", x + SAMPLE, "y", y + 13);
            x += item.width();
        }
    }
}

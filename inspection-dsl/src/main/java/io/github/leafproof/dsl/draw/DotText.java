package io.github.leafproof.dsl.draw;

import io.github.leafproof.dsl.draw.Picture.Box;
import io.github.leafproof.dsl.html.Ink;
import io.github.leafproof.dsl.html.Lettering;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A picture in the DOT language, for programs that lay graphs out themselves. */
public final class DotText {

    private static final int MOST_LINES = 3;

    private final StringBuilder text = new StringBuilder();

    private DotText() {}

    /** The text, lines ending in {@code \n}. */
    public static String of(Picture picture) {
        return new DotText().write(picture);
    }

    private String write(Picture picture) {
        line("digraph procedure {");
        line("  graph [rankdir=LR, labelloc=t, newrank=true, fontname=\"sans-serif\", label="
                + quoted(List.of(picture.title(), picture.subtitle())) + "];");
        line("  node [fontname=\"sans-serif\", fontsize=11];");
        line("  edge [color=\"#57606a\"];");
        for (int i = 0; i < picture.lanes().size(); i++) {
            Picture.Lane lane = picture.lanes().get(i);
            line("  subgraph cluster_" + i + " {");
            line("    graph [style=rounded, color=\"#8c959f\", label=" + quoted(List.of(lane.title())) + "];");
            lane.boxes().forEach(this::box);
            line("  }");
        }
        picture.links().forEach(this::link);
        line("}");
        return text.toString();
    }

    private void box(Box box) {
        String shape = switch (box.kind()) {
            case OBSERVATION -> "shape=box, style=rounded";
            case VALUE -> "shape=ellipse";
            case CHECK -> "shape=box";
            case GATE -> "shape=box, peripheries=2";
        };
        List<String> lines = new ArrayList<>();
        String colour = "";
        if (box.outcome() != null) {
            Ink ink = Ink.of(box.outcome());
            lines.add("[" + ink.letter() + "] " + ink.word());
            colour = ", color=\"" + ink.light() + "\", penwidth=2";
        }
        lines.addAll(wrapped(box));
        line("    " + box.id() + " [" + shape + colour + ", label=" + quoted(lines) + "];");
    }

    /** The words of a box in lines of a good length. */
    static List<String> wrapped(Box box) {
        List<String> lines = new ArrayList<>(Lettering.wrapped(Lettering.clean(box.title()), 1, 24, MOST_LINES));
        box.notes().forEach(note -> lines.addAll(Lettering.wrapped(Lettering.clean(note), 1, 24, MOST_LINES)));
        return lines;
    }

    private void link(Picture.Link link) {
        String style = switch (link.tie()) {
            case FEEDS -> "";
            case DECIDES -> " [style=dashed, arrowhead=empty]";
            case GATES -> " [style=bold, arrowhead=tee, constraint=false]";
        };
        line("  " + link.from() + " -> " + link.to() + style + ";");
    }

    private void line(String words) {
        text.append(words).append('\n');
    }

    /** In quotes; backslashes, quotes and the entities that the language knows stand for themselves. */
    private static String quoted(List<String> lines) {
        return lines.stream()
                .map(Lettering::clean)
                .map(line -> line.replace("\\", "\\\\").replace("\"", "\\\"").replace("&", "&amp;"))
                .collect(Collectors.joining("\\n", "\"", "\""));
    }
}

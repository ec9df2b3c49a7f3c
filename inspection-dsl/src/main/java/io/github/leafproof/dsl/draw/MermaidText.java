package io.github.leafproof.dsl.draw;

import io.github.leafproof.dsl.draw.Picture.Box;
import io.github.leafproof.dsl.html.Ink;
import io.github.leafproof.dsl.html.Lettering;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** A picture as a Mermaid flowchart, for pages that draw such texts themselves. */
public final class MermaidText {

    /** Letters that mean something to the language or to the page around it. */
    private static final String SPECIAL = "\"#;&<>`*_~{}[]()|\\%$@^=";

    private final StringBuilder text = new StringBuilder();

    private MermaidText() {}

    /** The text, lines ending in {@code \n}. */
    public static String of(Picture picture) {
        return new MermaidText().write(picture);
    }

    private String write(Picture picture) {
        line("flowchart LR");
        line("  accTitle: " + escaped(picture.title()));
        line("  accDescr: " + escaped(picture.subtitle()));
        Set<Outcome> outcomes = EnumSet.noneOf(Outcome.class);
        for (int i = 0; i < picture.lanes().size(); i++) {
            Picture.Lane lane = picture.lanes().get(i);
            line("  subgraph s" + i + "[" + quoted(List.of(lane.title().isEmpty() ? " " : lane.title())) + "]");
            for (Box box : lane.boxes()) {
                box(box);
                if (box.outcome() != null) {
                    outcomes.add(box.outcome());
                }
            }
            line("  end");
        }
        picture.links().forEach(this::link);
        outcomes.forEach(outcome -> line(
                "  classDef " + outcome.word() + " stroke:" + Ink.of(outcome).light() + ",stroke-width:3px"));
        return text.toString();
    }

    private void box(Box box) {
        List<String> lines = new ArrayList<>();
        if (box.outcome() != null) {
            Ink ink = Ink.of(box.outcome());
            lines.add(ink.letter() + ": " + ink.word());
        }
        lines.addAll(DotText.wrapped(box));
        String label = quoted(lines);
        String shape = switch (box.kind()) {
            case OBSERVATION -> "(" + label + ")";
            case VALUE -> "([" + label + "])";
            case CHECK -> "[" + label + "]";
            case GATE -> "[[" + label + "]]";
        };
        line("    " + box.id() + shape
                + (box.outcome() == null ? "" : ":::" + box.outcome().word()));
    }

    private void link(Picture.Link link) {
        String arrow = switch (link.tie()) {
            case FEEDS -> " --> ";
            case DECIDES -> " -.-> ";
            case GATES -> " ==> ";
        };
        line("  " + link.from() + arrow + link.to());
    }

    private void line(String words) {
        text.append(words).append('\n');
    }

    private static String quoted(List<String> lines) {
        return lines.stream().map(MermaidText::escaped).collect(Collectors.joining("<br/>", "\"", "\""));
    }

    /** Special letters by their numbers, and so the dot or dash that would make a list of a line. */
    private static String escaped(String words) {
        String clean = Lettering.clean(words);
        StringBuilder escaped = new StringBuilder();
        boolean begins = true;
        for (int i = 0; i < clean.length(); i++) {
            char letter = clean.charAt(i);
            boolean list = begins && ".-+:".indexOf(letter) >= 0;
            begins &= Character.isDigit(letter) || letter == ' ';
            if (SPECIAL.indexOf(letter) >= 0 || list) {
                escaped.append('#').append((int) letter).append(';');
            } else {
                escaped.append(letter);
            }
        }
        return escaped.toString();
    }
}

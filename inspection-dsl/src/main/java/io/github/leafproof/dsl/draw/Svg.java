package io.github.leafproof.dsl.draw;

import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Html;
import io.github.leafproof.dsl.html.Part;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** SVG, element by element, and how far down each of the outermost reaches. */
final class Svg {

    /** An element with all that it holds, and the lines of the sheet between which it stands. */
    record Stroke(Element element, int top, int bottom) {}

    private record Open(Element head, List<Part> parts) {}

    private final Deque<Open> open = new ArrayDeque<>();
    private final List<Element> fresh = new ArrayList<>();
    private final List<Stroke> strokes = new ArrayList<>();

    /** An element without content: {@code <rect x="1"/>}; names and values in turn. */
    Svg element(String name, Object... attributes) {
        add(tag(name, attributes));
        return this;
    }

    /** An element that holds others, until {@link #close}. */
    Svg open(String name, Object... attributes) {
        open.push(new Open(tag(name, attributes), new ArrayList<>()));
        return this;
    }

    Svg close() {
        Open done = open.pop();
        add(new Element(done.head.name(), done.head.attributes(), done.parts));
        return this;
    }

    /** An element that holds words. */
    Svg words(String name, String words, Object... attributes) {
        Element head = tag(name, attributes);
        add(new Element(name, head.attributes(), List.of(Html.words(words))));
        return this;
    }

    /** Says between which lines all of it stands that was drawn since this was said last. */
    void standsBetween(int top, int bottom) {
        fresh.forEach(element -> strokes.add(new Stroke(element, top, bottom)));
        fresh.clear();
    }

    List<Stroke> strokes() {
        return List.copyOf(strokes);
    }

    private void add(Element element) {
        if (open.isEmpty()) {
            fresh.add(element);
        } else {
            open.element().parts.add(element);
        }
    }

    private static Element tag(String name, Object... attributes) {
        Element tag = Html.element(name);
        for (int i = 0; i < attributes.length; i += 2) {
            tag = tag.with(String.valueOf(attributes[i]), attributes[i + 1]);
        }
        return tag;
    }
}

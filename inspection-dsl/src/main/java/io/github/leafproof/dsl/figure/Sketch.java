package io.github.leafproof.dsl.figure;

import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Html;
import java.util.ArrayList;
import java.util.List;

/** A figure that is being drawn, from the back to the front. */
final class Sketch {

    private final List<Element> strokes = new ArrayList<>();

    /** One stroke, in a class of the style sheet. */
    Sketch draw(String style, Element stroke) {
        strokes.add(stroke.style(style));
        return this;
    }

    Sketch draw(List<Element> more) {
        strokes.addAll(more);
        return this;
    }

    /**
     * The figure.
     *
     * @param id its name on the page, which no other figure has
     * @param title what it shows
     * @param description what is to be seen in it, for those who have it read to them
     */
    Element finish(String id, double height, String title, String description) {
        List<Element> all = new ArrayList<>();
        all.add(Html.element("title", title).id(id + "-title"));
        all.add(Html.element("desc", description).id(id + "-desc"));
        all.addAll(strokes);
        return Html.element("svg", all)
                .style("figure")
                .with("viewBox", "0 0 " + Pen.WIDTH + " " + Pen.at(height))
                .with("role", "img")
                .with("aria-labelledby", id + "-title " + id + "-desc");
    }
}

package io.github.leafproof.dsl.page;

import static io.github.leafproof.dsl.html.Html.element;
import static io.github.leafproof.dsl.html.Html.heading;
import static io.github.leafproof.dsl.html.Html.p;
import static io.github.leafproof.dsl.html.Html.scrolling;
import static io.github.leafproof.dsl.html.Html.section;

import io.github.leafproof.dsl.draw.Picture;
import io.github.leafproof.dsl.draw.SvgDrawing;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Part;
import java.util.List;

/** The procedure drawn with what came of it: what was observed, what was judged by it, and which gates are shut. */
final class Drawing {

    private Drawing() {}

    static List<Element> of(Judgement judgement) {
        Picture picture = Picture.of(judgement);
        Element drawn =
                scrolling("The procedure drawn", SvgDrawing.sheets(picture).toArray(Part[]::new));
        return List.of(section(
                "drawing",
                heading(2, "How it hangs together"),
                List.of(
                        p("The procedure drawn, stage by stage: on the left what was observed, on the right what was"
                                        + " judged by it, and the gates that let through or hold back. It is several"
                                        + " sheets long, and is printed where it is open.")
                                .style("quiet"),
                        element("details", element("summary", "Show the drawing"), drawn.style("scroll drawn")))));
    }
}

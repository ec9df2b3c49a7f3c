package io.github.leafproof.dsl.html;

import java.util.Map;
import java.util.Set;

/** Writes parts as text: well-formed XML that is HTML as well, a line for each element that is no piece of a sentence. */
public final class Markup {

    /** Pieces of a sentence: a line end beside them would be seen as a blank. */
    private static final Set<String> IN_LINE = Set.of(
            "a", "abbr", "b", "code", "em", "i", "input", "mark", "small", "span", "strong", "sub", "sup", "time",
            "tspan");

    /** They hold nothing, and HTML wants no end of them. */
    private static final Set<String> EMPTY =
            Set.of("br", "circle", "hr", "input", "line", "meta", "path", "polygon", "polyline", "rect", "use");

    private final StringBuilder text = new StringBuilder();

    private Markup() {}

    /** The text of these parts, lines ending in {@code \n}. */
    public static String of(Iterable<? extends Part> parts) {
        Markup markup = new Markup();
        parts.forEach(markup::write);
        return markup.text.toString();
    }

    private void write(Part part) {
        if (part instanceof Element element) {
            write(element);
        } else {
            text.append(Words.escaped(((Words) part).text()));
        }
    }

    private void write(Element element) {
        boolean inLine = IN_LINE.contains(element.name());
        if (!inLine) {
            beginLine();
        }
        text.append('<').append(element.name());
        for (Map.Entry<String, String> each : element.attributes().entrySet()) {
            text.append(' ').append(each.getKey()).append("=\"");
            text.append(Words.escaped(each.getValue())).append('"');
        }
        if (element.parts().isEmpty() && EMPTY.contains(element.name())) {
            text.append("/>");
        } else {
            text.append('>');
            element.parts().forEach(this::write);
            text.append("</").append(element.name()).append('>');
        }
        if (!inLine) {
            text.append('\n');
        }
    }

    private void beginLine() {
        if (!text.isEmpty() && text.charAt(text.length() - 1) != '\n') {
            text.append('\n');
        }
    }
}

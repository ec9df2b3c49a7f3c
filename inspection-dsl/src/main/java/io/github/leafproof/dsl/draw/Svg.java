package io.github.leafproof.dsl.draw;

import io.github.leafproof.dsl.html.Words;

/** SVG text, element by element. Whatever words come in, they come out as words. */
final class Svg {

    private final StringBuilder text = new StringBuilder();
    private String indent = "";

    /** An element without content: {@code <rect x="1"/>}; names and values in turn. */
    Svg element(String name, Object... attributes) {
        line(tag(name, attributes) + "/>");
        return this;
    }

    /** An element that holds others, until {@link #close}. */
    Svg open(String name, Object... attributes) {
        line(tag(name, attributes) + ">");
        indent += "  ";
        return this;
    }

    Svg close(String name) {
        indent = indent.substring(2);
        line("</" + name + ">");
        return this;
    }

    /** An element that holds words. */
    Svg words(String name, String words, Object... attributes) {
        line(tag(name, attributes) + ">" + Words.escaped(words) + "</" + name + ">");
        return this;
    }

    /** What is no word of anybody's: the style sheet. */
    Svg raw(String own) {
        own.lines().forEach(this::line);
        return this;
    }

    private static String tag(String name, Object... attributes) {
        StringBuilder tag = new StringBuilder("<").append(name);
        for (int i = 0; i < attributes.length; i += 2) {
            tag.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(Words.escaped(String.valueOf(attributes[i + 1])))
                    .append('"');
        }
        return tag.toString();
    }

    private void line(String line) {
        text.append(indent).append(line).append('\n');
    }

    @Override
    public String toString() {
        return text.toString();
    }
}

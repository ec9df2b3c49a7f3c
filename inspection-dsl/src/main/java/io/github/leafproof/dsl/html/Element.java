package io.github.leafproof.dsl.html;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An element of a page or of a drawing in it, with its attributes in the order they were given and what it holds.
 *
 * @param name as HTML or SVG has it: {@code td}, {@code path}
 */
public record Element(String name, Map<String, String> attributes, List<Part> parts) implements Part {

    public Element {
        // Copied by hand: Map.copyOf would not keep the order, and the same page has to have the same bytes.
        attributes = Collections.unmodifiableMap(new LinkedHashMap<>(attributes));
        parts = List.copyOf(parts);
    }

    /** The same with one attribute more, or with another value of it. */
    public Element with(String attribute, Object value) {
        Map<String, String> more = new LinkedHashMap<>(attributes);
        more.put(attribute, String.valueOf(value));
        return new Element(name, more, parts);
    }

    /** The same under a name that links lead to. */
    public Element id(String id) {
        return with("id", id);
    }

    /** The same in these classes of the style sheet, a blank between each. */
    public Element style(String classes) {
        return with("class", classes);
    }
}

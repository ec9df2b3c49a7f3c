package io.github.leafproof.dsl.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The elements that our pages are made of, for a static import: {@code p(words("released as "), strong("ready"))}. */
public final class Html {

    private Html() {}

    public static Words words(String text) {
        return new Words(text);
    }

    /** An element that has no name here, such as those of a drawing. */
    public static Element element(String name, List<? extends Part> parts) {
        return new Element(name, Map.of(), List.copyOf(parts));
    }

    public static Element element(String name, Part... parts) {
        return element(name, List.of(parts));
    }

    public static Element element(String name, String words) {
        return element(name, words(words));
    }

    public static Element p(String words) {
        return element("p", words);
    }

    public static Element p(Part... parts) {
        return element("p", parts);
    }

    /** A heading; 1 is the page's own, and none is left out on the way down. */
    public static Element heading(int level, Part... parts) {
        return element("h" + level, parts);
    }

    public static Element heading(int level, String words) {
        return heading(level, words(words));
    }

    public static Element strong(String words) {
        return element("strong", words);
    }

    public static Element span(String words) {
        return element("span", words);
    }

    public static Element span(Part... parts) {
        return element("span", parts);
    }

    public static Element div(Part... parts) {
        return element("div", parts);
    }

    public static Element div(List<? extends Part> parts) {
        return element("div", parts);
    }

    /** A part of the page that a reader can go to, named by its heading. */
    public static Element section(String id, Element heading, List<? extends Part> parts) {
        String named = id + "-heading";
        List<Part> all = new ArrayList<>(List.of(heading.id(named)));
        all.addAll(parts);
        return element("section", all).id(id).with("aria-labelledby", named);
    }

    public static Element link(String to, Part... parts) {
        return element("a", parts).with("href", to);
    }

    public static Element item(Part... parts) {
        return element("li", parts);
    }

    /** Points without an order. */
    public static Element list(List<? extends Part> items) {
        return element("ul", items);
    }

    /** Points without an order, each in words. */
    public static Element listOfWords(List<String> items) {
        return list(items.stream().map(words -> item(words(words))).toList());
    }

    /** Points in their order, numbered. */
    public static Element ordered(List<? extends Part> items) {
        return element("ol", items);
    }

    /** Words for those who have the page read to them; others see it by a sign. */
    public static Element unseen(String words) {
        return span(words).style("hidden");
    }

    /** A sign that is not read aloud, for words say the same. */
    public static Element sign(String sign) {
        return span(sign).style("sign").with("aria-hidden", "true");
    }

    /** An empty box to be ticked with a pen. */
    public static Element tick() {
        return span().style("tick").with("aria-hidden", "true");
    }

    /** What may be wider than a phone; it is moved sideways by a finger, or by keys once Tab has led there. */
    public static Element scrolling(String name, Part... parts) {
        return div(parts)
                .style("scroll")
                .with("role", "region")
                .with("aria-label", name)
                .with("tabindex", "0");
    }
}

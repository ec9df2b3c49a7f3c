package io.github.leafproof.dsl.coverage;

import io.github.leafproof.dsl.meaning.Way;
import java.util.List;

/** Words made fit for a page. */
final class Markup {

    private Markup() {}

    static String escaped(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    static String ways(List<Way> ways) {
        return String.join(", ", ways.stream().map(Way::word).toList());
    }
}

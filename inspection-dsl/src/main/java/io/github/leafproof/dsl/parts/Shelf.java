package io.github.leafproof.dsl.parts;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Part;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Where the files that a procedure uses are found. A name has its folders parted by {@code /} and is seen from the
 * shelf's root, in whichever file it stands; it ends in {@code .inspection}, and no part of it is {@code ..}.
 */
@FunctionalInterface
public interface Shelf {

    /** The file of that name, or why there is none. The same name gives the same answer each time. */
    Found find(String name);

    /** What came of looking for a file. */
    sealed interface Found {

        /** It is there; under the name that the shelf knows it by, should it have several. */
        record There(Part part) implements Found {}

        /**
         * It is not there.
         *
         * @param others the names that are, as far as they are known
         */
        record Missing(Collection<String> others) implements Found {
            public Missing {
                others = List.copyOf(others);
            }
        }

        /** A link leads from the name to a place outside of the shelf. */
        record Outside() implements Found {}

        /** It is there, and does not yield a text. */
        record Unreadable(List<Diagnostic> problems) implements Found {
            public Unreadable {
                problems = List.copyOf(problems);
            }
        }
    }

    /** A shelf with nothing on it. */
    static Shelf empty() {
        return of(Map.of());
    }

    /** Texts in memory by their names. */
    static Shelf of(Map<String, String> texts) {
        Map<String, Found> parts = new TreeMap<>();
        texts.forEach((name, text) -> parts.put(name, new Found.There(new Part(name, SourceText.of(name, text)))));
        return name -> parts.getOrDefault(name, new Found.Missing(parts.keySet()));
    }
}

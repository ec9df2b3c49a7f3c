package io.github.leafproof.dsl;

import io.github.leafproof.dsl.parts.Shelf;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Part;
import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A procedure as it is sent to another machine: the texts it is made of, each with its name and its digest. What is made of
 * them is not sent. It is compiled again where it arrives, once in each Java machine however often it arrives there, and
 * comes to the same checks: compiling depends on the texts alone.
 *
 * @param own the procedure's own file
 * @param parts the files that it uses, in the order of their first use
 */
public record ProcedureSource(File own, List<File> parts) implements Serializable {

    private static final long serialVersionUID = 1L;

    /** Of so many procedures the compiled form is kept, those that nobody asked for longest forgotten first. */
    private static final int MOST_KEPT = 32;

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private static final Map<ProcedureSource, Procedure> COMPILED = new LinkedHashMap<>(16, 0.75f, true);

    public ProcedureSource {
        parts = List.copyOf(parts);
    }

    /**
     * One file.
     *
     * @param name how it is named where it is used; of the procedure's own file, how messages call it
     * @param shown how messages call it
     * @param text what it says
     * @param sha256 the SHA-256 of its bytes, 64 lower-case hexadecimal digits
     */
    public record File(String name, String shown, String text, String sha256) implements Serializable {

        private static final long serialVersionUID = 1L;

        private static File of(String name, SourceText source) {
            return new File(name, source.name(), source.text(), source.sha256());
        }

        /** The text as it was read. A byte order mark before it is no part of it, and of its digest. */
        private SourceText source() {
            SourceText plain = SourceText.of(shown, text);
            if (plain.sha256().equals(sha256)) {
                return plain;
            }
            byte[] marked = (BYTE_ORDER_MARK + text).getBytes(StandardCharsets.UTF_8);
            SourceText withMark = SourceText.ofFile(shown, text, marked);
            if (withMark.sha256().equals(sha256)) {
                return withMark;
            }
            throw new IllegalArgumentException(shown + " is not the text that its digest was taken of");
        }
    }

    /** What a compiled procedure was made of. */
    public static ProcedureSource of(Procedure procedure) {
        SourceText own = procedure.source();
        return new ProcedureSource(
                File.of(own.name(), own),
                procedure.parts().stream()
                        .map(part -> File.of(part.name(), part.source()))
                        .toList());
    }

    /**
     * The procedure, compiled when it is first asked for here; whoever asks meanwhile waits for it.
     *
     * @throws IllegalArgumentException if a text is not the one that its digest was taken of, or the texts make no procedure
     */
    public Procedure procedure() {
        synchronized (COMPILED) {
            Procedure known = COMPILED.get(this);
            if (known == null) {
                known = compile();
                COMPILED.put(this, known);
                if (COMPILED.size() > MOST_KEPT) {
                    COMPILED.remove(COMPILED.keySet().iterator().next());
                }
            }
            return known;
        }
    }

    private Procedure compile() {
        Map<String, Shelf.Found> shelf = new LinkedHashMap<>();
        parts.forEach(part -> shelf.put(part.name(), new Shelf.Found.There(new Part(part.name(), part.source()))));
        return Procedure.compile(
                        own.source(), name -> shelf.getOrDefault(name, new Shelf.Found.Missing(shelf.keySet())))
                .orElseThrow();
    }
}

package io.github.leafproof.examples;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Declaration;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Walks a procedure as it is written, and lists what is observed with which gauge, and in which line. */
public final class ListObservations {
    private ListObservations() {}

    /** Takes the file of a procedure. */
    public static void main(String[] arguments) {
        list(Path.of(arguments[0]), new PrintStream(System.out, true, StandardCharsets.UTF_8));
    }

    static void list(Path file, PrintStream out) {
        Procedure procedure = Procedure.read(file).orElseThrow();
        walk(procedure.written().declarations(), "", out);
    }

    private static void walk(List<Declaration> declarations, String indent, PrintStream out) {
        for (Declaration declaration : declarations) {
            if (declaration instanceof Declaration.Stage stage) {
                out.println(indent + stage.title().plain());
                walk(stage.body(), indent + "  ", out);
            } else if (declaration instanceof Declaration.For loop) {
                walk(loop.body(), indent, out);
            } else if (declaration instanceof Declaration.Observe observe && observe.gauge() != null) {
                SourceText text = observe.span().source();
                out.println(indent + observe.target() + ", with " + observe.gauge() + ", line "
                        + text.at(observe.span().start()).line());
            }
        }
    }
}

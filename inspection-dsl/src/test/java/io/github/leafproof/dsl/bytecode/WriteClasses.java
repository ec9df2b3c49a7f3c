package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.Procedure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Writes what a procedure is compiled to into files, for {@code javap}: see DEVELOPERS.md. */
final class WriteClasses {

    private WriteClasses() {}

    public static void main(String[] arguments) throws IOException {
        Procedure procedure = Procedure.read(Path.of(arguments[0])).orElseThrow();
        Path folder = Files.createDirectories(Path.of(arguments[1]));
        Compilation compilation = QuickJudge.of(procedure.graph()).compile();
        List<byte[]> classes = compilation.classes();
        for (int i = 0; i < classes.size(); i++) {
            Files.write(folder.resolve("Compiled" + i + ".class"), classes.get(i));
        }
        System.out.println(compilation.compiledChecks() + " of "
                + procedure.graph().checks().size() + " checks are compiled as a whole, in " + classes.size()
                + " classes; the longest method has " + compilation.longestMethod() + " bytes");
    }
}

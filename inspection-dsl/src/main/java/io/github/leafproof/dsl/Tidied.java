package io.github.leafproof.dsl;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.layout.Layout;
import io.github.leafproof.dsl.parse.Parsed;
import io.github.leafproof.dsl.parse.ProcedureParser;
import io.github.leafproof.dsl.parse.SourceReading;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Declaration;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A file in the one layout, or the mistakes for which it is left as it is. A procedure must be sound. Of a part, which
 * makes sense only with the procedure that uses it, the grammar must be.
 */
public final class Tidied {

    private final Optional<String> text;
    private final boolean same;
    private final List<Diagnostic> diagnostics;

    private Tidied(Optional<String> text, boolean same, List<Diagnostic> diagnostics) {
        this.text = text;
        this.same = same;
        this.diagnostics = List.copyOf(diagnostics);
    }

    /**
     * Lays out a file of a procedure. It is not written.
     *
     * @param root the folder that used files are named from, as for {@link Procedure#read(Path, Path)}
     */
    public static Tidied of(Path file, Path root) {
        SourceReading reading = SourceReading.read(file);
        if (reading.source().isEmpty()) {
            return refused(reading.problems());
        }
        SourceText source = reading.source().get();
        List<Diagnostic> problems = problems(source, file, root);
        if (problems.stream().anyMatch(Diagnostic::isError)) {
            return refused(problems);
        }
        String text = Layout.of(source);
        return new Tidied(
                Optional.of(text), SourceText.of(source.name(), text).sha256().equals(source.sha256()), problems);
    }

    private static List<Diagnostic> problems(SourceText source, Path file, Path root) {
        Parsed parsed = ProcedureParser.parse(source);
        boolean isPart = parsed.tree().declarations().stream().noneMatch(Declaration.Header.class::isInstance);
        return isPart ? parsed.problems() : Procedure.read(file, root).diagnostics();
    }

    private static Tidied refused(List<Diagnostic> diagnostics) {
        return new Tidied(Optional.empty(), false, diagnostics);
    }

    /** What the file should hold; empty when there are errors. */
    public Optional<String> text() {
        return text;
    }

    /** Whether it holds just that, to the last byte. */
    public boolean isTidy() {
        return same;
    }

    /** All errors and warnings. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }
}

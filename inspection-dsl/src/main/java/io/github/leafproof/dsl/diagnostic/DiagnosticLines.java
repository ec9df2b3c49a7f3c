package io.github.leafproof.dsl.diagnostic;

import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.SourceText.Position;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Diagnostics a line each, for editors and other tools that read {@code file:line:column: level: message} from any
 * compiler:
 *
 * <pre>
 * first-look.inspection:48:39: error: this compares a length with a pressure; lash is limited by … [LP201]
 * </pre>
 */
public final class DiagnosticLines {

    private DiagnosticLines() {}

    /** In the order given; each ends in a line end. */
    public static String write(List<Diagnostic> diagnostics) {
        return diagnostics.stream().map(DiagnosticLines::line).collect(Collectors.joining());
    }

    private static String line(Diagnostic diagnostic) {
        SourceText source = diagnostic.source();
        Position at = source.at(diagnostic.span().start());
        String label = diagnostic.label().isEmpty() ? "" : " (" + diagnostic.label() + ")";
        String help = diagnostic.help().isEmpty() ? "" : "; " + diagnostic.help();
        return OneLine.of(source.name() + ":" + at + ": "
                        + diagnostic.level().name().toLowerCase(Locale.ROOT) + ": "
                        + diagnostic.message() + label + help + " [" + diagnostic.code() + "]")
                + "\n";
    }
}

package io.github.leafproof.dsl.parts;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.message.PartDiagnostics;
import io.github.leafproof.dsl.syntax.Text;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The names that files are used by. They are checked as texts, before any disk is asked. */
final class PartName {

    static final String ENDING = ".inspection";

    /** Longer names no common file system has. */
    private static final int LONGEST = 255;

    private PartName() {}

    /** What is wrong with a name; nothing for one that can be looked for. */
    static Optional<Diagnostic> complaint(Text file) {
        String name = file.plain();
        List<String> steps = Arrays.asList(name.split("/", -1));
        if (!file.isPlain()) {
            return Optional.of(PartDiagnostics.noName(file.span()));
        }
        if (name.indexOf('\\') >= 0) {
            return Optional.of(PartDiagnostics.backslash(file.span(), name.replace('\\', '/')));
        }
        if (name.startsWith("/") || name.indexOf(':') >= 0) {
            return Optional.of(PartDiagnostics.wholePath(file.span()));
        }
        if (steps.contains("..")) {
            return Optional.of(PartDiagnostics.leadsOut(file.span()));
        }
        if (name.length() > LONGEST || steps.contains("") || steps.contains(".") || hasControls(name)) {
            return Optional.of(PartDiagnostics.noName(file.span()));
        }
        return name.endsWith(ENDING)
                ? Optional.empty()
                : Optional.of(PartDiagnostics.otherEnding(file.span(), steps.get(steps.size() - 1), ENDING));
    }

    private static boolean hasControls(String name) {
        return name.chars().anyMatch(Character::isISOControl);
    }
}

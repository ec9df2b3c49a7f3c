package io.github.leafproof.dsl.syntax;

import io.github.leafproof.dsl.source.Damage;
import io.github.leafproof.dsl.source.SourceText;
import java.util.List;

/**
 * A procedure file as written.
 *
 * @param source its text
 * @param declarations what it declares, in order
 * @param damage what of the text could not be read, and is missing among the declarations
 */
public record ProcedureText(SourceText source, List<Declaration> declarations, Damage damage) {

    public ProcedureText {
        declarations = List.copyOf(declarations);
    }

    /** The version of the language that it says it is written in; the current one where it does not say. */
    public LanguageVersion languageVersion() {
        for (Declaration declaration : declarations) {
            if (declaration instanceof Declaration.Language language) {
                return new LanguageVersion(language.version());
            }
        }
        return LanguageVersion.current();
    }
}

package io.github.leafproof.dsl.syntax;

import io.github.leafproof.dsl.source.Damage;
import io.github.leafproof.dsl.source.SourceText;
import java.util.List;
import java.util.stream.Stream;

/**
 * A procedure as written.
 *
 * @param source the file that it begins in
 * @param declarations what it says, in order; behind a {@link Declaration.Use} stands what the used file says, the first
 *     time that it is used
 * @param parts the files that it uses, in the order of their first use
 * @param damage what of the texts could not be read, and is missing among the declarations
 */
public record ProcedureText(SourceText source, List<Declaration> declarations, List<Part> parts, Damage damage) {

    public ProcedureText {
        declarations = List.copyOf(declarations);
        parts = List.copyOf(parts);
    }

    /** A single file as written, with nothing in the places of what it uses. */
    public ProcedureText(SourceText source, List<Declaration> declarations, Damage damage) {
        this(source, declarations, List.of(), damage);
    }

    /** The texts of all its files, its own first. */
    public List<SourceText> sources() {
        return Stream.concat(Stream.of(source), parts.stream().map(Part::source))
                .toList();
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

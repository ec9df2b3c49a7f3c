package io.github.leafproof.dsl.syntax;

import io.github.leafproof.dsl.source.SourceText;
import java.util.List;

/** A procedure file as written: its source and its declarations in order. */
public record ProcedureText(SourceText source, List<Declaration> declarations) {

    public ProcedureText {
        declarations = List.copyOf(declarations);
    }
}

package io.github.leafproof.dsl.syntax;

import io.github.leafproof.dsl.source.SourceText;

/**
 * A file that a procedure uses.
 *
 * @param name its name on the shelf, folders parted by {@code /}: {@code parts/lash.inspection}
 */
public record Part(String name, SourceText source) {}

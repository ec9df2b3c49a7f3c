/**
 * From the letters of a file to the procedure as written. Four passes follow each other: the lexer cuts the text into
 * words and signs, {@code Numerals} and {@code UnitWords} join numbers and units that are written in several, {@code Brackets}
 * sees to it that every bracket has its partner, and the parser reads what then stands there. No input makes any of
 * them throw. This is the only room that knows the parser generator.
 */
@NullMarked
package io.github.leafproof.dsl.parse;

import org.jspecify.annotations.NullMarked;

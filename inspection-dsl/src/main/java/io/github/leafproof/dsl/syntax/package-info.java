/**
 * The procedure as written: source text and places in it, the grammar, and the model that parsing yields. Nothing here
 * knows what a name means or what dimension a number has; that is the next room's work. No type of the parser
 * generator leaves this package.
 */
@NullMarked
package io.github.leafproof.dsl.syntax;

import org.jspecify.annotations.NullMarked;

/**
 * The one layout of a procedure: where its lines begin and end, how far they are indented, where blanks and blank lines
 * stand. It moves words and comments and changes none, so what a procedure means cannot change either.
 */
@NullMarked
package io.github.leafproof.dsl.layout;

import org.jspecify.annotations.NullMarked;

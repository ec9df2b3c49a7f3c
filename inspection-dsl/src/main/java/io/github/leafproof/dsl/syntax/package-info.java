/**
 * The procedure as written: sealed records for declarations, expressions and texts, each with its place in the source.
 * Nothing here knows what a name means or what dimension a number has; that is the work of {@code meaning}. No type of
 * the parser generator gets here.
 */
@NullMarked
package io.github.leafproof.dsl.syntax;

import org.jspecify.annotations.NullMarked;

/**
 * Procedures with one slip in them, to find out which slips the rehearsals would not notice: the edits that are made of a
 * procedure's text, what came of each, and the list of those that a shop lets pass with a reason.
 */
@NullMarked
package io.github.leafproof.dsl.mutants;

import org.jspecify.annotations.NullMarked;

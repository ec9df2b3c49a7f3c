/**
 * A procedure compiled: observations, derived values, checks and gates with numbered slots, and the judge that evaluates
 * them for one engine. A graph is immutable and may be shared between threads; it knows nothing of the text it was
 * written in.
 */
@NullMarked
package io.github.leafproof.dsl.graph;

import org.jspecify.annotations.NullMarked;

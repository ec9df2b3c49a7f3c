/**
 * Entries on the edges of a procedure: for each limit the last that passes, the first that proves nothing, the first that
 * fails. They are found by asking the judge himself, and written down as rehearsals for a person to read.
 */
@NullMarked
package io.github.leafproof.dsl.edges;

import org.jspecify.annotations.NullMarked;

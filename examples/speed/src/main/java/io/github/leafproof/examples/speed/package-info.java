/**
 * How fast a sheet is judged, measured against the same work written by hand and done by engines that are made for any rules. All
 * of them do the {@linkplain io.github.leafproof.examples.speed.Look common work}, and must agree on 2 000 random engines before
 * anything is timed.
 */
@NullMarked
package io.github.leafproof.examples.speed;

import org.jspecify.annotations.NullMarked;

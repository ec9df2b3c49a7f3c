/**
 * Measured amounts: what they are of, in which unit, and how well they are known.
 *
 * <p>A {@link io.github.leafproof.inspection.quantity.Quantity} is what somebody wrote down, held as an exact fraction so
 * that inches turn into millimetres and back without losing a digit. An
 * {@link io.github.leafproof.inspection.quantity.Estimate} is what is known after measuring: a value, its standard
 * uncertainty, and which errors it shares with other values. Everything else in the library stands on this room; it knows
 * nothing of engines or gauges.
 */
@NullMarked
package io.github.leafproof.inspection.quantity;

import org.jspecify.annotations.NullMarked;

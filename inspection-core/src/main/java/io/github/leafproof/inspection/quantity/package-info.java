/** Measured amounts with their units and their uncertainty. */
@NullMarked
package io.github.leafproof.inspection.quantity;

import org.jspecify.annotations.NullMarked;

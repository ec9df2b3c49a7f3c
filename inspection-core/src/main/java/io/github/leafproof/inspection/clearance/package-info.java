/**
 * What leaves prove about a gap, which leaf to offer next, and how far to turn the adjuster.
 *
 * <p>A leaf that enters shows that the gap is no smaller than the leaf measures; a leaf that refuses shows that it is
 * smaller. Where inside the remaining range the gap lies nobody has measured, so evidence bounds the probability of
 * conforming from below and from above instead of naming one number. This room stands on gauges and verdicts.
 */
@NullMarked
package io.github.leafproof.inspection.clearance;

import org.jspecify.annotations.NullMarked;

/**
 * What the trade calculates: crank and slider, valve gear, heat, carburettor, fuel, tightness, air, propeller, tuning, fits.
 *
 * <p>Each calculation is a {@link io.github.leafproof.inspection.mechanism.Mechanism}: its formula, what it takes and
 * within which range, what it assumes, where it comes from and a worked example, all as data, so that a report can show on
 * what a number rests. Estimates go in and an {@link io.github.leafproof.inspection.mechanism.Answer} comes out:
 * an estimate with all its uncertainty, or the reason why there is none. No calculation has a default of its own for
 * anything that was not measured. This room stands on quantities and knows nothing of gauges, cards or verdicts.
 */
@NullMarked
package io.github.leafproof.inspection.mechanism;

import org.jspecify.annotations.NullMarked;

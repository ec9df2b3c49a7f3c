/**
 * What a shop measures with: leaves, pins and reading instruments, and the tray they lie in.
 *
 * <p>Of a leaf only the measured thickness counts, never the marking. Every gauge knows its uncertainty and carries it into
 * whatever is measured with it as a {@link io.github.leafproof.inspection.quantity.Source} of its own, so that two
 * readings with the same gauge share that gauge's error. This room stands on quantities and knows nothing of engines or
 * verdicts.
 */
@NullMarked
package io.github.leafproof.inspection.gauge;

import org.jspecify.annotations.NullMarked;

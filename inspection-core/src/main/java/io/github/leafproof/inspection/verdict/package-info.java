/**
 * What is concluded from what was measured: limits, the probability of conforming to them, the rule that turns a
 * probability into an answer, and what a whole engine's answers add up to.
 *
 * <p>Nothing here guesses. A value so near a limit that its uncertainty reaches across is {@code open}: neither shown to
 * conform nor shown not to. Built on {@link io.github.leafproof.inspection.quantity}; the terms are those of JCGM 106.
 */
@NullMarked
package io.github.leafproof.inspection.verdict;

import org.jspecify.annotations.NullMarked;

/**
 * The work card: an inspection on paper, for whoever keeps paper at the bench. The steps stand in bench order with room to
 * tick and to write in, each caution before the step that it belongs to, and at the foot what the filled card is known by.
 */
@NullMarked
package io.github.leafproof.dsl.workcard;

import org.jspecify.annotations.NullMarked;

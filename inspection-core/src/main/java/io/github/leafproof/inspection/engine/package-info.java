/**
 * What is known of an engine before anybody measures it: the card of its model, the variants that model was made in, and
 * which facts a card can state at all.
 *
 * <p>Limits are the engine maker's, and they live here as data, never in code: lash windows differ by vintage, and a card
 * says which. The engine's own instructions always outrank a card. This room stands on quantities and knows nothing of
 * gauges or verdicts.
 */
@NullMarked
package io.github.leafproof.inspection.engine;

import org.jspecify.annotations.NullMarked;

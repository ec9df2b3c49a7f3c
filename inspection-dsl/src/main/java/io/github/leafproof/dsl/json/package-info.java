/**
 * Texts of JSON for other programs, all laid out alike: the one room of this library that knows a JSON library. It
 * knows nothing of what is written.
 */
@NullMarked
package io.github.leafproof.dsl.json;

import org.jspecify.annotations.NullMarked;

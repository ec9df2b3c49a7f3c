/** The text of a file and places in it: what diagnostics point at. It knows nothing of the language. */
@NullMarked
package io.github.leafproof.dsl.source;

import org.jspecify.annotations.NullMarked;

/** Small programs that use the library, to start one's own from. */
@NullMarked
package io.github.leafproof.examples;

import org.jspecify.annotations.NullMarked;

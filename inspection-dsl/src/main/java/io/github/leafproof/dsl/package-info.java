/** The way in: a procedure is read, compiled and judged by. */
@NullMarked
package io.github.leafproof.dsl;

import org.jspecify.annotations.NullMarked;

/** A procedure's own cases, run: what is entered in them, what is expected of them, and where the two part. */
@NullMarked
package io.github.leafproof.dsl.rehearsal;

import org.jspecify.annotations.NullMarked;

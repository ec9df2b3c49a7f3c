/**
 * What is wrong with a procedure, said so that its writer can mend it: place, reason, remedy. Every message of the
 * compiler is made here, so that they read alike.
 */
@NullMarked
package io.github.leafproof.dsl.diagnostic;

import org.jspecify.annotations.NullMarked;

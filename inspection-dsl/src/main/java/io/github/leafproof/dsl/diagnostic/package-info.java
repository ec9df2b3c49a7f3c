/**
 * What is wrong with a procedure, said so that its writer can mend it: place, reason, remedy; and how that is printed.
 */
@NullMarked
package io.github.leafproof.dsl.diagnostic;

import org.jspecify.annotations.NullMarked;

/**
 * The messages of the compiler about names, types and structure, all in one place so that they read alike: what is
 * wrong in the reader's words, lower case and without a full stop; a help line that says what to do. They are not for
 * use from outside.
 */
@NullMarked
package io.github.leafproof.dsl.message;

import org.jspecify.annotations.NullMarked;

/**
 * What a value is computed by, compiled: types, values, and one small class for each idea of the language. A formula
 * reads numbered slots and knows nothing of names, files or the syntax it came from, except the words it is explained
 * with.
 */
@NullMarked
package io.github.leafproof.dsl.formula;

import org.jspecify.annotations.NullMarked;

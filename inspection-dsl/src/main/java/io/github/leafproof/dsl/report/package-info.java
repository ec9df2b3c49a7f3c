/** A judgement put into words: the report as data, and the report as a person reads it in a terminal. */
@NullMarked
package io.github.leafproof.dsl.report;

import org.jspecify.annotations.NullMarked;

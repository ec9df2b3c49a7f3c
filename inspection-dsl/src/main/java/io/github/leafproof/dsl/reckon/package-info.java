/**
 * The bench calculator: one expression of the language at a time, with every calculation of the trade, and names for what
 * was reckoned before. What is wrong with an expression is said as of a procedure.
 */
@NullMarked
package io.github.leafproof.dsl.reckon;

import org.jspecify.annotations.NullMarked;

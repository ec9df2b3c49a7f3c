/**
 * How much of what a procedure can say its rehearsals have shown: counted from judgements that were made anyway, as text, as
 * data, and as the procedure's own text with what was shown and what was not.
 *
 * <pre>
 * procedure ──sayings──▶ places and their ways ─┐
 *                                               ├─▶ Coverage ──▶ text, JSON, HTML
 * rehearsals ──play──▶ judgements ──Watching────┘
 * </pre>
 */
@NullMarked
package io.github.leafproof.dsl.coverage;

import org.jspecify.annotations.NullMarked;

/**
 * The outcomes of all checks and the release of the engine, and nothing else: a graph compiled to bytecode, for those who
 * judge very many engines. What is said of a verdict is the {@link io.github.leafproof.dsl.graph.Judge judge's} business,
 * and so is what is right: whatever comes out here comes out there.
 */
@NullMarked
package io.github.leafproof.dsl.bytecode;

import org.jspecify.annotations.NullMarked;

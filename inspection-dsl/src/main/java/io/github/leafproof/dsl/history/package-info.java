/**
 * One engine over time: its sheets in their order, what each check came to on them, how each value changed with every hour of
 * running, and when it should be looked at again. It looks into {@code formula} and {@code graph}; its words are made in
 * {@code report}.
 */
@NullMarked
package io.github.leafproof.dsl.history;

import org.jspecify.annotations.NullMarked;

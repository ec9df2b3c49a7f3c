package io.github.leafproof.dsl.edges;

import org.jspecify.annotations.Nullable;

/** The ways in which an entry can be varied in steps, less on one side and more on the other. */
interface Axis {

    /** The step that the case stands at. */
    long start();

    /** What is entered at a step; null where there is nothing to be entered. */
    @Nullable
    Change at(long step);
}

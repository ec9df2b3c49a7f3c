/**
 * Rehearsals as tests of the JUnit platform, so that builds and editors run and show them. A program that has no JUnit on its
 * path never loads this room.
 */
@NullMarked
package io.github.leafproof.dsl.junit;

import org.jspecify.annotations.NullMarked;

/**
 * What a test can state of a report: its release, and of each check what came of it, how sure that is, what is missing, and
 * what to do. Made with AssertJ; a program that has it not on its path never loads this room.
 */
@NullMarked
package io.github.leafproof.dsl.assertions;

import org.jspecify.annotations.NullMarked;

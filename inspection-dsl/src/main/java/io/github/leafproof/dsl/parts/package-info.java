/**
 * The parts that a procedure uses: found on a shelf under their names, read once each, and put in the places where they
 * are used. A shelf is a folder of the disk, out of which no name leads, or texts in memory.
 */
@NullMarked
package io.github.leafproof.dsl.parts;

import org.jspecify.annotations.NullMarked;

/**
 * The walk through an inspection as a conversation: a line that somebody types goes in, what is said to it comes out. It
 * asks what there is to know of the engine, leads from step to step, takes answers as people give them, tells what they come
 * to, and hands over. It knows no terminal: whoever has one reads the lines and shows what is said.
 */
@NullMarked
package io.github.leafproof.dsl.guide;

import org.jspecify.annotations.NullMarked;

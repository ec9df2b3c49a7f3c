/**
 * A procedure as a picture: its stages as lanes, what is observed on the left, what is judged by it on the right, and the
 * gates between checks. The picture is data; it is drawn as SVG, or written as text for two common drawing languages.
 */
@NullMarked
package io.github.leafproof.dsl.draw;

import org.jspecify.annotations.NullMarked;

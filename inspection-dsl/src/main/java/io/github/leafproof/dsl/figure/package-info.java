/**
 * Small pictures of what was measured: a gap between its leaves, a reading with what is known of it, a value over time; each
 * on one axis with the limits that it is held to. Plain SVG elements for a page, with a title and a description, and words
 * beside every colour.
 *
 * <pre>
 * what was judged ──▶ GapFigure, ReadingFigure, CourseFigure ──made of──▶ Scale, Axis, Band, Curve, … ──▶ Element
 * </pre>
 */
@NullMarked
package io.github.leafproof.dsl.figure;

import org.jspecify.annotations.NullMarked;

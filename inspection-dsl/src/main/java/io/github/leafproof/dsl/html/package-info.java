/**
 * Pages for a browser and for paper, all with one look: a page is a tree of parts, its words are words whatever they hold,
 * and its style is light or dark as the reader's screen is. A page loads nothing and runs nothing.
 *
 * <pre>
 * Html ──makes──▶ Element and Words ──▶ Page ──▶ the text of a file
 * </pre>
 */
@NullMarked
package io.github.leafproof.dsl.html;

import org.jspecify.annotations.NullMarked;

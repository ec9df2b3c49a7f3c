/**
 * What goes into a judgement and what comes out of it, as files: engine card, gauge tray, job sheet,
 * report and seal.
 *
 * <p>Reading never throws for what a person got wrong. It gives a {@link io.github.leafproof.inspection.record.Read}:
 * either the content with its digest, or every {@link io.github.leafproof.inspection.record.Problem} of the file at once,
 * each with its place, its reason and its remedy. What a file can say is described in {@code docs/formats.md} and, for
 * machines, by the JSON Schemas beside it. How JSON is taken apart is this room's own affair: no type of a JSON library
 * appears in a public signature.
 *
 * <p>A job sheet is read as it was written. Which observation wants a length and which a yes or no, only the procedure
 * knows; here is checked what any procedure would demand. This room stands on all others of the library.
 */
@NullMarked
package io.github.leafproof.inspection.record;

import org.jspecify.annotations.NullMarked;

/**
 * From the procedure as written to the procedure as understood: names are found, types and dimensions agree, loops are
 * written out, and a check graph is made. Whatever does not make sense becomes a diagnostic; all of them in one run.
 */
@NullMarked
package io.github.leafproof.dsl.meaning;

import org.jspecify.annotations.NullMarked;

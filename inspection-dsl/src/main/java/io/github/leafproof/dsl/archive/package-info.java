/**
 * An archive of job sheets, judged under two revisions of a procedure: which engines would come out otherwise, and why. A
 * stream of sheets goes in, a stream of comparisons comes out, and no more of either is held than is being worked on.
 */
@NullMarked
package io.github.leafproof.dsl.archive;

import org.jspecify.annotations.NullMarked;

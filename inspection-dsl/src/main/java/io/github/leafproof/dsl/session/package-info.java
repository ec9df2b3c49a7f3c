/**
 * An inspection as it is done at the bench, one thing after the other: what to do next, what came of it so far, and at the
 * end a job sheet. A {@link io.github.leafproof.dsl.session.Standing} is what is known at one moment and never changes; a
 * {@link io.github.leafproof.dsl.session.Session} goes from one to the next and keeps every act on disk. It talks to nobody.
 */
@NullMarked
package io.github.leafproof.dsl.session;

import org.jspecify.annotations.NullMarked;

package io.github.leafproof.dsl.parse;

/** Leaves a clause or declaration out of the tree: something in it could not be read, and that has been said. */
final class Unfinished extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Unfinished() {
        super("already reported", null, false, false);
    }
}

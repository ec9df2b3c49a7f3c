package io.github.leafproof.dsl.bytecode;

/** What compiled code is called by. */
interface Program {

    /** Judges the checks, or works out the values, that this part of a procedure was compiled from. */
    void run(Figures figures, Outcomes outcomes);
}

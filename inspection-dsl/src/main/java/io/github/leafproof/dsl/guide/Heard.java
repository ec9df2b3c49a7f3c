package io.github.leafproof.dsl.guide;

import io.github.leafproof.inspection.record.Given;

/** What a typed answer was taken for. */
sealed interface Heard {

    /** Something to enter. */
    record Answer(Given given) implements Heard {}

    /**
     * The beginning of an answer.
     *
     * @param begun what stands before what is still to come
     * @param question what is still to come
     * @param usual what an empty line stands for; empty where that could be anything
     */
    record Begun(String begun, String question, String usual) implements Heard {}

    /**
     * No answer to what was asked.
     *
     * @param problem why not, a sentence without its end
     * @param remedy what to write
     */
    record Unclear(String problem, String remedy) implements Heard {}
}

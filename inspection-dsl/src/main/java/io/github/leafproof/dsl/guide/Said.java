package io.github.leafproof.dsl.guide;

/**
 * What the guide says to a line.
 *
 * @param text what to show, lines that end in a line feed
 * @param prompt what stands before the next line that is typed; empty when the conversation is over
 */
public record Said(String text, String prompt) {

    /** Whether nothing more is asked. */
    public boolean isOver() {
        return prompt.isEmpty();
    }
}

package io.github.leafproof.dsl.build;

/** What is said for each value of a loop. */
public final class LoopDraft extends Body<LoopDraft> {

    LoopDraft(Sheet sheet) {
        super(sheet);
    }

    @Override
    LoopDraft self() {
        return this;
    }
}

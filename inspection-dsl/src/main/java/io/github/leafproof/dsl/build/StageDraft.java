package io.github.leafproof.dsl.build;

import java.util.Arrays;
import java.util.stream.Collectors;

/** A stage of the work. */
public final class StageDraft extends Body<StageDraft> {

    StageDraft(Sheet sheet) {
        super(sheet);
    }

    @Override
    StageDraft self() {
        return this;
    }

    /** The gates that every check of this stage waits for. */
    public StageDraft after(String... gates) {
        sheet().line("after " + names(gates));
        sheet().gap();
        return this;
    }

    static String names(String... names) {
        return Arrays.stream(names).map(Piece::name).collect(Collectors.joining(", "));
    }
}

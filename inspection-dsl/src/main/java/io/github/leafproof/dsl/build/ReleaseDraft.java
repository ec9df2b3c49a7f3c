package io.github.leafproof.dsl.build;

import io.github.leafproof.inspection.verdict.Release;

/** What the checks decide about the whole engine; the first rule that holds counts. */
public final class ReleaseDraft {

    private final Sheet sheet;

    ReleaseDraft(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The engine gets this when: {@code any critical fails}, {@code cold fails, any open}. */
    public ReleaseDraft when(Release release, String condition) {
        sheet.line(release.word() + " when " + Piece.words(condition));
        return this;
    }

    /** What it gets in every other case. */
    public ReleaseDraft otherwise(Release release) {
        sheet.line(release.word() + " otherwise");
        return this;
    }
}

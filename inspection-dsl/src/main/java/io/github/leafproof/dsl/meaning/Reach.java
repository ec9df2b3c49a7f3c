package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What can never come, or always comes, whatever is entered on a sheet, of an engine for which the procedure is meant. */
final class Reach {

    private final Problems problems;
    private final Outline outline;
    private final Possibilities always;
    private final CheckReach checkReach;

    Reach(Problems problems, Outline outline, Ground ground, @Nullable Formula applies) {
        this.problems = problems;
        this.outline = outline;
        Possibilities any = new Possibilities(ground);
        this.always = applies == null ? any : any.where(applies).orElse(any);
        this.checkReach = new CheckReach(problems, outline, always);
    }

    /** What each check can come to; known once it was looked for. */
    CheckReach ofChecks() {
        return checkReach;
    }

    /** Limits that nothing can lie between. */
    void limits(Sites sites) {
        new LimitReach(problems, always).look(sites);
    }

    /** Everything that is legal and still cannot be what was meant. */
    void look(Sites sites, List<Node.Observation> observed, List<Node.Check> checks, ReleaseRule release) {
        new DecisionReach(problems, outline, always).look(sites, observed);
        checkReach.look(checks);
        if (outline.release != null) {
            new ReleaseReach(problems, checks, checkReach).look(outline.release, release);
        }
    }
}

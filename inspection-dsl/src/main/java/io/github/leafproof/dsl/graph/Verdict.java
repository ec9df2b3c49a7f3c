package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one check came to.
 *
 * @param side on which side it fails, where it has sides
 * @param conformity the bounds of the probability that the requirement holds; null where nothing could be judged
 * @param lacks what is missing, when it is untested
 * @param blockedBy the gates that do not let through, when it is blocked
 */
public record Verdict(
        Node.Check check,
        Outcome outcome,
        Side side,
        @Nullable Conformity conformity,
        List<Value.Lack> lacks,
        List<Node.Check> blockedBy) {

    public Verdict {
        lacks = List.copyOf(lacks);
        blockedBy = List.copyOf(blockedBy);
    }

    static Verdict blocked(Node.Check check, List<Node.Check> gates) {
        return new Verdict(check, Outcome.BLOCKED, Side.NONE, null, List.of(), gates);
    }

    static Verdict notApplicable(Node.Check check) {
        return new Verdict(check, Outcome.NOT_APPLICABLE, Side.NONE, null, List.of(), List.of());
    }

    static Verdict of(Node.Check check, Value value) {
        if (value instanceof Value.Judged judged) {
            return new Verdict(check, judged.outcome(), judged.side(), judged.conformity(), List.of(), List.of());
        }
        List<Value.Lack> lacks = ((Value.Missing) value).lacks();
        return new Verdict(check, outcomeWithout(lacks), Side.NONE, null, lacks, List.of());
    }

    private static Outcome outcomeWithout(List<Value.Lack> lacks) {
        if (new Value.Missing(lacks).isNotAsked()) {
            return Outcome.NOT_APPLICABLE;
        }
        return lacks.stream().allMatch(lack -> lack.kind() == Value.Lack.Kind.UNDECIDED)
                ? Outcome.OPEN
                : Outcome.UNTESTED;
    }
}

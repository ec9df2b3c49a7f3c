package io.github.leafproof.dsl.coverage;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.meaning.Saying;
import io.github.leafproof.dsl.meaning.Way;
import java.util.List;
import java.util.Optional;

/** What a rehearsal has to enter for a place to come out in a way that none has shown yet. */
final class Reaching {

    /** More names than these nobody reads. */
    private static final int MOST_NAMES = 4;

    private final Procedure procedure;

    Reaching(Procedure procedure) {
        this.procedure = procedure;
    }

    /** In a line, as one tells somebody who writes the rehearsal. */
    String words(Saying saying, Way way) {
        String rests = names(saying.restsOn());
        return switch (saying.kind()) {
            case CHECK -> check(saying, way);
            case CONDITION ->
                "let it " + (way == Way.HOLDS ? "hold" : "fail") + (rests.isEmpty() ? "" : "; it rests on " + rests);
            case OPTION -> "let " + rests + " be " + saying.name();
            case ARM -> "let it be chosen" + (rests.isEmpty() ? "" : "; the choice rests on " + rests);
            case GATE ->
                way == Way.HOLDS_BACK
                        ? "let " + saying.name() + " fail, or leave it untested, where what waits for it applies"
                        : "let " + saying.name() + " pass, where what waits for it applies";
            case RELEASE -> "let the engine come to the release by this line";
            case ADVICE -> "let the check come out so; it rests on " + rests;
        };
    }

    private String check(Saying saying, Way way) {
        Node.Check check = procedure.sayings().checksAt(saying).get(0);
        String rests = names(saying.restsOn());
        Formula limit = limit(check.requirement()).orElse(check.requirement());
        String value = limit instanceof LimitsHeld held ? held.subject().words() : rests;
        Optional<String> gap = procedure.graph().observationsOf(check).stream()
                .filter(each -> each.type() instanceof Type.Gap)
                .map(Node::name)
                .findFirst();
        return switch (way) {
            case PASSES -> "enter what fulfils it: " + check.requirement().words();
            case TOLERATED -> "let " + value + " be beyond the limits and inside the tolerated ones: " + limit.words();
            case FAILS_LOW -> "let " + value + " be too little: " + limit.words();
            case FAILS_HIGH -> "let " + value + " be too much: " + limit.words();
            case OPEN ->
                gap.map(each -> "enter for " + each + " what leaves it open: " + limit.words())
                        .orElse("let " + value + " be so near to a limit that its uncertainty reaches across: "
                                + limit.words());
            case CONTRADICTED ->
                "enter for " + gap.orElse(value) + " that something passes which is thicker than what" + " refuses";
            case UNTESTED ->
                procedure.graph().observationsOf(check).isEmpty()
                        ? "take an engine whose card does not state " + rests
                        : "leave out " + rests + ", or enter it with cannot \"...\"";
            case BLOCKED ->
                "let "
                        + names(check.after().stream()
                                .map(number ->
                                        procedure.graph().checks().get(number).name())
                                .toList())
                        + " fail, or leave it untested";
            case NOT_APPLICABLE ->
                check.when() == null
                        ? "leave out " + rests + ", which need not be entered"
                        : "let this fail: " + check.when().words();
            default -> "enter what does not fulfil it: " + check.requirement().words();
        };
    }

    /** The first comparison with limits in a requirement: what is low, high or near them. */
    private static Optional<Formula> limit(Formula requirement) {
        return requirement instanceof LimitsHeld
                ? Optional.of(requirement)
                : requirement.parts().stream()
                        .flatMap(part -> limit(part).stream())
                        .findFirst();
    }

    private static String names(List<String> names) {
        if (names.size() > MOST_NAMES) {
            return String.join(", ", names.subList(0, MOST_NAMES)) + " and " + (names.size() - MOST_NAMES) + " more";
        }
        return names.size() < 2
                ? String.join("", names)
                : String.join(", ", names.subList(0, names.size() - 1)) + " or " + names.get(names.size() - 1);
    }
}

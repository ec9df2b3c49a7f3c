package io.github.leafproof.dsl.coverage;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.Judgement;
import java.util.List;

/** What a judgement shows although its procedure is said never to say it. */
public final class Impossible {

    private Impossible() {}

    /** Each such place and way, in words; none unless there is a mistake in the reasoning. */
    public static List<String> shownBy(Procedure procedure, Judgement judgement) {
        return Watching.of(procedure.sayings(), judgement).entrySet().stream()
                .flatMap(each -> each.getValue().stream()
                        .filter(way -> !each.getKey().ways().contains(way))
                        .map(way -> CoverageText.title(each.getKey()) + " " + way.word()))
                .toList();
    }
}

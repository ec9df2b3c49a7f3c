package io.github.leafproof.dsl.history;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Read;
import java.util.List;
import java.util.stream.Stream;

/** The life of one engine in a test: its sheets, each a workshop of its own, judged and put together. */
record Life(List<Workshop> sheets) {

    static Life of(Workshop... sheets) {
        return new Life(List.of(sheets));
    }

    /** A sheet of that day, begun when the engine had run so long. */
    static Workshop day(Workshop bench, String date, String running) {
        return bench.on(date)
                .heading("\"procedure\": \"trial\", \"revision\": 2, \"running_time\": \"" + running + "\"");
    }

    Read<List<Evidence.Files>> inOrder() {
        return OneEngine.inOrder(sheets.stream()
                .map(Workshop::evidence)
                .map(Read::orElseThrow)
                .map(Evidence::files)
                .toList());
    }

    History history() {
        List<Judgement> judged = sheets.stream().map(Workshop::judged).toList();
        List<Judgement> ordered = inOrder().orElseThrow().stream()
                .flatMap(files -> judged.stream()
                        .filter(each -> each.evidence().files().sheet().equals(files.sheet())))
                .toList();
        return Recounting.of(ordered, UnitSystem.METRIC);
    }

    Followed value(String name) {
        return one(history().values().stream().filter(value -> value.name().equals(name)));
    }

    Finding finding(String check) {
        return one(
                history().findings().stream().filter(finding -> finding.check().equals(check)));
    }

    private static <T> T one(Stream<T> things) {
        return things.findFirst().orElseThrow();
    }
}

package io.github.leafproof.dsl.edges;

import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Declaration.Entered;
import io.github.leafproof.dsl.syntax.Declaration.Step;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.JobSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One of the procedure's own cases, to be changed in a single entry.
 *
 * @param written the case as written
 * @param judgement what it comes to
 */
public record Base(Declaration.Rehearse written, Judgement judgement) {

    /** What it enters for an observation; empty where it enters nothing, or in several goes, or that it could not be had. */
    Optional<Entered> entered(Node.Observation observation) {
        List<Entered> all = written.steps().stream()
                .filter(step -> step instanceof Step.Enter enter
                        && enter.target().toString().equals(observation.name()))
                .map(step -> ((Step.Enter) step).entered())
                .toList();
        return all.size() == 1 && !(all.get(0) instanceof Entered.Cannot) ? Optional.of(all.get(0)) : Optional.empty();
    }

    Verdict verdict(Node.Check check) {
        return judgement.verdicts().get(check.number());
    }

    /** What the case comes to with this entered instead; empty where it cannot be entered. */
    Optional<Judgement> with(Node.Observation observation, Change change) {
        Document<JobSheet> document = judgement.evidence().files().sheet();
        JobSheet sheet = document.content();
        List<Entry> entries = new ArrayList<>(sheet.entries());
        // A sheet that grows by a correction is judged on from where it was, and only what hangs on the entry is judged
        // anew.
        entries.add(new Entry(observation.name(), change.given(), true, null, null, null, null, ""));
        JobSheet grown = sheet.withEntries(entries);
        return judgement
                .continuedWith(new Document<>(grown, document.name(), document.sha256(), document.places()))
                .value();
    }
}

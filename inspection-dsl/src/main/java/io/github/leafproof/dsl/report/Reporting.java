package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Account;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Propagation;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.SheetEngine;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Makes the report of a judgement: what was decided, why, on what evidence, and what to do next. */
public final class Reporting {

    /** Stands in every report: the tool knows numbers, and not this engine's own instructions. */
    public static final String DEFERENCE =
            "The engine's own instructions, local rules and the word of qualified people come"
                    + " before anything said here.";

    private final Judgement judgement;
    private final CheckGraph graph;
    private final EntryWords entries;
    private final Cautions cautions;
    private final Propagation propagation;

    private Reporting(Judgement judgement) {
        this.judgement = judgement;
        this.graph = judgement.graph();
        this.entries = new EntryWords(judgement);
        this.cautions = Cautions.in(graph);
        this.propagation = Propagation.of(judgement);
    }

    /** The report of a judgement. */
    public static Report of(Judgement judgement) {
        return new Reporting(judgement).report();
    }

    /** One check as the report has it. */
    public static Report.Check of(Judgement judgement, Node.Check check) {
        return new Reporting(judgement).check(judgement.verdicts().get(check.number()));
    }

    private Report report() {
        Evidence.Files files = judgement.evidence().files();
        List<Report.Check> checks =
                judgement.verdicts().stream().map(this::check).toList();
        Set<String> general = new LinkedHashSet<>(List.of(DEFERENCE));
        general.addAll(cautions.ofAll());
        return new Report(
                procedure(graph.identity()),
                Report.Input.of(files.sheet()),
                Report.Input.of(files.card()),
                Report.Input.of(files.tray()),
                engine(judgement.evidence()),
                files.sheet().content().date(),
                judgement.release().release(),
                ReleaseWords.of(judgement),
                checks,
                new NextSteps(judgement, cautions, checks).steps(),
                List.copyOf(general),
                notes());
    }

    /** What a report says of a procedure. */
    public static Report.Procedure procedure(CheckGraph.Identity identity) {
        return new Report.Procedure(
                identity.name(),
                identity.title(),
                identity.revision(),
                identity.sha256(),
                identity.parts().stream()
                        .map(part -> new Report.Input(part.name(), part.sha256()))
                        .toList());
    }

    /** How sure is sure enough, and what to know of the gauges. */
    private List<String> notes() {
        List<String> notes = new ArrayList<>(List.of("decided " + graph.rule().words()));
        judgement.verdicts().stream()
                .map(Verdict::check)
                .filter(check -> !check.rule().equals(graph.rule()))
                .forEach(check ->
                        notes.add(check.title() + ": decided " + check.rule().words()));
        notes.addAll(GaugeNotes.of(judgement));
        notes.addAll(new PropagationNotes(judgement.units()).of(propagation));
        return notes;
    }

    static Report.Engine engine(Evidence evidence) {
        EngineCard card = evidence.card().content();
        SheetEngine engine = evidence.sheet().heading().engine();
        return new Report.Engine(card.model(), card.maker(), engine.serial(), engine.variant(), engine.condition());
    }

    private Report.Check check(Verdict verdict) {
        Node.Check check = verdict.check();
        Frame frame = judgement.frame(check);
        Account account = Account.of(check.requirement(), frame);
        // Evidence that disagrees with itself has shown nothing, whatever its bounds come to.
        boolean judged = verdict.conformity() != null && verdict.outcome() != Outcome.CONTRADICTED;
        List<Node.Observation> observed = graph.observationsOf(check);
        List<String> notes = new ArrayList<>(entries.notes(observed));
        notes.addAll(GaugeNotes.of(judgement, verdict, observed));
        if (judged) {
            notes.addAll(new PropagationNotes(judgement.units()).of(propagation.doubts(check)));
        }
        return new Report.Check(
                check.name(),
                check.title(),
                check.stage().isEmpty() ? null : check.stage(),
                check.severity(),
                check.gate(),
                verdict.outcome(),
                verdict.side(),
                judged ? probability(verdict.conformity()) : null,
                judged && !account.value().isEmpty() ? account.value() : null,
                account.requirement(),
                evidence(verdict, account, observed),
                advice(verdict, frame),
                cautions.of(observed),
                missing(verdict),
                notes,
                check.because(),
                asFound(check));
    }

    private static Report.@Nullable Probability probability(@Nullable Conformity conformity) {
        return conformity == null ? null : new Report.Probability(conformity.low(), conformity.high());
    }

    private List<String> evidence(Verdict verdict, Account account, List<Node.Observation> observed) {
        List<String> evidence = new ArrayList<>();
        if (verdict.conformity() != null) {
            evidence.addAll(account.reasons());
        }
        observed.forEach(observation -> evidence.addAll(entries.of(observation)));
        return evidence;
    }

    private static List<String> advice(Verdict verdict, Frame frame) {
        List<String> advice = new ArrayList<>();
        for (Node.Advice each : verdict.check().advice()) {
            if (each.occasion().is(verdict.outcome(), verdict.side())) {
                advice.add(words(each.text(), frame));
            }
        }
        if (verdict.outcome() == Outcome.CONTRADICTED && advice.isEmpty()) {
            advice.add("Wipe both, and the gap, and repeat both trials; if they still disagree, have both measured"
                    + " again.");
        }
        return advice;
    }

    private static String words(Formula text, Frame frame) {
        Value value = text.value(frame);
        return value instanceof Value.Missing missing
                ? "Nothing can be computed here: " + missing.words() + "."
                : ((Value.Words) value).text();
    }

    /** What a check lacks, or waits for, a line each. */
    public static List<String> missing(Verdict verdict) {
        List<String> missing = new ArrayList<>();
        verdict.lacks().forEach(lack -> missing.add(lack.toString()));
        verdict.blockedBy().forEach(gate -> missing.add("waits for " + gate.name() + " (" + gate.title() + ")"));
        return missing;
    }

    private Report.@Nullable AsFound asFound(Node.Check check) {
        return judgement
                .asFound(check)
                .map(found -> {
                    Account account = Account.of(check.requirement(), judgement.frameAsFound(check));
                    boolean judged =
                            found.conformity() != null && !account.value().isEmpty();
                    return new Report.AsFound(found.outcome(), judged ? account.value() : null);
                })
                .orElse(null);
    }

    /** {@code 63 %}, or {@code 0 % to 100 %} where the evidence only bounds it. */
    public static String probabilityWords(double low, double high) {
        String from = Display.percent(low);
        String to = Display.percent(high);
        return from.equals(to) ? from : from + " to " + to;
    }
}

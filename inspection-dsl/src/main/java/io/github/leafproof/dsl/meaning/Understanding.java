package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.message.PartDiagnostics;
import io.github.leafproof.dsl.message.ReachDiagnostics;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.ProcedureText;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Makes sense of a procedure: from its declarations to a check graph, or to everything that is wrong with it. */
public final class Understanding {

    private final ProcedureText text;
    private final Problems problems;
    private final Outline outline;
    private final TypeReader types;
    private final Names names;
    private final Bench bench;

    private Understanding(ProcedureText text, List<Diagnostic> before) {
        this.text = text;
        this.problems = new Problems(before, text.sources(), text.damage());
        this.outline = Outline.of(text, problems);
        this.types = new TypeReader(problems);
        this.names = new Names(problems, outline, types);
        this.bench = new Bench(problems, outline, types);
    }

    /**
     * What the procedure means. Never throws, whatever the text says. What could be read of a text with mistakes is
     * looked into as well, and no complaint is made that the damage alone may have caused.
     *
     * @param before what was found wrong when the text was read; it stands in the way of a graph like any other mistake
     */
    public static Understood of(ProcedureText text, List<Diagnostic> before) {
        return before.size() > Problems.MOST
                ? new Understood(Optional.empty(), List.of(), before)
                : new Understanding(text, before).understand();
    }

    private Understood understand() {
        if (outline.isPart()) {
            // Whatever it names and does not declare stands in the procedure that uses it.
            problems.add(PartDiagnostics.isPart(outline.firstSpan()));
        }
        if (outline.isPart() || outline.isTooLarge()) {
            return new Understood(Optional.empty(), List.of(), problems.inFileOrder());
        }
        CheckGraph.Identity identity = identity();
        Observations observations = new Observations(problems, outline, names, bench);
        Confidences confidences = new Confidences(problems);
        DecisionRule rule =
                outline.decide == null ? DecisionRule.guarded(0.95) : confidences.rule(outline.decide.confidence());
        List<Node.Observation> observed = observations.understand();
        names.deriveAll();
        new RunningEngine(problems, outline, bench).look(observed);
        AskingCircle.look(problems, outline, observed, names.derived());
        Checks checks = new Checks(problems, outline, names, confidences, rule);
        List<Node.Check> judged = checks.understand();
        Formula applies = applies();
        ReleaseRule release = new Releases(problems, outline).rule();
        new Rehearsals(problems, outline).look();
        RehearsalProofs rehearsed = new RehearsalProofs(problems, outline.rehearsals, observed);
        rehearsed.look();
        if (!problems.anyError()) {
            Ground ground = new Ground(names.facts(), observed, names.derived(), judged.size());
            Reach reach = new Reach(problems, outline, ground, applies);
            Sites sites = names.expressions().sites();
            reach.limits(sites);
            if (!problems.anyError()) {
                reach.look(sites, observed, judged, release);
                rehearsed.look(reach.ofChecks());
            }
            if (ground.hasGivenUp() && outline.header != null) {
                problems.add(
                        ReachDiagnostics.notThoughtThrough(outline.header.name().span()));
            }
            // A misspelt name leaves another unused; who mends the one need not hear of the other.
            new Unused(problems, outline, names).look();
            Leanings.look(problems, outline, names, observed, judged);
            new UnusedBench(problems, outline).look(bench.states(), observed);
        }
        List<Diagnostic> found = problems.inFileOrder();
        if (found.stream().anyMatch(Diagnostic::isError)) {
            return new Understood(Optional.empty(), List.of(), found);
        }
        CheckGraph graph = CheckGraph.of(
                identity,
                new CheckGraph.Parts(
                        bench.states(),
                        bench.gauges(),
                        names.facts(),
                        observed,
                        names.derived(),
                        judged,
                        applies,
                        rule,
                        release));
        Sites sites = names.expressions().sites();
        return new Understood(
                Optional.of(graph),
                outline.rehearsals,
                found,
                Optional.of(new Vetting(outline, sites, graph, text.sources())),
                Optional.of(() -> SayingsFinding.of(outline, sites, graph, text.sources())));
    }

    /** Whether a procedure is for an engine is asked before anything is entered, so only the engine may answer it. */
    private @Nullable Formula applies() {
        Declaration.Applies applies = outline.applies;
        if (applies == null) {
            return null;
        }
        Formula condition = names.expressions().condition(applies.condition(), Env.TOP);
        Set<Integer> facts = names.facts().stream().map(Node.Fact::slot).collect(Collectors.toSet());
        if (condition != null) {
            condition.slots(slot -> {
                if (!facts.contains(slot)) {
                    problems.add(StructureDiagnostics.appliesAsksMore(
                            applies.condition().span()));
                }
            });
        }
        return condition;
    }

    private CheckGraph.Identity identity() {
        Declaration.Header header = outline.header;
        if (header == null) {
            if (!outline.isHurtBeforeAnything()) {
                Span begins = text.declarations().isEmpty()
                        ? text.source().span(0, 0)
                        : text.declarations().get(0).span().before();
                problems.add(StructureDiagnostics.noHeader(begins));
            }
            return new CheckGraph.Identity("", "", 1, text.source().sha256(), List.of());
        }
        if (header.revision() < 1) {
            problems.add(StructureDiagnostics.badRevision(header.span()));
        }
        if (!outline.hasAnyCheck() && !outline.isHurtAnywhere()) {
            problems.add(StructureDiagnostics.noCheck(header.span()));
        }
        return new CheckGraph.Identity(
                header.name().text(),
                header.title().plain(),
                header.revision(),
                text.source().sha256(),
                text.parts().stream()
                        .map(part ->
                                new CheckGraph.Part(part.name(), part.source().sha256()))
                        .toList());
    }
}

package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Account;
import io.github.leafproof.dsl.formula.Calculation;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Shown;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Needs;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.inspection.engine.CardFact;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Explains one check: by the procedure alone, or why an engine's verdict is what it is. */
public final class Explaining {

    private final CheckGraph graph;
    private final Node.Check check;
    private final Needs needs;
    private final @Nullable Judgement judgement;
    private final @Nullable Frame frame;

    private Explaining(CheckGraph graph, Node.Check check, @Nullable Judgement judgement) {
        this.graph = graph;
        this.check = check;
        this.needs = graph.needsOf(check);
        this.judgement = judgement;
        this.frame = judgement == null ? null : judgement.frame(check);
    }

    /** What a check of a procedure rests on and how it will be decided, whatever the engine. */
    public static Explanation of(CheckGraph graph, Node.Check check) {
        return new Explaining(graph, check, null).explain();
    }

    /** Why a check came out as it did. */
    public static Explanation of(Judgement judgement, Node.Check check) {
        return new Explaining(judgement.graph(), check, judgement).explain();
    }

    private Explanation explain() {
        CheckGraph.Identity identity = graph.identity();
        Explanation.Judged judged = judgement == null ? null : judged(judgement);
        return new Explanation(
                Reporting.procedure(identity),
                check.name(),
                check.title(),
                check.stage(),
                check.severity(),
                check.gate(),
                frame == null
                        ? check.requirement().words() + (check.requirement() instanceof Slot ? " is yes" : "")
                        : Account.of(check.requirement(), frame).requirement(),
                words(check.when()),
                decision(check.rule()),
                judged,
                needs.gates().stream().map(this::related).toList(),
                waiting(),
                needs.facts().stream().map(this::fact).toList(),
                needs.observations().stream().map(this::observed).toList(),
                gauges(),
                needs.values().stream().map(this::computed).toList(),
                steps(),
                judged == null ? advice() : judged.check().advice(),
                Cautions.in(graph).of(needs.observations()),
                check.because());
    }

    private Explanation.Judged judged(Judgement of) {
        Evidence.Files files = of.evidence().files();
        Verdict verdict = of.verdicts().get(check.number());
        return new Explanation.Judged(
                Reporting.engine(of.evidence()),
                Report.Input.of(files.sheet()),
                Report.Input.of(files.card()),
                Report.Input.of(files.tray()),
                files.sheet().content().date(),
                Reporting.of(of, check),
                verdict.conformity() == null
                        ? List.of()
                        : Account.of(check.requirement(), of.frame(check)).reasons());
    }

    private static @Nullable String words(@Nullable Formula formula) {
        return formula == null ? null : formula.words();
    }

    private Explanation.Related related(Node.Check other) {
        Outcome outcome = judgement == null
                ? null
                : judgement.verdicts().get(other.number()).outcome();
        return new Explanation.Related(other.name(), other.title(), outcome);
    }

    /** Those that name it behind their {@code after}, and those that name these. */
    private List<Explanation.Related> waiting() {
        if (!check.gate()) {
            return List.of();
        }
        return graph.checks().stream()
                .filter(other -> other.after().contains(check.number()))
                .map(this::related)
                .toList();
    }

    private Explanation.Fact fact(Node.Fact fact) {
        String name = fact.name().substring("engine.".length());
        String meaning = CardFact.named(name)
                .map(CardFact::meaning)
                .orElseGet(() -> fact.type().words());
        if (judgement == null || frame == null) {
            return new Explanation.Fact(fact.name(), meaning, null, null);
        }
        Value value = frame.slot(fact.slot());
        String source = value instanceof Value.Missing ? null : FactSource.of(name, judgement.evidence());
        return new Explanation.Fact(fact.name(), meaning, shown(fact, value, frame), source);
    }

    private Explanation.Observed observed(Node.Observation observation) {
        Value asked = frame == null ? null : observation.ask().value(frame);
        return new Explanation.Observed(
                observation.name(),
                asked instanceof Value.Words said
                        ? said.text()
                        : observation.ask().words().replaceAll("^\"|\"$", ""),
                observation.type().words() + (observation.optional() ? ", optional" : ""),
                observation.gauge() == null ? null : observation.gauge().name(),
                observation.needs().stream()
                        .map(need -> need.name() + " " + need.state())
                        .toList(),
                words(observation.when()),
                frame == null ? null : shown(observation, frame.slot(observation.slot()), frame),
                judgement == null ? List.of() : new EntryWords(judgement).of(observation));
    }

    private List<Explanation.GaugeUsed> gauges() {
        return needs.gauges().stream()
                .map(need -> new Explanation.GaugeUsed(
                        need.name(),
                        need.words(),
                        judgement == null ? List.of() : GaugeWords.of(judgement, need, needs.observations())))
                .toList();
    }

    private Explanation.Computed computed(Node.Derived derived) {
        if (judgement == null) {
            return new Explanation.Computed(derived.name(), derived.formula().words(), null, List.of(), List.of());
        }
        // Conditions among the values are decided with the procedure's own confidence.
        Frame deriving = judgement.frame();
        List<Calculation.Step> steps = new ArrayList<>(Calculation.of(derived.formula(), deriving));
        if (!steps.isEmpty()) {
            // The last one is the value itself.
            steps.remove(steps.size() - 1);
        }
        Value value = deriving.slot(derived.slot());
        return new Explanation.Computed(
                derived.name(),
                derived.formula().words(),
                shown(derived, value, deriving),
                steps,
                Shown.sources(value, judgement.units()));
    }

    private List<Calculation.Step> steps() {
        if (frame == null) {
            return List.of();
        }
        Set<Calculation.Step> steps = new LinkedHashSet<>();
        if (check.when() != null) {
            steps.addAll(Calculation.of(check.when(), frame));
        }
        steps.addAll(Calculation.of(check.requirement(), frame));
        return List.copyOf(steps);
    }

    private List<String> advice() {
        return check.advice().stream()
                .map(advice -> "if " + advice.occasion().word() + ": "
                        + advice.text().words().replaceAll("^\"|\"$", ""))
                .toList();
    }

    private static String shown(Node node, Value value, Frame frame) {
        if (!(value instanceof Value.Missing missing)) {
            return Shown.measured(value, frame.units());
        }
        Value.Lack lack = missing.lacks().get(0);
        boolean itself = missing.lacks().size() == 1 && lack.subject().equals(node.name());
        return itself ? lack.words() : "not known: " + missing.words();
    }

    private static String decision(DecisionRule rule) {
        if (rule.equals(DecisionRule.simpleAcceptance())) {
            return "decided by simple acceptance: it passes when it is as likely to hold as not, or likelier, and fails"
                    + " otherwise; for a gap it stays open while neither is shown";
        }
        String sure = rule.words().replaceAll("^at | confidence$", "");
        return "decided " + rule.words() + ": it passes when it is at least " + sure
                + " sure to hold, fails when it is at least " + sure + " sure not to, and is open in between";
    }
}

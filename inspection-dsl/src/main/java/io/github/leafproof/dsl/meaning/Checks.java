package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Occasion;
import io.github.leafproof.dsl.message.NameDiagnostics;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.message.TypeDiagnostics;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Target;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Severity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What is judged, and which gates stand before it. */
final class Checks {

    private final Problems problems;
    private final Outline outline;
    private final Names names;
    private final Confidences confidences;
    private final DecisionRule usual;
    private final Map<String, Integer> gateNumbers = new HashMap<>();

    Checks(Problems problems, Outline outline, Names names, Confidences confidences, DecisionRule usual) {
        this.problems = problems;
        this.outline = outline;
        this.names = names;
        this.confidences = confidences;
        this.usual = usual;
        int number = 0;
        for (Map.Entry<String, Item<Declaration.Check>> each : outline.checks.entrySet()) {
            if (each.getValue().declaration().gate()) {
                gateNumbers.put(each.getKey(), number);
            }
            number++;
        }
    }

    List<Node.Check> understand() {
        Map<String, Set<String>> gates = new LinkedHashMap<>();
        outline.checks.forEach((key, item) -> {
            Set<String> own = gates(key, item);
            if (!own.isEmpty()) {
                gates.put(key, own);
            }
        });
        boolean circle = GateCircle.look(problems, outline, gates);
        List<Node.Check> checks = new ArrayList<>();
        int number = 0;
        for (Map.Entry<String, Item<Declaration.Check>> each : outline.checks.entrySet()) {
            Set<String> own = circle ? Set.of() : gates.getOrDefault(each.getKey(), Set.of());
            Node.Check check = check(number++, each.getKey(), each.getValue(), own);
            if (check != null) {
                checks.add(check);
            }
        }
        return checks;
    }

    /** The gates that a check names itself, and those of the stage it stands in, unless it is one of these. */
    private Set<String> gates(String key, Item<Declaration.Check> item) {
        if (item.stageGates().isEmpty() && item.declaration().after().isEmpty()) {
            return Set.of();
        }
        Set<String> gates = new LinkedHashSet<>();
        boolean isStageGate = item.stageGates().stream().map(item.env()::key).anyMatch(key::equals);
        for (Target gate : item.stageGates()) {
            Optional<String> found = gate(gate, item.env());
            if (!isStageGate) {
                found.ifPresent(gates::add);
            }
        }
        for (Target gate : item.declaration().after()) {
            gate(gate, item.env()).ifPresent(gates::add);
        }
        return gates;
    }

    private Optional<String> gate(Target target, Env env) {
        String key = env.key(target);
        Item<Declaration.Check> item = outline.checks.get(key);
        if (item == null) {
            unknownCheck(problems, outline, target, key);
            return Optional.empty();
        }
        if (!item.declaration().gate() && !problems.isHurt(item.declaration().span())) {
            problems.add(StructureDiagnostics.noGate(
                    target.span(), key, item.declaration().target().span()));
        }
        return Optional.of(key);
    }

    static void unknownCheck(Problems problems, Outline outline, Target target, String key) {
        if (!outline.isBroken(target.name().text())) {
            problems.add(NameDiagnostics.unknownCheck(target.span(), key, problems.near(outline.checks.keySet())));
        }
    }

    private Node.@Nullable Check check(int number, String key, Item<Declaration.Check> item, Set<String> gates) {
        Declaration.Check check = item.declaration();
        Env env = item.env();
        Severity severity = severity(check);
        List<Formula> requirements = new ArrayList<>();
        for (Expression requirement : check.requirements()) {
            Formula formula = names.expressions().condition(requirement, env);
            if (formula != null) {
                requirements.add(formula);
            }
        }
        if (check.requirements().isEmpty() && !problems.isHurt(check.span())) {
            problems.add(StructureDiagnostics.nothingRequired(check.target().span(), key));
        }
        Formula when = check.when() == null ? null : names.expressions().condition(check.when(), env);
        DecisionRule rule = check.confidence() == null ? usual : confidences.rule(check.confidence());
        List<Node.Advice> advice = advice(check, env);
        String title = Observations.fixed(problems, names, check.title(), env);
        List<String> because = check.because().stream()
                .map(reason -> Observations.fixed(problems, names, reason, env))
                .toList();
        if (requirements.isEmpty()) {
            return null;
        }
        Formula requirement = requirements.size() == 1 ? requirements.get(0) : new Joined(true, requirements);
        List<Integer> after =
                gates.stream().map(gate -> gateNumbers.getOrDefault(gate, 0)).toList();
        return new Node.Check(
                number,
                key,
                title,
                item.stage(),
                severity,
                check.gate(),
                after,
                when,
                requirement,
                rule,
                advice,
                because);
    }

    private Severity severity(Declaration.Check check) {
        if (check.severity() == null) {
            return Severity.MAJOR;
        }
        Optional<Severity> severity = Severity.named(check.severity().text());
        if (severity.isEmpty()) {
            List<String> known =
                    Arrays.stream(Severity.values()).map(Severity::word).toList();
            problems.add(NameDiagnostics.unknownWord(check.severity(), "severity", known));
        }
        return severity.orElse(Severity.MAJOR);
    }

    private List<Node.Advice> advice(Declaration.Check check, Env env) {
        List<Node.Advice> all = new ArrayList<>();
        for (Declaration.Advice advice : check.advice()) {
            Optional<Occasion> occasion = Occasion.named(advice.outcome().text());
            if (occasion.isEmpty()) {
                List<String> known =
                        Arrays.stream(Occasion.values()).map(Occasion::word).toList();
                problems.add(NameDiagnostics.unknownWord(advice.outcome(), "outcome", known));
            }
            Typed text = names.expressions().value(advice.advice(), env, new Type.Text());
            if (text != null && !(text.type() instanceof Type.Text)) {
                problems.add(TypeDiagnostics.noAdvice(
                        advice.advice().span(), text.type().words()));
            } else if (text != null && occasion.isPresent()) {
                all.add(new Node.Advice(occasion.get(), text.formula()));
            }
        }
        return all;
    }
}

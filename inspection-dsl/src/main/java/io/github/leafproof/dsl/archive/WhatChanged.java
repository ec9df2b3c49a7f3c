package io.github.leafproof.dsl.archive;

import io.github.leafproof.dsl.archive.CheckMoved.Change;
import io.github.leafproof.dsl.archive.ChecksCompared.Judged;
import io.github.leafproof.dsl.formula.Account;
import io.github.leafproof.dsl.formula.Calculation;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Shown;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.GaugeNeed;
import io.github.leafproof.dsl.graph.Needs;
import io.github.leafproof.dsl.graph.Node;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What is not the same about a check in two revisions: what it requires, when it applies, how sure one has to be, what it
 * waits for, and each thing that it rests on in both. What it rests on in one of them only is named by what it requires
 * there, or by how something else comes about.
 */
final class WhatChanged {

    private final CheckGraph old;
    private final CheckGraph now;
    private final Map<Integer, Needs> oldNeeds = new ConcurrentHashMap<>();
    private final Map<Integer, Needs> newNeeds = new ConcurrentHashMap<>();

    WhatChanged(CheckGraph old, CheckGraph now) {
        this.old = old;
        this.now = now;
    }

    List<Change> between(Judged before, Judged after) {
        List<Change> changes = new ArrayList<>();
        Node.Check oldCheck = before.check();
        Node.Check newCheck = after.check();
        note(changes, "requires", requirement(before), requirement(after));
        note(changes, "applies when", words(oldCheck.when()), words(newCheck.when()));
        note(changes, "decided", oldCheck.rule().words(), newCheck.rule().words());
        note(changes, "waits for", gates(old, oldCheck), gates(now, newCheck));
        restsOn(changes, before, after);
        if (changes.isEmpty()) {
            // The body of a function changed, or a limit inside of a formula.
            firstStepThatDiffers(changes, steps(before), steps(after));
        }
        return changes;
    }

    private static void note(List<Change> changes, String what, @Nullable String before, @Nullable String after) {
        if (!Objects.equals(before, after)) {
            changes.add(new Change(what, before, after));
        }
    }

    private static String requirement(Judged judged) {
        return Account.of(judged.check().requirement(), judged.judgement().frame(judged.check()))
                .requirement();
    }

    private static @Nullable String words(@Nullable Formula formula) {
        return formula == null ? null : formula.words();
    }

    private static @Nullable String gates(CheckGraph graph, Node.Check check) {
        return check.after().isEmpty()
                ? null
                : check.after().stream()
                        .map(gate -> graph.checks().get(gate).name())
                        .collect(Collectors.joining(", "));
    }

    /** Facts, observations and computed values: how each comes about, and what it comes to for this engine. */
    private void restsOn(List<Change> changes, Judged before, Judged after) {
        Map<String, Node> oldNodes = nodes(needs(old, oldNeeds, before.check()));
        Map<String, Node> newNodes = nodes(needs(now, newNeeds, after.check()));
        newNodes.forEach((name, node) -> {
            Node was = oldNodes.get(name);
            if (was != null) {
                note(changes, "how " + name + " comes about", madeOf(was), madeOf(node));
                note(
                        changes,
                        name,
                        value(was, before.judgement().frame()),
                        value(node, after.judgement().frame()));
            }
        });
    }

    /** Asking a graph for them walks through all of it. */
    private static Needs needs(CheckGraph graph, Map<Integer, Needs> known, Node.Check check) {
        return known.computeIfAbsent(check.number(), number -> graph.needsOf(check));
    }

    private static Map<String, Node> nodes(Needs needs) {
        Map<String, Node> nodes = new LinkedHashMap<>();
        needs.facts().forEach(fact -> nodes.put(fact.name(), fact));
        needs.observations().forEach(observation -> nodes.put(observation.name(), observation));
        needs.values().forEach(value -> nodes.put(value.name(), value));
        return nodes;
    }

    private static String madeOf(Node node) {
        if (node instanceof Node.Derived derived) {
            return derived.formula().words();
        }
        if (node instanceof Node.Observation observation) {
            GaugeNeed gauge = observation.gauge();
            return observation.type().words()
                    + (gauge == null ? "" : " with " + gauge.name())
                    + (observation.optional() ? ", optional" : "")
                    + (observation.when() == null ? "" : ", when " + words(observation.when()));
        }
        return ((Node.Fact) node).type().words();
    }

    private static String value(Node node, Frame frame) {
        int slot = node instanceof Node.Derived derived
                ? derived.slot()
                : node instanceof Node.Observation observation ? observation.slot() : ((Node.Fact) node).slot();
        Value value = frame.slot(slot);
        return value instanceof Value.Missing missing
                ? "not known: " + missing.words()
                : Shown.measured(value, frame.units());
    }

    private static List<Calculation.Step> steps(Judged judged) {
        return Calculation.of(judged.check().requirement(), judged.judgement().frame(judged.check()));
    }

    private static void firstStepThatDiffers(
            List<Change> changes, List<Calculation.Step> before, List<Calculation.Step> after) {
        int shorter = Math.min(before.size(), after.size());
        for (int i = 0; i < shorter; i++) {
            Calculation.Step old = before.get(i);
            Calculation.Step step = after.get(i);
            if (!old.words().equals(step.words()) || !old.value().equals(step.value())) {
                changes.add(new Change("first step that differs", words(old), words(step)));
                return;
            }
        }
    }

    private static String words(Calculation.Step step) {
        return step.words() + ": " + step.value();
    }
}

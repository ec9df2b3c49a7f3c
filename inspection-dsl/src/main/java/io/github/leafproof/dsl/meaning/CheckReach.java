package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Occasion;
import io.github.leafproof.dsl.message.ReachDiagnostics;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** What each check can come to: whether it is ever judged, whether it can pass, and which advice can ever be given. */
final class CheckReach {

    private final Problems problems;
    private final Outline outline;
    private final Possibilities always;
    private final EveryRound rounds = new EveryRound();
    private final Map<String, Set<Outcome>> outcomes = new HashMap<>();
    private final Map<String, Set<Occasion>> occasions = new HashMap<>();

    CheckReach(Problems problems, Outline outline, Possibilities always) {
        this.problems = problems;
        this.outline = outline;
        this.always = always;
    }

    /** What a check can come to. */
    Set<Outcome> outcomes(String check) {
        return outcomes.getOrDefault(check, EnumSet.allOf(Outcome.class));
    }

    /** The occasions for advice that a check can bring. */
    Set<Occasion> occasions(String check) {
        return occasions.getOrDefault(check, EnumSet.allOf(Occasion.class));
    }

    void look(List<Node.Check> checks) {
        gatesFirst(checks).forEach(check -> look(check, checks));
        rounds.report(problems);
    }

    private static List<Node.Check> gatesFirst(List<Node.Check> checks) {
        int[] waiting = new int[checks.size()];
        Map<Integer, List<Node.Check>> followers = new HashMap<>();
        Deque<Node.Check> ready = new ArrayDeque<>();
        for (Node.Check check : checks) {
            waiting[check.number()] = check.after().size();
            check.after()
                    .forEach(gate -> followers
                            .computeIfAbsent(gate, number -> new ArrayList<>())
                            .add(check));
            if (check.after().isEmpty()) {
                ready.add(check);
            }
        }
        List<Node.Check> order = new ArrayList<>();
        while (!ready.isEmpty()) {
            Node.Check next = ready.remove();
            order.add(next);
            for (Node.Check follower : followers.getOrDefault(next.number(), List.of())) {
                if (--waiting[follower.number()] == 0) {
                    ready.add(follower);
                }
            }
        }
        return order;
    }

    private Declaration.Check written(Node.Check check) {
        return Objects.requireNonNull(outline.checks.get(check.name())).declaration();
    }

    private void look(Node.Check check, List<Node.Check> checks) {
        Declaration.Check written = written(check);
        boolean reached = gatesOpen(check, checks);
        Optional<Possibilities> open = behindGates(always, check, checks);
        Optional<Possibilities> applies = check.when() == null ? Optional.of(always) : always.where(check.when());
        if (check.when() != null && written.when() != null) {
            when(check, check.when(), written, open);
        }
        Optional<Possibilities> judged = applies.flatMap(inside -> behindGates(inside, check, checks));
        if (reached && applies.isPresent() && judged.isPresent()) {
            requirement(check, written, open.orElse(always), judged.get());
        }
        Set<Fate> fates =
                reached && judged.isPresent() ? judged.get().fates(check.requirement()) : EnumSet.noneOf(Fate.class);
        outcomes.put(check.name(), outcomes(check, fates));
        advice(check, written, fates);
    }

    private boolean gatesOpen(Node.Check check, List<Node.Check> checks) {
        for (int number : check.after()) {
            Node.Check gate = checks.get(number);
            if (outcomes(gate.name()).stream().noneMatch(Outcome::letsThrough)) {
                Span span = written(check).target().span();
                problems.add(ReachDiagnostics.waitsForever(
                        span, check.name(), gate.name(), written(gate).target().span()));
                return false;
            }
        }
        return true;
    }

    /** What is known once all gates let through; a gate that need not apply may let through and show nothing. */
    private Optional<Possibilities> behindGates(Possibilities from, Node.Check check, List<Node.Check> checks) {
        Possibilities so = from;
        for (int number : check.after()) {
            Node.Check gate = checks.get(number);
            Optional<Possibilities> next = behind(gate, so, from);
            if (next.isEmpty()) {
                Span span = written(check).target().span();
                problems.add(ReachDiagnostics.gatesContradict(
                        span, check.name(), gate.name(), written(gate).target().span()));
                return next;
            }
            so = next.get();
        }
        return Optional.of(so);
    }

    /**
     * What is known once one gate more lets through; empty where it contradicts what is known.
     *
     * @param from what was known before any gate
     */
    static Optional<Possibilities> behind(Node.Check gate, Possibilities so, Possibilities from) {
        boolean tells = gate.when() == null && !from.ground().has(gate.requirement(), Ground.Trait.LEFT_OUT);
        if (!tells || !from.canHold(gate.requirement())) {
            return Optional.of(so);
        }
        return so.where(gate.requirement());
    }

    private void when(Node.Check check, Formula when, Declaration.Check written, Optional<Possibilities> open) {
        Span span = Objects.requireNonNull(written.when()).span();
        Span declared = written.target().span();
        boolean never = !always.canHold(when);
        boolean neverBehind = open.isPresent() && !open.get().canHold(when);
        if (never || neverBehind) {
            rounds.claim(
                    never
                            ? ReachDiagnostics.neverApplies(span, check.name(), declared)
                            : ReachDiagnostics.neverAppliesBehindGates(span, check.name(), declared));
        } else {
            rounds.doubt(Code.LP433, span);
        }
        boolean surely = always.surelyHolds(when);
        if (surely) {
            rounds.claim(ReachDiagnostics.alwaysHolds(span, check.name() + " applies without it"));
        } else {
            rounds.doubt(Code.LP434, span);
        }
        if (!surely && open.isPresent() && open.get().surelyHolds(when)) {
            rounds.claim(ReachDiagnostics.saysGateAgain(span, check.name()));
        } else {
            rounds.doubt(Code.LP440, span);
        }
    }

    private void requirement(Node.Check check, Declaration.Check written, Possibilities open, Possibilities judged) {
        List<Expression> texts = written.requirements();
        List<Formula> parts = texts.size() > 1 && check.requirement() instanceof Joined joined
                ? joined.parts()
                : List.of(check.requirement());
        if (!judged.canHold(check.requirement())) {
            Span span = texts.get(culprit(parts, judged)).span();
            problems.add(
                    always.canHold(check.requirement())
                            ? ReachDiagnostics.neverPassesWhereJudged(
                                    span, check.name(), written.target().span())
                            : ReachDiagnostics.neverPasses(span, check.name()));
            return;
        }
        for (int i = 0; i < parts.size(); i++) {
            holdsAnyway(check, written, parts.get(i), texts.get(i).span(), open, judged);
        }
    }

    private static int culprit(List<Formula> parts, Possibilities judged) {
        for (int i = 0; i < parts.size(); i++) {
            if (!judged.canHold(parts.get(i))) {
                return i;
            }
        }
        return 0;
    }

    private void holdsAnyway(
            Node.Check check,
            Declaration.Check written,
            Formula part,
            Span span,
            Possibilities open,
            Possibilities judged) {
        boolean anyway = always.surelyHolds(part);
        boolean shown = !anyway && open.surelyHolds(part);
        boolean here = !anyway && !shown && judged.surelyHolds(part) && written.when() != null;
        if (anyway) {
            rounds.claim(ReachDiagnostics.alwaysHolds(span, check.name() + " checks nothing by it"));
        } else if (here) {
            rounds.claim(ReachDiagnostics.alwaysHoldsWhereItApplies(
                    span, Objects.requireNonNull(written.when()).span()));
        } else {
            rounds.doubt(Code.LP434, span);
        }
        if (shown) {
            rounds.claim(ReachDiagnostics.saysGateAgain(span, check.name()));
        } else {
            rounds.doubt(Code.LP440, span);
        }
    }

    private Set<Outcome> outcomes(Node.Check check, Set<Fate> fates) {
        Set<Outcome> all = EnumSet.noneOf(Outcome.class);
        fates.forEach(fate -> all.add(fate.outcome()));
        Set<Ground.Trait> traits = EnumSet.noneOf(Ground.Trait.class);
        traits.addAll(always.ground().traits(check.requirement()));
        if (check.when() != null) {
            traits.addAll(always.ground().traits(check.when()));
        }
        if (traits.contains(Ground.Trait.LEFT_OUT) || (check.when() != null && always.canFail(check.when()))) {
            all.add(Outcome.NOT_APPLICABLE);
        }
        if (traits.contains(Ground.Trait.ASKED) || fates.isEmpty()) {
            all.add(Outcome.UNTESTED);
        }
        if (traits.contains(Ground.Trait.MEASURED) || traits.contains(Ground.Trait.FELT)) {
            all.add(Outcome.OPEN);
        }
        if (!check.after().isEmpty()) {
            all.add(Outcome.BLOCKED);
        }
        return all;
    }

    private void advice(Node.Check check, Declaration.Check written, Set<Fate> fates) {
        Set<Occasion> possible = EnumSet.noneOf(Occasion.class);
        Set<Outcome> known = outcomes(check.name());
        for (Occasion occasion : Occasion.values()) {
            boolean comes = switch (occasion) {
                case HIGH -> fates.contains(Fate.HIGH);
                case LOW -> fates.contains(Fate.LOW);
                default -> known.contains(Outcome.valueOf(occasion.name()));
            };
            if (comes) {
                possible.add(occasion);
            }
        }
        occasions.put(check.name(), possible);
        for (Declaration.Advice advice : written.advice()) {
            Span span = advice.outcome().span();
            Optional<Occasion> occasion = Occasion.named(advice.outcome().text());
            if (!fates.isEmpty() && occasion.isPresent() && !possible.contains(occasion.get())) {
                rounds.claim(ReachDiagnostics.adviceNeverGiven(
                        span, check.name(), occasion.get().word()));
            } else {
                rounds.doubt(Code.LP437, span);
            }
        }
    }
}

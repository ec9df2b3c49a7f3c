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
    private final EveryRound rounds;
    private final Map<String, Found> found = new HashMap<>();

    /** What one check can come to, and its requirement where it is judged. */
    private record Found(Set<Outcome> outcomes, Set<Fate> fates) {}

    CheckReach(Problems problems, Outline outline, Possibilities always) {
        this.problems = problems;
        this.outline = outline;
        this.always = always;
        this.rounds = new EveryRound(outline.hasLoops());
    }

    /** What a check can come to. */
    Set<Outcome> outcomes(String check) {
        Found known = found.get(check);
        return known == null ? EnumSet.allOf(Outcome.class) : known.outcomes;
    }

    /** The occasions for advice that a check can bring. */
    Set<Occasion> occasions(String check) {
        Found known = found.get(check);
        return known == null ? EnumSet.allOf(Occasion.class) : occasions(known);
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
        Optional<Possibilities> judged = open;
        if (check.when() != null) {
            when(check, check.when(), written, open);
            judged = always.where(check.when()).flatMap(inside -> behindGates(inside, check, checks));
        }
        Set<Fate> fates = EnumSet.noneOf(Fate.class);
        if (reached && judged.isPresent()) {
            fates = judged.get().fates(check.requirement());
            requirement(check, written, open.orElse(always), judged.get(), fates);
        }
        found.put(check.name(), new Found(outcomes(check, fates), fates));
        if (!written.advice().isEmpty()) {
            advice(check, written, fates);
        }
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
        Set<Fate> anywhere = always.fates(when);
        Set<Fate> behind = open.isPresent() && open.get() != always ? open.get().fates(when) : anywhere;
        boolean never = !Fate.canHold(anywhere);
        boolean neverBehind = open.isPresent() && !Fate.canHold(behind);
        if (never || neverBehind) {
            rounds.claim(
                    never
                            ? ReachDiagnostics.neverApplies(span, check.name(), declared)
                            : ReachDiagnostics.neverAppliesBehindGates(span, check.name(), declared));
        } else {
            rounds.doubt(Code.LP433, span);
        }
        boolean surely = Fate.surelyHolds(anywhere);
        if (surely) {
            rounds.claim(ReachDiagnostics.alwaysHolds(span, check.name() + " applies without it"));
        } else {
            rounds.doubt(Code.LP434, span);
        }
        if (!surely && open.isPresent() && Fate.surelyHolds(behind)) {
            rounds.claim(ReachDiagnostics.saysGateAgain(span, check.name()));
        } else {
            rounds.doubt(Code.LP440, span);
        }
    }

    /** @param fates what the whole requirement can come out as where it is judged */
    private void requirement(
            Node.Check check, Declaration.Check written, Possibilities open, Possibilities judged, Set<Fate> fates) {
        List<Expression> texts = written.requirements();
        List<Formula> parts = texts.size() > 1 && check.requirement() instanceof Joined joined
                ? joined.parts()
                : List.of(check.requirement());
        if (!Fate.canHold(fates)) {
            Span span = texts.get(culprit(parts, judged)).span();
            problems.add(
                    always.canHold(check.requirement())
                            ? ReachDiagnostics.neverPassesWhereJudged(
                                    span, check.name(), written.target().span())
                            : ReachDiagnostics.neverPasses(span, check.name()));
            return;
        }
        for (int i = 0; i < parts.size(); i++) {
            Formula part = parts.get(i);
            Set<Fate> own = part == check.requirement() ? fates : judged.fates(part);
            boolean anyway = Fate.surelyHolds(always == judged ? own : always.fates(part));
            boolean shown = !anyway && open != always && Fate.surelyHolds(open == judged ? own : open.fates(part));
            holdsAnyway(check, written, texts.get(i).span(), anyway, shown, Fate.surelyHolds(own));
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

    /**
     * @param anyway whether a part of the requirement holds whatever is known
     * @param shown whether the gates have shown it
     * @param here whether it holds where the check is judged
     */
    private void holdsAnyway(
            Node.Check check, Declaration.Check written, Span span, boolean anyway, boolean shown, boolean here) {
        if (anyway) {
            rounds.claim(ReachDiagnostics.alwaysHolds(span, check.name() + " checks nothing by it"));
        } else if (here && !shown && written.when() != null) {
            rounds.claim(ReachDiagnostics.alwaysHoldsWhereItApplies(
                    span, written.when().span()));
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
        Set<Ground.Trait> traits = EnumSet.copyOf(always.ground().traits(check.requirement()));
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

    private static Set<Occasion> occasions(Found found) {
        Set<Occasion> possible = EnumSet.noneOf(Occasion.class);
        for (Occasion occasion : Occasion.values()) {
            boolean comes = switch (occasion) {
                case HIGH -> found.fates.contains(Fate.HIGH);
                case LOW -> found.fates.contains(Fate.LOW);
                default -> found.outcomes.contains(Outcome.valueOf(occasion.name()));
            };
            if (comes) {
                possible.add(occasion);
            }
        }
        return possible;
    }

    private void advice(Node.Check check, Declaration.Check written, Set<Fate> fates) {
        Set<Occasion> possible = occasions(check.name());
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

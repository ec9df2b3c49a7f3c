package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Chosen;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.meaning.Saying.Kind;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Everything that a procedure can say, place by place as it is written. What cannot come, whatever is entered, is not asked for:
 * it is told by the same reasoning about ranges and options that warns of checks that never pass, so that now and then more is
 * called possible than really is, and never less.
 */
public final class Sayings {

    private final Outline outline;
    private final Map<SayingDrafts.Key, Saying> all;
    private final IdentityHashMap<Formula, Saying> conditions = new IdentityHashMap<>();
    private final IdentityHashMap<Chosen, List<Optional<Saying>>> arms = new IdentityHashMap<>();
    private final Map<Integer, List<Gated>> gates;
    private final Map<SayingDrafts.Key, List<Node.Check>> members;
    private final List<SayingDrafts.Key> lines;

    Sayings(
            Outline outline,
            Sites sites,
            Map<SayingDrafts.Key, Saying> all,
            Map<Integer, List<Gated>> gates,
            Map<SayingDrafts.Key, List<Node.Check>> members,
            List<SayingDrafts.Key> lines) {
        this.outline = outline;
        this.all = all;
        this.gates = gates;
        this.members = members;
        this.lines = lines;
        sites.conditions.forEach((formula, site) -> note(formula, Kind.CONDITION, site.span()));
        sites.options.forEach((formula, span) -> note(formula, Kind.OPTION, span));
        sites.chosen.forEach((choice, site) -> arms.put(
                choice,
                IntStream.range(0, site.armOf().size())
                        .mapToObj(option -> Optional.ofNullable(all.get(Sides.arm(site, option))))
                        .toList()));
    }

    private void note(Formula formula, Kind kind, Span span) {
        Saying saying = all.get(SayingDrafts.at(kind, span));
        if (saying != null) {
            conditions.put(formula, saying);
        }
    }

    /** A gate that a check waits for, and the place that says so: at the check itself, or at its stage. */
    public record Gated(Node.Check gate, Saying place) {}

    /** All places, in the order of the procedure's files and of each file. */
    public List<Saying> all() {
        return List.copyOf(all.values());
    }

    /** The place of a check. */
    public Saying of(Node.Check check) {
        return Objects.requireNonNull(all.get(key(written(check))));
    }

    /** The checks that stand at a place, or that it advises about: one for each round of its loops. */
    public List<Node.Check> checksAt(Saying saying) {
        return members.getOrDefault(new SayingDrafts.Key(saying.kind(), saying.span(), saying.name()), List.of());
    }

    /** The gates that a check waits for. */
    public List<Gated> gates(Node.Check check) {
        return gates.getOrDefault(check.number(), List.of());
    }

    /** The place of a piece of a check's advice, by its number among them. */
    public Saying advice(Node.Check check, int number) {
        Declaration.Check written = written(check);
        return Objects.requireNonNull(all.get(key(written, written.advice().get(number))));
    }

    /** The place of a condition, or of an option that something is compared with; empty where none is asked for. */
    public Optional<Saying> at(Formula condition) {
        return Optional.ofNullable(conditions.get(condition));
    }

    /** The place of the arm that stands for an option, by the option's number; empty where it is never chosen. */
    public Optional<Saying> arm(Chosen choice, int option) {
        List<Optional<Saying>> written = arms.get(choice);
        return written == null ? Optional.empty() : written.get(option);
    }

    /** The place of a line of the release, by its number; one that nobody wrote down stands at the procedure's name. */
    public Saying line(int number) {
        return Objects.requireNonNull(all.get(lines.get(number)));
    }

    private Declaration.Check written(Node.Check check) {
        return Objects.requireNonNull(outline.checks.get(check.name())).declaration();
    }

    static SayingDrafts.Key key(Declaration.Check check) {
        return new SayingDrafts.Key(
                Kind.CHECK, check.target().span(), check.target().toString());
    }

    static SayingDrafts.Key key(Declaration.Check check, Declaration.Advice advice) {
        return new SayingDrafts.Key(Kind.ADVICE, advice.span(), check.target() + " if " + advice.outcome());
    }
}

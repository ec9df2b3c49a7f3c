package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.message.NameDiagnostics;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Name;
import io.github.leafproof.dsl.syntax.ProcedureText;
import io.github.leafproof.dsl.syntax.Target;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The declarations of a procedure by name, stages opened and loops written out, before anything is looked into. */
final class Outline {

    /** Loops within loops multiply; no procedure of a bench comes near this. */
    static final int MOST_DECLARATIONS = 500_000;

    /** As long as the longest file may be, four times over. */
    private static final long MOST_LETTERS = 64L << 20;

    final Map<String, Item<Declaration.Observe>> observations = new LinkedHashMap<>();
    final Map<String, Item<Declaration.Let>> lets = new LinkedHashMap<>();
    final Map<String, Item<Declaration.Check>> checks = new LinkedHashMap<>();
    final Map<String, Declaration.Define> functions = new LinkedHashMap<>();
    final Map<String, Declaration.Gauge> gauges = new LinkedHashMap<>();
    final Map<String, Declaration.Setup> setups = new LinkedHashMap<>();
    final Map<String, Declaration.HazardText> hazards = new LinkedHashMap<>();
    final Map<String, Declaration.CardFact> cardFacts = new LinkedHashMap<>();
    final List<Declaration.Rehearse> rehearsals = new ArrayList<>();
    Declaration.@Nullable Header header;
    Declaration.@Nullable Applies applies;
    Declaration.@Nullable Decide decide;
    Declaration.@Nullable Release release;

    private final Problems problems;
    private final ProcedureText text;
    private final Map<String, Name> firsts = new LinkedHashMap<>();
    private final Set<String> broken = new HashSet<>();
    private final Set<Name> variables = new LinkedHashSet<>();
    private int declarations;
    private long letters;
    private boolean tooLarge;
    private boolean anyCheck;
    private @Nullable Span first;

    private Outline(ProcedureText text, Problems problems) {
        this.text = text;
        this.problems = problems;
    }

    static Outline of(ProcedureText text, Problems problems) {
        Outline outline = new Outline(text, problems);
        text.declarations().forEach(each -> outline.add(new Item<>(each, Env.TOP, "", List.of())));
        outline.variables.stream()
                .filter(variable -> outline.hasValue(variable.text()))
                .forEach(variable -> problems.add(NameDiagnostics.hidden(variable, "a value of this procedure")));
        return outline;
    }

    private void add(Item<Declaration> item) {
        Declaration declaration = item.declaration();
        if (first == null && !(declaration instanceof Declaration.Language)) {
            first = declaration.span();
        }
        if (isTooLarge(declaration)) {
            return;
        }
        if (declaration instanceof Declaration.Stage stage) {
            addStage(item.of(stage));
        } else if (declaration instanceof Declaration.For loop) {
            addRounds(item.of(loop));
        } else if (declaration instanceof Declaration.Observe observe) {
            addTarget(observations, observe.target(), item.of(observe));
        } else if (declaration instanceof Declaration.Let let) {
            addTarget(lets, let.target(), item.of(let));
        } else if (declaration instanceof Declaration.Check check) {
            anyCheck = true;
            addTarget(checks, check.target(), item.of(check));
        } else {
            addWhole(declaration, item.env());
        }
    }

    /** Counts what the procedure comes to with its loops written out, and says once when that is too much. */
    private boolean isTooLarge(Declaration declaration) {
        declarations++;
        if (declaration instanceof Declaration.For loop) {
            // A round costs something even when there is nothing in it.
            declarations += loop.values().size();
        } else if (!(declaration instanceof Declaration.Stage)) {
            letters += declaration.span().end() - declaration.span().start();
        }
        if (!tooLarge && (declarations > MOST_DECLARATIONS || letters > MOST_LETTERS)) {
            tooLarge = true;
            problems.add(StructureDiagnostics.tooLarge(declaration.span(), MOST_DECLARATIONS));
        }
        return tooLarge;
    }

    /** What stands for the whole procedure and is not repeated by a loop. */
    private void addWhole(Declaration declaration, Env env) {
        if (!env.loops().isEmpty()) {
            problems.add(StructureDiagnostics.notInALoop(declaration.span()));
            nameOf(declaration).ifPresent(broken::add);
        } else if (declaration instanceof Declaration.Define define) {
            if (Builtin.names().contains(define.name().text())) {
                problems.add(NameDiagnostics.hidden(define.name(), "a function of the language"));
            }
            addName(functions, define.name(), define);
        } else if (declaration instanceof Declaration.Gauge gauge) {
            addName(gauges, gauge.name(), gauge);
        } else if (declaration instanceof Declaration.Setup setup) {
            addName(setups, setup.name(), setup);
        } else if (declaration instanceof Declaration.HazardText hazard) {
            addName(hazards, hazard.name(), hazard);
        } else if (declaration instanceof Declaration.CardFact fact) {
            // The engine's facts have names of their own, which begin with engine.
            if (isNew("engine." + fact.name(), fact.name())) {
                cardFacts.put(fact.name().text(), fact);
            }
        } else if (declaration instanceof Declaration.Rehearse rehearse) {
            rehearsals.add(rehearse);
        } else if (declaration instanceof Declaration.Header given) {
            header = only(header, given);
        } else if (declaration instanceof Declaration.Applies given) {
            applies = only(applies, given);
        } else if (declaration instanceof Declaration.Decide given) {
            decide = only(decide, given);
        } else if (declaration instanceof Declaration.Release given) {
            release = only(release, given);
        }
    }

    private void addStage(Item<Declaration.Stage> item) {
        Declaration.Stage stage = item.declaration();
        if (!item.stage().isEmpty()) {
            problems.add(StructureDiagnostics.stageInStage(stage.title().span(), item.stage()));
        }
        List<Target> gates = new ArrayList<>(item.stageGates());
        gates.addAll(stage.after());
        stage.body()
                .forEach(each -> add(new Item<>(each, item.env(), stage.title().plain(), gates)));
    }

    private void addRounds(Item<Declaration.For> item) {
        Declaration.For loop = item.declaration();
        String variable = loop.variable().text();
        variables.add(loop.variable());
        if (item.env().loops().containsKey(variable)) {
            problems.add(NameDiagnostics.hidden(loop.variable(), "a loop around this one"));
        }
        if (loop.values().size() > TypeReader.MOST_OPTIONS) {
            problems.add(StructureDiagnostics.listTooLong(
                    loop.values().get(TypeReader.MOST_OPTIONS).span(), TypeReader.MOST_OPTIONS));
            return;
        }
        Set<String> values = new LinkedHashSet<>();
        for (Name value : loop.values()) {
            if (!values.add(value.text())) {
                problems.add(NameDiagnostics.optionTwice(value.span(), value.text()));
            }
        }
        Type.Choice choice = new Type.Choice(List.copyOf(values), false);
        for (int round = 0; round < choice.options().size() && !tooLarge; round++) {
            Env env = item.env().with(variable, new Env.LoopValue(choice, round));
            loop.body().forEach(each -> add(new Item<>(each, env, item.stage(), item.stageGates())));
        }
    }

    private <D extends Declaration> void addTarget(Map<String, Item<D>> into, Target target, Item<D> item) {
        for (String variable : item.env().loops().keySet()) {
            boolean indexed =
                    target.indexes().stream().anyMatch(index -> index.text().equals(variable));
            if (!indexed) {
                problems.add(NameDiagnostics.loopIndexMissing(target, variable));
                broken.add(target.name().text());
                return;
            }
        }
        for (Name index : target.indexes()) {
            if (!item.env().loops().containsKey(index.text())) {
                if (!isBroken(index.text())) {
                    problems.add(NameDiagnostics.indexWithoutLoop(index));
                }
                broken.add(target.name().text());
                return;
            }
        }
        if (isNew(item.env().key(target), target.name())) {
            into.put(item.env().key(target), item);
        }
    }

    private <D> void addName(Map<String, D> into, Name name, D declaration) {
        if (isNew(name.text(), name)) {
            into.put(name.text(), declaration);
        }
    }

    private boolean isNew(String key, Name name) {
        Name first = firsts.putIfAbsent(key, name);
        if (first != null && !first.equals(name)) {
            problems.add(NameDiagnostics.declaredTwice(name, key, first.span()));
        }
        return first == null;
    }

    private <D extends Declaration> D only(@Nullable D first, D given) {
        if (first != null) {
            problems.add(StructureDiagnostics.givenTwice(given.span(), first.span()));
            return first;
        }
        return given;
    }

    /** The name of what may be named by others and stands once in a procedure. */
    private static Optional<String> nameOf(Declaration declaration) {
        Name name = declaration instanceof Declaration.Gauge gauge
                ? gauge.name()
                : declaration instanceof Declaration.Setup setup
                        ? setup.name()
                        : declaration instanceof Declaration.HazardText hazard
                                ? hazard.name()
                                : declaration instanceof Declaration.Define define ? define.name() : null;
        return Optional.ofNullable(name).map(Name::text);
    }

    /** Whether an observation or a derived value has this name. */
    boolean hasValue(String key) {
        return observations.containsKey(key) || lets.containsKey(key);
    }

    /**
     * Whether it was declared, but not in a way that can be understood, or may have been declared in a part of the text
     * that is lost; its users have nothing to be blamed for.
     */
    boolean isBroken(String name) {
        return broken.contains(name) || text.damage().mayDeclare(name);
    }

    boolean isHurtAnywhere() {
        return !text.damage().isNone();
    }

    /** Whether something is lost before the first declaration, where a procedure's name stands. */
    boolean isHurtBeforeAnything() {
        int first = text.declarations().isEmpty()
                ? text.source().text().length()
                : text.declarations().get(0).span().start();
        return text.damage().mentions("procedure")
                || problems.isHurt(text.source().span(0, first));
    }

    /** Whether nothing more was looked at, since it is too much. */
    boolean isTooLarge() {
        return tooLarge;
    }

    /** Whether nothing is declared, since there is no procedure: an expression stands by itself. */
    boolean isEmpty() {
        return first == null;
    }

    boolean hasLoops() {
        return !variables.isEmpty();
    }

    boolean hasAnyCheck() {
        return anyCheck;
    }

    /** Whether it is no procedure, but declarations for others to use. */
    boolean isPart() {
        return header == null
                && !anyCheck
                && release == null
                && rehearsals.isEmpty()
                && first != null
                && text.damage().isNone();
    }

    /** The first that it says of itself, behind the language it is written in. */
    Span firstSpan() {
        return Objects.requireNonNull(first);
    }

    /** Whether this stands in a file that was used. What such a file declares is for all its users, and each uses some of it. */
    boolean isInPart(Span span) {
        return span.source() != text.source();
    }

    /** Where a name was declared, for pointing at. */
    @Nullable
    Name declaration(String key) {
        return firsts.get(key);
    }
}

package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.message.NameDiagnostics;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Name;
import io.github.leafproof.dsl.syntax.Target;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What each name stands for: slots for observations, facts and derived values; functions ready to be applied. */
final class Names {

    /** Values that refer to later values are understood by way of each other; so many steps are enough for anybody. */
    private static final int MOST_STEPS = 20;

    /** A function understood. */
    record Function(List<Type> parameters, List<String> names, Typed body) {}

    private final Problems problems;
    private final Outline outline;
    private final TypeReader types;
    private final CardFacts cardFacts;
    private final Expressions expressions;

    private final Map<String, Typed> observations = new HashMap<>();
    private final Map<String, Node.Fact> facts = new LinkedHashMap<>();
    private final Map<String, Typed> derivedTypes = new HashMap<>();
    private final List<Node.Derived> derived = new ArrayList<>();
    private final Map<String, Function> functions = new HashMap<>();
    private final Set<String> hopeless = new HashSet<>();
    private final List<String> underway = new ArrayList<>();
    private final Set<String> used = new HashSet<>();
    private final Sizes sizes = new Sizes();
    private boolean tooManySteps;
    private boolean tooMuch;
    private int slots;

    Names(Problems problems, Outline outline, TypeReader types) {
        this.problems = problems;
        this.outline = outline;
        this.types = types;
        this.cardFacts = new CardFacts(problems, outline, types);
        this.expressions = new Expressions(problems, this);
    }

    CardFacts cardFacts() {
        return cardFacts;
    }

    Expressions expressions() {
        return expressions;
    }

    List<Node.Fact> facts() {
        return List.copyOf(facts.values());
    }

    /** Derived values, each after all that it reads. */
    List<Node.Derived> derived() {
        return List.copyOf(derived);
    }

    /** How many slots there are so far. */
    int slots() {
        return slots;
    }

    /** Whether a place stands in the file that the procedure's heading stands in, and not in one that it brings in. */
    boolean isInMainFile(Span span) {
        Declaration.Header header = outline.header;
        return header == null || header.span().source() == span.source();
    }

    /** Whether a value of that name is declared somewhere. */
    boolean isDeclared(String key) {
        return outline.declaration(key) != null;
    }

    boolean isUsed(String key) {
        return used.contains(key);
    }

    /** Gives an observation its slot; returns the slot's number, or −1 where its type makes no sense. */
    int observe(String key, Declaration.Observe observe) {
        Type type = types.read(observe.type());
        if (type == null || problems.isHurt(observe.type().span())) {
            hopeless.add(key);
            return -1;
        }
        observations.put(key, new Typed(new Slot(slots, key), type));
        return slots++;
    }

    Type observedType(String key) {
        Typed typed = observations.get(key);
        if (typed == null) {
            throw new IllegalStateException("not observed: " + key);
        }
        return typed.type();
    }

    /** The fact of the engine of that name. */
    Formula fact(String path, Type type) {
        Node.Fact fact = facts.computeIfAbsent(path, name -> new Node.Fact(slots++, "engine." + name, type));
        return new Slot(fact.slot(), fact.name());
    }

    /** What a name stands for, or null after saying that nothing does. */
    @Nullable
    Typed value(Target target, Env env) {
        String key = env.key(target);
        used.add(key);
        Typed observed = observations.get(key);
        if (observed != null) {
            return observed;
        }
        Item<Declaration.Let> let = outline.lets.get(key);
        if (let != null) {
            return derived(key, let);
        }
        if (!hopeless.contains(key) && !outline.isBroken(target.name().text())) {
            problems.add(unknown(target, key, env));
        }
        return null;
    }

    private Diagnostic unknown(Target target, String key, Env env) {
        String name = target.name().text();
        if (outline.checks.containsKey(key)) {
            return NameDiagnostics.checkIsNoValue(target.span(), key);
        }
        if (outline.functions.containsKey(key) || Builtin.names().contains(key)) {
            return NameDiagnostics.functionIsNoValue(target.span(), key);
        }
        if (!target.indexes().isEmpty() && outline.hasValue(name)) {
            return NameDiagnostics.indexTooMany(target);
        }
        Collection<String> near = problems.near(keys(env));
        List<String> rounds =
                near.stream().filter(known -> known.startsWith(name + "[")).toList();
        if (!rounds.isEmpty()) {
            return NameDiagnostics.wrongIndex(target, rounds);
        }
        return outline.isEmpty()
                ? NameDiagnostics.notGivenBefore(target.span(), key, near)
                : NameDiagnostics.unknown(target.span(), key, near);
    }

    /** Every name that has a value; none when there are so many problems that nobody needs to know. */
    private List<String> keys(Env env) {
        if (problems.near(List.of("")).isEmpty()) {
            return List.of();
        }
        List<String> keys = new ArrayList<>(env.parameters().keySet());
        keys.addAll(outline.observations.keySet());
        keys.addAll(outline.lets.keySet());
        return keys;
    }

    private @Nullable Typed derived(String key, Item<Declaration.Let> let) {
        Typed known = derivedTypes.get(key);
        if (known != null || hopeless.contains(key)) {
            return known;
        }
        Name name = let.declaration().target().name();
        if (isCircle(key, name.span())) {
            return null;
        }
        underway.add(key);
        Typed value = expressions.value(let.declaration().value(), let.env(), null);
        underway.remove(underway.size() - 1);
        if (value == null || problems.isHurt(let.declaration().span())) {
            hopeless.add(key);
            return null;
        }
        Node.Derived node = new Node.Derived(slots++, key, value.type(), value.formula());
        derived.add(node);
        Typed typed = new Typed(new Slot(node.slot(), key), value.type());
        derivedTypes.put(key, typed);
        return typed;
    }

    /** Says so when a name stands for something that is made of itself, or by way of too many others. */
    private boolean isCircle(String key, Span span) {
        int first = underway.indexOf(key);
        if (first >= 0) {
            List<String> path = new ArrayList<>(underway.subList(first, underway.size()));
            path.add(key);
            problems.add(StructureDiagnostics.valueCircle(span, path));
            return true;
        }
        if (underway.size() < MOST_STEPS && !expressions.isDeep()) {
            return false;
        }
        if (!tooManySteps) {
            // The rest of a long chain is too long as well, and said with it.
            problems.add(StructureDiagnostics.tooManySteps(span, MOST_STEPS));
            tooManySteps = true;
        }
        return true;
    }

    /** How much each function comes to. */
    Sizes sizes() {
        return sizes;
    }

    /** Understands every derived value and every function, also those that nothing reads: they may hold mistakes too. */
    void deriveAll() {
        outline.lets.forEach(this::derived);
        outline.functions.values().forEach(this::function);
    }

    @Nullable
    Function function(Declaration.Define define) {
        String key = define.name().text();
        Function known = functions.get(key);
        if (known != null || hopeless.contains(key)) {
            return known;
        }
        if (isCircle(key, define.name().span())) {
            return null;
        }
        Map<String, Env.Parameter> parameters = new LinkedHashMap<>();
        List<String> parameterNames = new ArrayList<>();
        List<Type> parameterTypes = new ArrayList<>();
        for (Declaration.Parameter parameter : define.parameters()) {
            Type type = types.read(parameter.type());
            if (type != null) {
                if (parameters.containsKey(parameter.name().text())) {
                    problems.add(NameDiagnostics.optionTwice(
                            parameter.name().span(), parameter.name().text()));
                } else if (outline.hasValue(parameter.name().text())) {
                    problems.add(NameDiagnostics.hidden(parameter.name(), "a value of this procedure"));
                }
                parameterNames.add(parameter.name().text());
                parameters.put(parameter.name().text(), new Env.Parameter(parameterTypes.size(), type));
                parameterTypes.add(type);
            }
        }
        boolean allTyped = parameterTypes.size() == define.parameters().size();
        underway.add(key);
        Typed body = allTyped ? expressions.value(define.body(), new Env(Map.of(), parameters), null) : null;
        underway.remove(underway.size() - 1);
        if (body != null && sizes.isTooMuch(body.formula())) {
            problems.add(
                    StructureDiagnostics.functionTooLarge(define.name().span(), Sizes.MOST_FORMULAS, Sizes.DEEPEST));
            body = null;
        }
        if (body == null || problems.isHurt(define.span())) {
            hopeless.add(key);
            return null;
        }
        Function function = new Function(parameterTypes, parameterNames, body);
        functions.put(key, function);
        return function;
    }

    /** The function that a call means, or null after saying that there is none. */
    @Nullable
    Function function(Expression.Call call) {
        Declaration.Define define = outline.functions.get(call.function().text());
        if (define == null && outline.isBroken(call.function().text())) {
            return null;
        }
        if (define == null) {
            List<String> known = new ArrayList<>(problems.near(outline.functions.keySet()));
            known.addAll(Builtin.names());
            problems.add(NameDiagnostics.unknownFunction(
                    call.function().span(), call.function().text(), known));
            return null;
        }
        used.add(define.name().text());
        Function function = function(define);
        if (function != null && sizes.isTooMuchInAll(function.body().formula())) {
            if (!tooMuch) {
                problems.add(StructureDiagnostics.tooMuchInAll(call.span(), Sizes.MOST_IN_ALL));
                tooMuch = true;
            }
            return null;
        }
        return function;
    }
}

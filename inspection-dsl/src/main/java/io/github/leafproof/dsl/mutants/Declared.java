package io.github.leafproof.dsl.mutants;

import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.ProcedureText;
import io.github.leafproof.dsl.syntax.TypeWords;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a procedure declares, by its name without the indexes of loops, and which of it has a say in what is decided. */
final class Declared {

    /** What is computed of repeated readings is uncertain by their scatter, whatever they are read with. */
    private static final Set<String> SCATTERING = Set.of("mean", "spread", "slope");

    private final Map<String, Declaration> byName = new HashMap<>();
    private final Set<String> counters = new HashSet<>();
    private final Set<String> deciding = new HashSet<>();

    private Declared() {}

    static Declared of(ProcedureText text) {
        Declared declared = new Declared();
        declared.take(text.declarations());
        declared.reach(text.declarations());
        return declared;
    }

    private void take(List<Declaration> declarations) {
        for (Declaration declaration : declarations) {
            nameOf(declaration).ifPresent(name -> byName.put(name, declaration));
            if (declaration instanceof Declaration.Gauge gauge && gauge.kind() == Declaration.GaugeWords.COUNTER) {
                counters.add(gauge.name().text());
            }
            take(bodyOf(declaration));
        }
    }

    /** What stands within a declaration. */
    static List<Declaration> bodyOf(Declaration declaration) {
        return declaration instanceof Declaration.Stage stage
                ? stage.body()
                : declaration instanceof Declaration.For loop ? loop.body() : List.of();
    }

    private static Optional<String> nameOf(Declaration declaration) {
        if (declaration instanceof Declaration.Observe observe) {
            return Optional.of(observe.target().name().text());
        } else if (declaration instanceof Declaration.Let let) {
            return Optional.of(let.target().name().text());
        }
        return declaration instanceof Declaration.Define define
                ? Optional.of(define.name().text())
                : Optional.empty();
    }

    /** From what checks require, and from when checks and observations apply, to all values on the way. */
    private void reach(List<Declaration> declarations) {
        Deque<Expression> open = new ArrayDeque<>();
        seed(declarations, open);
        while (!open.isEmpty()) {
            Expression expression = open.pop();
            open.addAll(Parts.of(expression));
            String name = expression instanceof Expression.Reference reference
                    ? reference.target().name().text()
                    : expression instanceof Expression.Call call
                            ? call.function().text()
                            : "";
            if (deciding.add(name)) {
                Declaration declaration = byName.get(name);
                if (declaration instanceof Declaration.Let let) {
                    open.push(let.value());
                } else if (declaration instanceof Declaration.Define define) {
                    open.push(define.body());
                }
            }
        }
    }

    private static void seed(List<Declaration> declarations, Deque<Expression> open) {
        for (Declaration declaration : declarations) {
            if (declaration instanceof Declaration.Check check) {
                open.addAll(check.requirements());
                Stream.ofNullable(check.when()).forEach(open::push);
            } else if (declaration instanceof Declaration.Observe observe) {
                Stream.ofNullable(observe.when()).forEach(open::push);
            }
            seed(bodyOf(declaration), open);
        }
    }

    /** Whether an outcome may hang on the value or function of this name. */
    boolean decides(String name) {
        return deciding.contains(name);
    }

    /**
     * Whether a value is known exactly, so that it can lie on a limit to the last digit: it is counted or stated, and nothing
     * on the way is read from an instrument or felt with leaves.
     */
    boolean isExact(Expression value) {
        return isExact(value, new HashSet<>());
    }

    private boolean isExact(Expression value, Set<String> seen) {
        if (value instanceof Expression.Call call && call.function().text().equals("count")) {
            return true;
        }
        if (value instanceof Expression.Uncertain
                || (value instanceof Expression.Call call
                        && SCATTERING.contains(call.function().text()))) {
            return false;
        }
        String name = value instanceof Expression.Reference reference
                ? reference.target().name().text()
                : value instanceof Expression.Call call ? call.function().text() : "";
        if (!name.isEmpty() && seen.add(name) && !isExact(byName.get(name), seen)) {
            return false;
        }
        return Parts.of(value).stream().allMatch(part -> isExact(part, seen));
    }

    private boolean isExact(@Nullable Declaration declaration, Set<String> seen) {
        if (declaration instanceof Declaration.Observe observe) {
            boolean gap = observe.type() instanceof TypeWords.Named named
                    && named.words().equals("gap");
            return !gap
                    && (observe.gauge() == null
                            || counters.contains(observe.gauge().text()));
        } else if (declaration instanceof Declaration.Let let) {
            return isExact(let.value(), seen);
        }
        return !(declaration instanceof Declaration.Define define) || isExact(define.body(), seen);
    }
}

package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.syntax.Name;
import io.github.leafproof.dsl.syntax.Target;
import java.util.HashMap;
import java.util.Map;

/** The names that count only where one stands: variables of the loops around, and parameters of the function. */
record Env(Map<String, LoopValue> loops, Map<String, Parameter> parameters) {

    static final Env TOP = new Env(Map.of(), Map.of());

    Env {
        loops = Map.copyOf(loops);
        parameters = Map.copyOf(parameters);
    }

    /** The value that a loop's variable has in this round. */
    record LoopValue(Type.Choice values, int round) {
        String word() {
            return values.options().get(round);
        }
    }

    /** A parameter, and its place among the arguments. */
    record Parameter(int number, Type type) {}

    Env with(String variable, LoopValue value) {
        Map<String, LoopValue> more = new HashMap<>(loops);
        more.put(variable, value);
        return new Env(more, parameters);
    }

    /** The name with the rounds of its loops written in: {@code lash[intake]}. */
    String key(Target target) {
        if (target.indexes().isEmpty()) {
            return target.name().text();
        }
        StringBuilder key = new StringBuilder(target.name().text());
        for (Name index : target.indexes()) {
            LoopValue value = loops.get(index.text());
            key.append('[').append(value == null ? index.text() : value.word()).append(']');
        }
        return key.toString();
    }
}

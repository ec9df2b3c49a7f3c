package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Computed;
import io.github.leafproof.dsl.formula.Range;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What is known of the numbers that the language's functions yield; of those not named here, any number may come. */
final class BuiltinRanges {

    private static final Map<String, Function<List<Range>, Range>> RANGES = Map.of(
            "min", Range::least,
            "max", Range::greatest,
            "abs", given -> given.get(0).absolute(),
            "sqrt", given -> given.get(0).root(),
            "sin", given -> new Range(-1, 1),
            "cos", given -> new Range(-1, 1));

    private BuiltinRanges() {}

    /** The rule of a function, with the ranges of its results. */
    static Computed.Rule known(Builtin function) {
        Function<List<Range>, Range> ranges = RANGES.get(function.word());
        return ranges == null ? function.rule() : Computed.Rule.ranging(function.rule(), ranges);
    }
}

package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Formula;
import java.util.IdentityHashMap;

/**
 * How much a function comes to, with all the functions that it applies: each that applies another twice doubles it, so
 * that forty lines could keep a bench waiting for years.
 */
final class Sizes {

    /** How many formulas a function may come to, so that judging stays quick. */
    static final int MOST_FORMULAS = 100_000;

    /** How deep they may stand in each other, so that judging stays within the stack. */
    static final int DEEPEST = 200;

    /** How many formulas all applications together may come to: judging them takes a few seconds. */
    static final int MOST_IN_ALL = 20_000_000;

    private record Size(long formulas, int depth) {}

    /** Of the bodies of functions, each measured once. */
    private final IdentityHashMap<Formula, Size> bodies = new IdentityHashMap<>();

    private long applied;

    /** Whether a body is more than can be judged quickly; functions that it applies were asked about before. */
    boolean isTooMuch(Formula body) {
        Size size = of(body);
        bodies.put(body, size);
        return size.formulas > MOST_FORMULAS || size.depth > DEEPEST;
    }

    /** Counts an application of a measured body; says whether all of them together are now more than is bearable. */
    boolean isTooMuchInAll(Formula body) {
        applied += of(body).formulas;
        return applied > MOST_IN_ALL;
    }

    /** How many formulas one comes to, with the bodies of the functions that it applies. */
    long formulas(Formula formula) {
        return of(formula).formulas;
    }

    private Size of(Formula formula) {
        Size known = bodies.get(formula);
        if (known != null) {
            return known;
        }
        long formulas = 1;
        int depth = 0;
        for (Formula part : formula.parts()) {
            Size size = of(part);
            formulas += size.formulas;
            depth = Math.max(depth, size.depth);
        }
        return new Size(formulas, depth + 1);
    }
}

package io.github.leafproof.dsl.parse;

import org.antlr.v4.runtime.misc.IntervalSet;

/**
 * A set of words that answers at once whether one is in it: the passes before the grammar ask that of every word of a text,
 * several times.
 */
final class KeywordSet extends IntervalSet {

    private final boolean[] in;

    private KeywordSet(IntervalSet words) {
        super(words);
        setReadonly(true);
        in = new boolean[words.isNil() ? 0 : words.getMaxElement() + 1];
        words.toList().stream().filter(type -> type >= 0).forEach(type -> in[type] = true);
    }

    static KeywordSet of(IntervalSet words) {
        return new KeywordSet(words);
    }

    @Override
    public boolean contains(int type) {
        return type >= 0 && type < in.length && in[type];
    }
}

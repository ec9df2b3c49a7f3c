package io.github.leafproof.examples.speed;

/**
 * An engine for rules, with the rules of the common work made ready.
 *
 * @param <I> what it judges: the findings at one engine in the form that suits it best
 */
public interface Contestant<I> {

    /** The findings in its own form. Nobody times this. */
    I bound(Look look);

    /** Judges. This is timed. */
    void judge(I look, Verdicts into);

    /** Judges one engine from the start. */
    default Verdicts judged(Look look) {
        Verdicts verdicts = new Verdicts();
        judge(bound(look), verdicts);
        return verdicts;
    }
}

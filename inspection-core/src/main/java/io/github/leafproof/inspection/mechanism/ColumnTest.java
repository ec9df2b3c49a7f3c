package io.github.leafproof.inspection.mechanism;

/**
 * Siphon or leak: what a fuel column tells in two positions of the tank. With the needle open and the tank below the jet
 * a column falls back by nature; only one that falls with the tank level, or with the needle shut, leaks (common
 * practice).
 */
public enum ColumnTest {
    /** It stands in both positions: nothing leaks. */
    TIGHT,
    /** It falls only with the needle open and the tank low: as it must. */
    SIPHON,
    /** It falls with the needle shut: a fitting, the tube or the needle's seal lets air in. */
    LEAK,
    /** It stands with the needle shut, and falls with the tank level: the leak is behind the needle. */
    LEAK_BEHIND_NEEDLE;

    /**
     * What three looks at the column tell.
     *
     * @param fallsShut whether it fell with the needle shut and the tank low
     * @param fallsLevel whether it fell with the needle open and the tank level with the jet
     * @param fallsLow whether it fell with the needle open and the tank below the jet
     */
    public static ColumnTest of(boolean fallsShut, boolean fallsLevel, boolean fallsLow) {
        if (fallsShut) {
            return LEAK;
        }
        if (fallsLevel) {
            return LEAK_BEHIND_NEEDLE;
        }
        return fallsLow ? SIPHON : TIGHT;
    }
}

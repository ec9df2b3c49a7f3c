package io.github.leafproof.inspection.verdict;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;

/**
 * How long a value that goes on changing as it did is sure to stay short of a limit.
 *
 * <p>With m the distance to the limit now and c what is lost of it in a unit of time, the distance after a time t is m − c·t.
 * Both are uncertain, and what they share is remembered: the last reading is in both. The value is sure to be short of the
 * limit, with the confidence asked for, as long as m − c·t is no less than k·u(m − c·t), with k the quantile of the normal
 * law, or of Student's t where readings were few. For independent m and c without end of freedom, the time at which it
 * stops is the lower end of Fieller's interval for m/c (Fieller 1954, from memory).
 */
public final class Outlook {
    private static final int HALVINGS = 60;

    private Outlook() {}

    /**
     * The time until which the value is sure to be short of the limit.
     *
     * @param distance how far inside of the limit it is now; below zero beyond it
     * @param closing how much of that is lost in a unit of time; below zero where the value moves away from the limit
     * @param confidence how sure, from one half to below one
     * @param longest the longest time that is of interest, above zero
     * @return in the unit that {@code closing} is per; zero where it is not even sure now, {@code longest} where it is sure all
     *     that time
     */
    public static double surelyShortFor(Estimate distance, Estimate closing, double confidence, double longest) {
        Forecast forecast = new Forecast(distance, closing, confidence);
        if (!forecast.isSureAfter(0)) {
            return 0;
        }
        // The margin over the uncertainty is a concave function of time: once it is gone, it does not come back.
        if (forecast.isSureAfter(longest)) {
            return longest;
        }
        double sure = 0;
        double unsure = longest;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (sure + unsure) / 2;
            if (forecast.isSureAfter(middle)) {
                sure = middle;
            } else {
                unsure = middle;
            }
        }
        return sure;
    }

    private record Forecast(Estimate distance, Estimate closing, double confidence) {

        boolean isSureAfter(double time) {
            Dimension of = distance.dimension().dividedBy(closing.dimension());
            Estimate then = distance.minus(closing.times(Estimate.exact(time, of)));
            double u = then.standardUncertainty();
            return u == 0
                    ? then.value() > 0
                    : then.value() >= u * Coverage.quantile(confidence, then.degreesOfFreedom());
        }
    }
}

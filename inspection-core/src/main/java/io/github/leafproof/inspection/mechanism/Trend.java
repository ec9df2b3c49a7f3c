package io.github.leafproof.inspection.mechanism;

import io.github.leafproof.inspection.mechanism.Answer.Known;
import io.github.leafproof.inspection.mechanism.Answer.Refusal;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Source;
import java.util.List;

/**
 * Whether something has settled: the slope of readings over runs or hours, with what their scatter leaves open of it.
 *
 * <p>Ordinary least squares; the slope's standard uncertainty is that of the residuals, with n − 2 degrees of freedom, so
 * that whoever judges the slope against a limit does so by Student's t. What all readings share, such as the tacho's
 * calibration, does not move a slope and is rightly left out.
 */
public final class Trend {
    private static final int FEWEST = 3;

    private Trend() {}

    /**
     * The slope: how much the reading changes with each unit of what it is followed over.
     *
     * @param over runs, or running hours, one for each reading, exact
     * @param readings what was read, such as the peak speed or the cold lash
     * @param name what the scatter is called as a source of uncertainty; no other series may have the name
     */
    public static Answer slope(List<Estimate> over, List<Estimate> readings, String name) {
        if (over.size() != readings.size()) {
            throw new IllegalArgumentException(over.size() + " places for " + readings.size() + " readings");
        }
        if (readings.size() < FEWEST) {
            return new Refusal(
                    "slope",
                    "readings",
                    "the readings are " + readings.size() + " and must be at least " + FEWEST
                            + ", or nothing is left to tell their scatter from");
        }
        double[] x = over.stream().mapToDouble(Estimate::value).toArray();
        double[] y = readings.stream().mapToDouble(Estimate::value).toArray();
        double meanX = mean(x);
        double meanY = mean(y);
        double spread = 0;
        double together = 0;
        for (int i = 0; i < x.length; i++) {
            spread += (x[i] - meanX) * (x[i] - meanX);
            together += (x[i] - meanX) * (y[i] - meanY);
        }
        if (spread == 0) {
            return new Refusal(
                    "slope", "over", "all readings were taken at one and the same place, which has no slope");
        }
        double slope = together / spread;
        double left = 0;
        for (int i = 0; i < x.length; i++) {
            double residual = y[i] - meanY - slope * (x[i] - meanX);
            left += residual * residual;
        }
        int freedom = x.length - 2;
        return new Known(Estimate.of(
                slope,
                readings.get(0).dimension().difference().dividedBy(over.get(0).dimension()),
                Math.sqrt(left / freedom / spread),
                new Source(name, freedom)));
    }

    /**
     * The slope of amounts that are each as uncertain as their gauges leave them: what {@link #slope} finds, and on top of the
     * scatter what the gauges may have been off. What two readings share cancels as far as it does in a slope. Where the
     * gauges explain the scatter it is counted twice, on the safe side.
     *
     * @param over running hours, one for each reading, exact
     * @param readings what was read, such as the cold lash
     * @param name what the scatter is called as a source of uncertainty; no other series may have the name
     */
    public static Answer slopeOfMeasured(List<Estimate> over, List<Estimate> readings, String name) {
        Answer scattered = slope(over, readings, name);
        if (scattered instanceof Refusal) {
            return scattered;
        }
        Estimate first = readings.get(0);
        double middle = mean(over.stream().mapToDouble(Estimate::value).toArray());
        double spread = over.stream()
                .mapToDouble(x -> (x.value() - middle) * (x.value() - middle))
                .sum();
        Estimate slope = Estimate.exact(0, scattered.known().dimension());
        for (int i = 0; i < over.size(); i++) {
            Estimate share = Estimate.exact(
                    (over.get(i).value() - middle) / spread,
                    Dimension.RATIO.dividedBy(over.get(i).dimension()));
            slope = slope.plus(readings.get(i).minus(first).times(share));
        }
        double scatter = scattered.known().standardUncertainty();
        return new Known(
                scatter == 0 ? slope : slope.withIndependent(scatter, new Source(name, readings.size() - 2.0)));
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value - values[0];
        }
        return values[0] + sum / values.length;
    }
}

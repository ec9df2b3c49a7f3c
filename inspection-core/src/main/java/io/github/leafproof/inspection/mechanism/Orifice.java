package io.github.leafproof.inspection.mechanism;

/** Air through a hole without losses: the isentropic nozzle equation, all in coherent SI units and absolute pressures. */
final class Orifice {
    private static final double GAMMA = 1.4;
    private static final double CRITICAL = Math.pow(2 / (GAMMA + 1), GAMMA / (GAMMA - 1));

    /** An even number; with this many the sum is right to six digits wherever it is tested. */
    private static final int STEPS = 32;

    private Orifice() {}

    /** Flow by mass, in kg/s. */
    static double flow(double diameter, double upstream, double downstream, double temperature) {
        if (upstream == 0) {
            return 0;
        }
        double area = Math.PI / 4 * diameter * diameter;
        return area * upstream * coefficient(downstream / upstream) / Math.sqrt(Air.GAS_CONSTANT * temperature);
    }

    private static double coefficient(double ratio) {
        double held = Math.max(ratio, CRITICAL);
        double squared = 2 * GAMMA / (GAMMA - 1) * (Math.pow(held, 2 / GAMMA) - Math.pow(held, (GAMMA + 1) / GAMMA));
        return ratio > 1 ? Double.NaN : Math.sqrt(Math.max(0, squared));
    }

    /** The area of a second hole, over that of the first, that passes what the first lets in. */
    static double fluxRatio(double supply, double between, double outside) {
        return supply * coefficient(between / supply) / (between * coefficient(outside / between));
    }

    /**
     * The time to fall from one pressure to another. While the hole is choked the flow goes with the pressure, which has a
     * closed form; below, it is summed by Simpson's rule. There the pressure is counted as the root of its excess over the
     * air around, over which the flow falls evenly to nothing, and the sum has no pole.
     */
    static double emptying(
            double volume, double before, double after, double around, double diameter, double temperature) {
        double choked = around / CRITICAL;
        double perPressure = volume / (Air.GAS_CONSTANT * temperature);
        double freely =
                before > choked ? Math.log(before / Math.max(after, choked)) / flow(diameter, 1, 0, temperature) : 0;
        double slowly = after < choked ? summed(Math.min(before, choked), after, around, diameter, temperature) : 0;
        return perPressure * (freely + slowly);
    }

    private static double summed(double before, double after, double around, double diameter, double temperature) {
        double from = Math.sqrt(after - around);
        double step = (Math.sqrt(before - around) - from) / STEPS;
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            double excess = from + i * step;
            int weight = i == 0 || i == STEPS ? 1 : 2 + 2 * (i % 2);
            sum += weight * 2 * excess / flow(diameter, around + excess * excess, around, temperature);
        }
        return sum * step / 3;
    }
}

package io.github.leafproof.inspection.mechanism;

/**
 * Air with water vapour in it, by the CIPM-2007 formula; coefficients from public transcriptions of the paper.
 *
 * @param temperature in K
 * @param pressure in Pa
 * @param vapour the share of its molecules that are water
 */
record MoistAir(double temperature, double pressure, double vapour) {
    private static final double R = 8.314472;
    /** Of dry air with 0.04 % carbon dioxide, in kg/mol. */
    private static final double MOLAR_MASS = 28.96546e-3;

    private static final double MOLAR_MASS_OF_WATER = 18.01528e-3;

    static MoistAir of(double temperature, double pressure, double humidity) {
        double t = temperature - Air.CELSIUS_ZERO;
        double enhancement = 1.00062 + 3.14e-8 * pressure + 5.6e-7 * t * t;
        return new MoistAir(temperature, pressure, humidity * enhancement * saturation(temperature) / pressure);
    }

    /** The pressure of water vapour in saturated air, in Pa. */
    static double saturation(double temperature) {
        return Math.exp(1.2378847e-5 * temperature * temperature
                - 1.9121316e-2 * temperature
                + 33.93711047
                - 6.3431645e3 / temperature);
    }

    double density() {
        return amount() * (MOLAR_MASS + vapour * (MOLAR_MASS_OF_WATER - MOLAR_MASS));
    }

    double dryDensity() {
        return amount() * MOLAR_MASS * (1 - vapour);
    }

    /** Molecules of any kind, in mol/m³. */
    private double amount() {
        return pressure / (compressibility() * R * temperature);
    }

    private double compressibility() {
        double t = temperature - Air.CELSIUS_ZERO;
        double perKelvin = pressure / temperature;
        double first = 1.58123e-6
                - 2.9331e-8 * t
                + 1.1043e-10 * t * t
                + (5.707e-6 - 2.051e-8 * t) * vapour
                + (1.9898e-4 - 2.376e-6 * t) * vapour * vapour;
        double second = 1.83e-11 - 0.765e-8 * vapour * vapour;
        return 1 - perKelvin * first + perKelvin * perKelvin * second;
    }
}

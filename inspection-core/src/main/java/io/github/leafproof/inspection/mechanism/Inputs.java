package io.github.leafproof.inspection.mechanism;

/** What several calculations take, so that the same thing has the same name, meaning and range everywhere. */
final class Inputs {
    private static final String ENGINE = "no part of an engine that a hand can turn is of such a size";
    private static final String CYCLE = "a cycle is two turns of the crank";

    static final Input STROKE =
            Input.of("stroke", "the way of the piston from top to bottom", "0.1 mm", "2000 mm", ENGINE);
    static final Input BORE = Input.of("bore", "the cylinder's inner diameter", "0.1 mm", "2000 mm", ENGINE);
    static final Input ROD =
            Input.of("rod", "the connecting rod, from centre to centre of its eyes", "0.1 mm", "4000 mm", ENGINE);
    static final Input CRANK_ANGLE =
            Input.of("crank_angle", "the crank's angle from top dead centre", "-720 deg", "720 deg", CYCLE);
    static final Input SPEED = Input.of(
            "speed", "the crank's speed", "0 rpm", "100000 rpm", "no engine of this kind turns faster or backwards");
    static final Input DISPLACEMENT =
            Input.of("displacement", "the volume that the piston sweeps", "0.01 mL", "100000 mL", ENGINE);
    static final Input RATIO = Input.of(
            "compression_ratio",
            "the volume above the piston at the bottom, over that at the top",
            "1.01",
            "40",
            "an engine that draws in a mixture has such a ratio");
    static final Input PRESSURE = Input.of(
            "pressure",
            "the pressure of the air around, as a barometer shows it at the place (absolute)",
            "30 kPa",
            "120 kPa",
            "no barometer stands so where people run engines");
    static final Input TEMPERATURE =
            Input.of("temperature", "how warm the air is", "-60 °C", "60 °C", "air outdoors is never colder or warmer");
    static final Input FUEL_DENSITY = Input.of(
            "fuel_density",
            "the fuel's density",
            "600 kg/m³",
            "1300 kg/m³",
            "no fuel of these engines is so light or so heavy");
    static final Input AIR_DENSITY = Input.of(
            "air_density",
            "the density of the air",
            "0.3 kg/m³",
            "2 kg/m³",
            "air at the ground is not so thin or so thick");
    static final Input TIME =
            Input.of("time", "the time it took", "0.1 s", "1000 h", "nobody times so short or so long");
    static final Input RUN_TIME = TIME.called("run_time", "how long a run lasts");
    static final Input FLOW = Input.of(
            "flow",
            "how much fuel the engine takes",
            "0.1 mL/min",
            "10000 mL/min",
            "no engine of this kind takes so little or so much");
    static final Input EXPANSION = Input.of(
            "expansion",
            "by how much the metal grows with each kelvin, as a share of itself",
            "0 per K",
            "0.00004 per K",
            "no metal of an engine grows more, or shrinks when warmed");
    static final Input PART = Input.of("length", "how long the part is", "0.1 mm", "1000 mm", ENGINE);
    static final Input WARMING = Input.of(
            "warming",
            "how much warmer the part is; below zero for colder",
            "-100 K",
            "600 K",
            "no part of such an engine gets so cold or so hot");

    private Inputs() {}
}

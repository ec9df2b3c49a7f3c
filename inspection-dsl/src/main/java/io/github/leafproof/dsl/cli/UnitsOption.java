package io.github.leafproof.dsl.cli;

import io.github.leafproof.inspection.quantity.UnitSystem;
import picocli.CommandLine.Option;

/** The units to show numbers in: every command that shows any takes this. Numbers may be entered in either. */
final class UnitsOption {

    @Option(
            names = "--units",
            paramLabel = "metric|inch",
            description = "The units to show numbers in; metric if not given.",
            converter = UnitsWord.class)
    private UnitSystem units = UnitSystem.METRIC;

    UnitSystem units() {
        return units;
    }
}

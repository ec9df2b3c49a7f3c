package io.github.leafproof.dsl.cli;

import io.github.leafproof.inspection.quantity.UnitSystem;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads {@code metric} or {@code inch}. */
final class UnitsWord implements ITypeConverter<UnitSystem> {

    @Override
    public UnitSystem convert(String word) {
        return switch (word) {
            case "metric" -> UnitSystem.METRIC;
            case "inch" -> UnitSystem.INCH;
            default -> throw new TypeConversionException("it is metric or inch, not " + word);
        };
    }
}

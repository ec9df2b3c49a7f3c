package io.github.leafproof.inspection.mechanism;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Every calculation there is. */
public final class Mechanisms {
    /** The calculations on one subject. */
    public record Subject(String title, List<Mechanism> mechanisms) {
        public Subject {
            mechanisms = List.copyOf(mechanisms);
        }
    }

    private static final List<Subject> SUBJECTS = List.of(
            new Subject("Crank and slider", CrankSlider.ALL),
            new Subject("Cylinder", Cylinder.ALL),
            new Subject("Valve gear", ValveGear.ALL),
            new Subject("Heat", Thermal.ALL),
            new Subject("Tightness", Tightness.ALL),
            new Subject("Fits and threads", Fits.ALL),
            new Subject("Carburettor", Carburettor.ALL),
            new Subject("Fuel path", FuelPath.ALL),
            new Subject("Fuel", FuelMix.ALL),
            new Subject("Air", Air.ALL),
            new Subject("Propeller", Propeller.ALL),
            new Subject("Running in and tuning", Tuning.ALL));

    private static final List<Mechanism> ALL =
            SUBJECTS.stream().flatMap(subject -> subject.mechanisms().stream()).toList();

    private static final Map<String, Mechanism> NAMED =
            ALL.stream().collect(Collectors.toUnmodifiableMap(Mechanism::name, Function.identity()));

    private Mechanisms() {}

    /** By subject, in the order of the job. */
    public static List<Subject> subjects() {
        return SUBJECTS;
    }

    /** All of them, subject by subject. */
    public static List<Mechanism> all() {
        return ALL;
    }

    /** The one of this name. */
    public static Optional<Mechanism> named(String name) {
        return Optional.ofNullable(NAMED.get(name));
    }
}

package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Computed;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The functions of numbers that the language brings with it. */
enum Builtin {
    MIN(2) {
        @Override
        Optional<Dimension> dimension(List<Dimension> given) {
            return alike(given);
        }

        @Override
        Estimate of(List<Estimate> numbers) {
            return numbers.stream().reduce(Estimate::min).orElseThrow();
        }
    },
    MAX(2) {
        @Override
        Optional<Dimension> dimension(List<Dimension> given) {
            return alike(given);
        }

        @Override
        Estimate of(List<Estimate> numbers) {
            return numbers.stream().reduce(Estimate::max).orElseThrow();
        }
    },
    ABS(1) {
        @Override
        Optional<Dimension> dimension(List<Dimension> given) {
            return alike(given).filter(dimension -> !dimension.isAbsolute());
        }

        @Override
        Estimate of(List<Estimate> numbers) {
            return numbers.get(0).absolute();
        }
    },
    SQRT(1) {
        @Override
        Optional<Dimension> dimension(List<Dimension> given) {
            return given.get(0).root(2);
        }

        @Override
        Estimate of(List<Estimate> numbers) {
            return numbers.get(0).sqrt();
        }
    },
    SIN(1) {
        @Override
        Optional<Dimension> dimension(List<Dimension> given) {
            return ofAngle(given);
        }

        @Override
        Estimate of(List<Estimate> numbers) {
            Estimate angle = numbers.get(0);
            return angle.map(Math::sin, Math.cos(angle.value()), Dimension.RATIO);
        }
    },
    COS(1) {
        @Override
        Optional<Dimension> dimension(List<Dimension> given) {
            return ofAngle(given);
        }

        @Override
        Estimate of(List<Estimate> numbers) {
            Estimate angle = numbers.get(0);
            return angle.map(Math::cos, -Math.sin(angle.value()), Dimension.RATIO);
        }
    },
    TAN(1) {
        @Override
        Optional<Dimension> dimension(List<Dimension> given) {
            return ofAngle(given);
        }

        @Override
        Estimate of(List<Estimate> numbers) {
            Estimate angle = numbers.get(0);
            double cosine = Math.cos(angle.value());
            return angle.map(Math::tan, 1 / (cosine * cosine), Dimension.RATIO);
        }
    };

    private final int fewest;

    Builtin(int fewest) {
        this.fewest = fewest;
    }

    /** The dimension of the result, or empty where these dimensions make no sense. */
    abstract Optional<Dimension> dimension(List<Dimension> given);

    abstract Estimate of(List<Estimate> numbers);

    Computed.Rule rule() {
        return this::of;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether it takes so many arguments: those of two take any number from there. */
    boolean takes(int arguments) {
        return fewest == 1 ? arguments == 1 : arguments >= fewest;
    }

    String argumentWords() {
        return fewest == 1 ? "one value" : "two values or more";
    }

    static Optional<Builtin> named(String word) {
        return Arrays.stream(values()).filter(each -> each.word().equals(word)).findFirst();
    }

    /** Every function that the language brings, those that give advice too. */
    static List<String> names() {
        return Stream.concat(Arrays.stream(values()).map(Builtin::word), Stream.of("next_leaf", "adjuster_turn"))
                .toList();
    }

    private static Optional<Dimension> alike(List<Dimension> given) {
        return given.stream().allMatch(given.get(0)::equals) ? Optional.of(given.get(0)) : Optional.empty();
    }

    private static Optional<Dimension> ofAngle(List<Dimension> given) {
        return given.get(0).equals(Dimension.ANGLE) ? Optional.of(Dimension.RATIO) : Optional.empty();
    }
}

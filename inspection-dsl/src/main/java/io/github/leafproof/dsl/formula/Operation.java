package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import java.util.List;

/** What the language itself computes: each rule known by its kind, so that whoever compiles formulas knows what it does. */
public sealed interface Operation extends Computed.Rule {

    /** Numbers in a row, taken from left to right: {@code a + b - c}. */
    record InARow(List<Sign> signs) implements Operation {
        public InARow {
            signs = List.copyOf(signs);
        }

        /** Two numbers. */
        public static InARow of(Sign sign) {
            return new InARow(List.of(sign));
        }

        @Override
        public Estimate of(List<Estimate> numbers) {
            Estimate result = numbers.get(0);
            for (int i = 0; i < signs.size(); i++) {
                result = signs.get(i).of(result, numbers.get(i + 1));
            }
            return result;
        }

        @Override
        public Range range(List<Range> numbers) {
            Range result = numbers.get(0);
            for (int i = 0; i < signs.size(); i++) {
                result = signs.get(i).range(result, numbers.get(i + 1));
            }
            return result;
        }
    }

    /** What stands between two numbers in a row. */
    enum Sign {
        PLUS,
        MINUS,
        TIMES,
        DIVIDED_BY;

        private Estimate of(Estimate left, Estimate right) {
            return switch (this) {
                case PLUS -> left.plus(right);
                case MINUS -> left.minus(right);
                case TIMES -> left.times(right);
                case DIVIDED_BY -> left.dividedBy(right);
            };
        }

        private Range range(Range left, Range right) {
            return switch (this) {
                case PLUS -> left.plus(right);
                case MINUS -> left.plus(right.negated());
                case TIMES -> left.times(right);
                case DIVIDED_BY -> left.times(right.inverted());
            };
        }
    }

    /** The opposite of a number. */
    record Negated() implements Operation {
        @Override
        public Estimate of(List<Estimate> numbers) {
            return numbers.get(0).negated();
        }

        @Override
        public Range range(List<Range> numbers) {
            return numbers.get(0).negated();
        }
    }

    /** A whole power. */
    record Power(int exponent) implements Operation {
        @Override
        public Estimate of(List<Estimate> numbers) {
            return numbers.get(0).power(exponent);
        }

        @Override
        public Range range(List<Range> numbers) {
            return numbers.get(0).power(exponent);
        }
    }

    /**
     * A number with an uncertainty stated beside it.
     *
     * @param error nothing, and as uncertain as is stated
     * @param share whether it is stated as a share of the number
     */
    record Erring(Estimate error, boolean share) implements Operation {
        @Override
        public Estimate of(List<Estimate> numbers) {
            Estimate number = numbers.get(0);
            return number.plus(share ? number.times(error) : error);
        }
    }

    /** A function that every language of numbers has. */
    enum Function implements Operation {
        MIN,
        MAX,
        ABS,
        SQRT,
        SIN,
        COS,
        TAN;

        @Override
        public Estimate of(List<Estimate> numbers) {
            Estimate first = numbers.get(0);
            return switch (this) {
                case MIN -> numbers.stream().reduce(Estimate::min).orElseThrow();
                case MAX -> numbers.stream().reduce(Estimate::max).orElseThrow();
                case ABS -> first.absolute();
                case SQRT -> first.sqrt();
                case SIN -> sine(first);
                case COS -> cosine(first);
                case TAN -> sine(first).dividedBy(cosine(first));
            };
        }

        @Override
        public Range range(List<Range> numbers) {
            return switch (this) {
                case MIN -> Range.least(numbers);
                case MAX -> Range.greatest(numbers);
                case ABS -> numbers.get(0).absolute();
                case SQRT -> numbers.get(0).root();
                case SIN, COS -> new Range(-1, 1);
                case TAN -> Range.ANY;
            };
        }

        private static Estimate sine(Estimate angle) {
            return angle.map(Math::sin, Math.cos(angle.value()), Dimension.RATIO);
        }

        private static Estimate cosine(Estimate angle) {
            return angle.map(Math::cos, -Math.sin(angle.value()), Dimension.RATIO);
        }
    }
}

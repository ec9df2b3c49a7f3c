package io.github.leafproof.dsl.syntax;

import io.github.leafproof.dsl.source.Span;
import java.util.List;

/** The type of an observation, a fact or a parameter, as written. */
public sealed interface TypeWords {

    Span span();

    /** {@code length}, {@code length per turn}, {@code number}, {@code count}, {@code text}, {@code gap}, {@code items}, {@code date}. */
    record Named(String words, Span span) implements TypeWords {}

    /** {@code yes/no}. */
    record YesNo(Span span) implements TypeWords {}

    /** {@code one of dry, oiled}. */
    record OneOf(List<Expression.Option> options, Span span) implements TypeWords {
        public OneOf {
            options = List.copyOf(options);
        }
    }

    /** {@code grade none < soft < firm}: options in order, the lowest first. */
    record Grade(List<Expression.Option> options, Span span) implements TypeWords {
        public Grade {
            options = List.copyOf(options);
        }
    }

    /** {@code series of rotational speed}: repeated readings. */
    record Series(Named of, Span span) implements TypeWords {}
}

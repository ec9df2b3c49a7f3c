package io.github.leafproof.inspection.record;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What came of reading a file: its content, or all that is wrong with it.
 *
 * @param <T> what the file holds
 */
public sealed interface Read<T> {

    /** The content; empty when the file was refused. */
    Optional<T> value();

    /** All that was found: warnings beside a content, errors (and warnings) of a refused file, in the order of the file. */
    List<Problem> problems();

    /** The same with its content made into something else. */
    <R> Read<R> map(Function<? super T, ? extends R> change);

    /**
     * The content, for Java code that takes a sound file for granted.
     *
     * @throws RecordException when the file was refused; its message lists the problems
     */
    T orElseThrow();

    /**
     * The file could be used.
     *
     * @param content what it says
     * @param warnings what looks odd about it all the same
     */
    record Done<T>(T content, List<Problem> warnings) implements Read<T> {
        public Done {
            warnings = List.copyOf(warnings);
        }

        @Override
        public Optional<T> value() {
            return Optional.of(content);
        }

        @Override
        public List<Problem> problems() {
            return warnings;
        }

        @Override
        public <R> Read<R> map(Function<? super T, ? extends R> change) {
            return new Done<>(change.apply(content), warnings);
        }

        @Override
        public T orElseThrow() {
            return content;
        }
    }

    /**
     * The file cannot be used.
     *
     * @param problems why, at least one of them an error
     */
    record Refused<T>(List<Problem> problems) implements Read<T> {
        /** Refuses to refuse without a reason. */
        public Refused {
            problems = List.copyOf(problems);
            if (problems.stream().noneMatch(Problem::isError)) {
                throw new IllegalArgumentException("a file is refused for an error, and none was given");
            }
        }

        @Override
        public Optional<T> value() {
            return Optional.empty();
        }

        @Override
        public <R> Read<R> map(Function<? super T, ? extends R> change) {
            return new Refused<>(problems);
        }

        @Override
        public T orElseThrow() {
            throw new RecordException(problems);
        }
    }
}

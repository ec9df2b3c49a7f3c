package io.github.leafproof.dsl.figure;

import io.github.leafproof.dsl.figure.Course.Along;
import io.github.leafproof.dsl.figure.Course.Moment;
import io.github.leafproof.dsl.formula.Shown;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.Given;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Finds what was read more than once of one engine. */
public final class Courses {

    /** What one entry shows, or one reading of it. */
    private record Sight(double lowest, double highest, boolean adjusted, Entry entry, String words) {}

    private final UnitSystem units;
    private final List<Sight> sights = new ArrayList<>();
    private Dimension dimension = Dimension.LENGTH;
    private boolean adjusted = false;

    private Courses(UnitSystem units) {
        this.units = units;
    }

    /** The course of everything that has one, in the order of the procedure. */
    public static List<Course> of(Judgement judgement) {
        List<Course> courses = new ArrayList<>();
        for (Node.Observation observation : judgement.graph().observations()) {
            Optional<Course> course = of(judgement, observation);
            if (course.isEmpty()) {
                continue;
            }
            int before = indexContinuedBy(courses, course.get());
            if (before < 0) {
                courses.add(course.get());
            } else {
                courses.set(before, courses.get(before).and(course.get()));
            }
        }
        return List.copyOf(courses);
    }

    private static int indexContinuedBy(List<Course> courses, Course next) {
        for (int i = courses.size() - 1; i >= 0; i--) {
            if (courses.get(i).isContinuedBy(next)) {
                return i;
            }
        }
        return -1;
    }

    private static Optional<Course> of(Judgement judgement, Node.Observation observation) {
        Courses course = new Courses(judgement.units());
        judgement.evidence().statements(observation).stream()
                .filter(statement -> !statement.corrected())
                .forEach(course::take);
        if (course.sights.size() < 2) {
            return Optional.empty();
        }
        Value ask = observation.ask().value(judgement.frame());
        return Optional.of(course.named(observation.name(), ask instanceof Value.Words words ? words.text() : ""));
    }

    private void take(Evidence.Statement statement) {
        if (statement.entry().given() instanceof Given.Adjusted) {
            adjusted = true;
            return;
        }
        Value value = statement.value();
        if (value instanceof Value.Readings readings) {
            dimension = readings.series().dimension();
            for (Quantity reading : readings.series().readings()) {
                see(reading.base(), reading.base(), statement.entry(), reading.toString());
            }
        } else if (value instanceof Value.Amount amount) {
            Estimate estimate = amount.estimate();
            dimension = estimate.dimension();
            double u = 2 * estimate.standardUncertainty();
            see(estimate.value() - u, estimate.value() + u, statement.entry(), Shown.measured(amount, units));
        } else if (value instanceof Value.Felt felt) {
            double lowest = felt.evidence().atLeast().map(Estimate::value).orElse(0.0);
            double highest = felt.evidence().lessThan().map(Estimate::value).orElse(Double.POSITIVE_INFINITY);
            String words = felt.evidence().rangeWords(units);
            see(Math.min(lowest, highest), Math.max(lowest, highest), statement.entry(), words);
        }
    }

    private void see(double lowest, double highest, Entry entry, String words) {
        sights.add(new Sight(lowest, highest, adjusted, entry, words));
        adjusted = false;
    }

    private Course named(String name, String ask) {
        Along along = along();
        List<Moment> moments = new ArrayList<>();
        for (int i = 0; i < sights.size(); i++) {
            Sight sight = sights.get(i);
            double when = switch (along) {
                case READINGS -> i + 1;
                case RUNNING ->
                    Objects.requireNonNull(sight.entry.runningTime()).base();
                case CLOCK -> between(sights.get(0).entry, sight.entry);
            };
            moments.add(new Moment(when, sight.lowest, sight.highest, sight.adjusted, sight.words));
        }
        return new Course(name, ask, dimension, along, List.of(new Course.Part(name, "", moments)));
    }

    /** By running where each has a time of its own, else by the clock, else by their order. */
    private Along along() {
        if (eachLater(Entry::runningTime, (before, now) -> now.base() > before.base())) {
            return Along.RUNNING;
        }
        return eachLater(Entry::at, OffsetDateTime::isBefore) ? Along.CLOCK : Along.READINGS;
    }

    private <T> boolean eachLater(Function<Entry, @Nullable T> when, BiPredicate<T, T> isLater) {
        for (int i = 0; i < sights.size(); i++) {
            T now = when.apply(sights.get(i).entry);
            T before = i == 0 ? null : when.apply(sights.get(i - 1).entry);
            if (now == null || (before != null && !isLater.test(before, now))) {
                return false;
            }
        }
        return true;
    }

    private static double between(Entry first, Entry later) {
        return Duration.between(Objects.requireNonNull(first.at()), Objects.requireNonNull(later.at()))
                .toSeconds();
    }
}

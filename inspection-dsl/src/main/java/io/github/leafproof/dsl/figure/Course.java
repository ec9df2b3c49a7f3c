package io.github.leafproof.dsl.figure;

import io.github.leafproof.inspection.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * What was read of one thing more than once: repeated readings in their order, or entries at several times.
 *
 * @param name the observation's name; without its index where several are shown as one
 * @param ask what was asked, as the procedure says it
 * @param along what the moments stand along
 * @param parts one, or several of one name that follow each other
 */
public record Course(String name, String ask, Dimension dimension, Along along, List<Part> parts) {

    public Course {
        parts = List.copyOf(parts);
    }

    /** What moments stand along. */
    public enum Along {
        /** Their order, for nobody wrote down when. */
        READINGS,
        /** How long the engine had run in all, in seconds. */
        RUNNING,
        /** The time since the first of them, in seconds. */
        CLOCK
    }

    /**
     * The moments of one observation.
     *
     * @param observation its name
     * @param label what tells it from the other parts; empty where it is the only one
     * @param moments the earliest first
     */
    public record Part(String observation, String label, List<Moment> moments) {
        public Part {
            moments = List.copyOf(moments);
        }

        Part moved(double by, String newLabel) {
            return new Part(
                    observation,
                    newLabel,
                    moments.stream().map(each -> each.moved(by)).toList());
        }
    }

    /**
     * What was known once.
     *
     * @param when along what the course stands along
     * @param lowest the least it can be: of a reading, twice its standard uncertainty below it
     * @param highest the most; infinite where nothing has refused
     * @param adjusted whether it was adjusted since the moment before
     * @param words what was known, in words
     */
    public record Moment(double when, double lowest, double highest, boolean adjusted, String words) {

        Moment moved(double by) {
            return new Moment(when + by, lowest, highest, adjusted, words);
        }

        double middle() {
            return Double.isInfinite(highest) ? lowest : (lowest + highest) / 2;
        }
    }

    List<Moment> moments() {
        return parts.stream().flatMap(part -> part.moments().stream()).toList();
    }

    /** Whether the other goes on where this ends: readings of one kind, under one name with another index. */
    boolean isContinuedBy(Course other) {
        return along == Along.READINGS
                && other.along == Along.READINGS
                && dimension.equals(other.dimension)
                && !index(other.parts.get(0).observation).isEmpty()
                && base(parts.get(0).observation).equals(base(other.parts.get(0).observation));
    }

    /** Both as one. */
    Course and(Course other) {
        List<Part> all = new ArrayList<>();
        parts.forEach(part -> all.add(part.moved(0, index(part.observation))));
        Part next = other.parts.get(0);
        all.add(next.moved(moments().size(), index(next.observation)));
        return new Course(base(next.observation), ask, dimension, along, all);
    }

    private static String base(String name) {
        int bracket = name.indexOf('[');
        return bracket < 0 ? name : name.substring(0, bracket);
    }

    private static String index(String name) {
        return name.substring(base(name).length()).replaceAll("[\\[\\]]+", " ").strip();
    }
}

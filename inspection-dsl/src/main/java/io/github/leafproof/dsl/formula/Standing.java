package io.github.leafproof.dsl.formula;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;

/** How two values without uncertainty may stand to each other. */
public enum Standing implements BiPredicate<Value, Value> {
    /** The same option, words, or day. */
    SAME,
    /** Another one. */
    OTHER,
    /** As high a grade or a higher one; the day itself or a later one. */
    AT_LEAST,
    /** As high a grade or a lower one; the day itself or an earlier one. */
    AT_MOST,
    /** A lower grade; an earlier day. */
    LESS,
    /** A higher grade; a later day. */
    MORE,
    /** Of things found, all that are wanted. */
    HAS_ALL;

    /** Up to so many comparisons a plain search is done before a table to look into would be made. */
    private static final int FEW = 64;

    @Override
    public boolean test(Value subject, Value other) {
        return switch (this) {
            case SAME -> subject.equals(other);
            case OTHER -> !subject.equals(other);
            case AT_LEAST -> order(subject, other) >= 0;
            case AT_MOST -> order(subject, other) <= 0;
            case LESS -> order(subject, other) < 0;
            case MORE -> order(subject, other) > 0;
            case HAS_ALL -> hasAll(((Value.Things) subject).items(), ((Value.Things) other).items());
        };
    }

    private static int order(Value subject, Value other) {
        return subject instanceof Value.Day day
                ? day.day().compareTo(((Value.Day) other).day())
                : Integer.compare(((Value.Pick) subject).option(), ((Value.Pick) other).option());
    }

    private static boolean hasAll(List<String> found, List<String> wanted) {
        if ((long) found.size() * wanted.size() > FEW) {
            return new HashSet<>(found).containsAll(wanted);
        }
        for (int i = 0; i < wanted.size(); i++) {
            if (!found.contains(wanted.get(i))) {
                return false;
            }
        }
        return true;
    }

    /** What is wanted and was not found, in the order in which it is wanted. */
    public static List<String> lacking(Value found, Value wanted) {
        Set<String> there = new HashSet<>(((Value.Things) found).items());
        return ((Value.Things) wanted)
                .items().stream().filter(item -> !there.contains(item)).toList();
    }
}

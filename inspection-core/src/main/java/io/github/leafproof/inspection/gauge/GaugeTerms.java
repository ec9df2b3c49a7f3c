package io.github.leafproof.inspection.gauge;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;

/** What every gauge demands of the names and lengths it is made of, and how it says so. */
final class GaugeTerms {
    private GaugeTerms() {}

    /** A marking as it is stamped: millimetres with two decimals at least (common practice), so 0.10 and not 0.1. */
    static String stamped(Quantity marked) {
        String number = marked.number();
        if (!marked.unit().symbol().equals("mm") || number.contains("/")) {
            return number;
        }
        int dot = number.indexOf('.');
        int decimals = dot < 0 ? 0 : number.length() - dot - 1;
        return (dot < 0 ? number + "." : number) + "0".repeat(Math.max(0, 2 - decimals));
    }

    static void requireName(String name, String what) {
        if (name.isBlank()) {
            throw new IllegalArgumentException(what + " needs a name");
        }
    }

    static void requireLengthAboveZero(Quantity quantity, String what) {
        requireLength(quantity, what);
        if (quantity.base() <= 0) {
            throw new IllegalArgumentException(what + " must be above zero, not " + quantity);
        }
    }

    static void requireLengthOrZero(Quantity quantity, String what) {
        requireLength(quantity, what);
        if (quantity.base() < 0) {
            throw new IllegalArgumentException(what + " cannot be below zero, as " + quantity + " is");
        }
    }

    private static void requireLength(Quantity quantity, String what) {
        if (!quantity.dimension().equals(Dimension.LENGTH)) {
            throw new IllegalArgumentException(what + " must be a length; " + quantity + " is of another kind ("
                    + quantity.dimension().words() + ")");
        }
    }

    static void requireOneOfEach(String name, List<Leaf> leaves, String leaf) {
        requireName(name, "a set of " + plural(leaf));
        if (leaves.isEmpty()) {
            throw new IllegalArgumentException(name + " holds no " + leaf);
        }
        if (leaves.size() > FeelSet.MOST_LEAVES) {
            throw new IllegalArgumentException(name + " holds " + leaves.size() + " " + plural(leaf)
                    + "; one set holds " + FeelSet.MOST_LEAVES + " at most");
        }
        List<Quantity> seen = new ArrayList<>();
        for (Leaf one : leaves) {
            if (!one.set().equals(name)) {
                throw new IllegalArgumentException(
                        "the " + one.label() + " " + leaf + " belongs to " + one.set() + ", not to " + name);
            }
            if (seen.stream().anyMatch(marked -> marked.sameAmountAs(one.marked()))) {
                throw new IllegalArgumentException(name + " has two " + plural(leaf) + " marked " + one.label());
            }
            seen.add(one.marked());
        }
    }

    private static String plural(String leaf) {
        return leaf.equals("leaf") ? "leaves" : leaf + "s";
    }
}

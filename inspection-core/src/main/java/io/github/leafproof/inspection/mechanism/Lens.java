package io.github.leafproof.inspection.mechanism;

/** The area that two circles share. */
final class Lens {
    private static final int HALVINGS = 100;

    private Lens() {}

    static double area(double r, double s, double distance) {
        if (distance >= r + s) {
            return 0;
        }
        if (distance <= Math.abs(r - s)) {
            double smaller = Math.min(r, s);
            return Math.PI * smaller * smaller;
        }
        return segment(r, s, distance) + segment(s, r, distance);
    }

    /** What the common chord cuts off the first circle, from the angle that it spans there. */
    private static double segment(double r, double s, double distance) {
        double toChord = (distance * distance + (r - s) * (r + s)) / (2 * distance);
        double halfChord = Math.sqrt(Math.max(0, r * r - toChord * toChord));
        return r * r * Math.atan2(halfChord, toChord) - toChord * halfChord;
    }

    /** How wide the lens of two equal circles is that has this area: zero to the diameter. */
    static double width(double r, double area) {
        double low = 0;
        double high = 2 * r;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (area(r, r, 2 * r - middle) < area) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}

package io.github.leafproof.dsl.figure;

import io.github.leafproof.dsl.html.Element;

/** Slanting lines in a box: what is meant stays plain without its colour. */
final class Hatching {

    private static final double APART = 5;

    private Hatching() {}

    static Element of(double left, double top, double right, double bottom) {
        double high = bottom - top;
        StringBuilder lines = new StringBuilder();
        for (double x = left - high + APART / 2; x < right; x += APART) {
            double from = Math.max(x, left);
            double to = Math.min(x + high, right);
            lines.append('M').append(Pen.at(from)).append(' ').append(Pen.at(bottom - (from - x)));
            lines.append('L').append(Pen.at(to)).append(' ').append(Pen.at(bottom - (to - x)));
        }
        return Pen.path(lines.toString());
    }
}

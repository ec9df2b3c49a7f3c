package io.github.leafproof.dsl.draw;

import io.github.leafproof.dsl.draw.Picture.Box;
import io.github.leafproof.dsl.html.Lettering;
import java.util.ArrayList;
import java.util.List;

/**
 * A box with its place on the sheet and its text in lines.
 *
 * @param lines its lines, the title first
 * @param titleLines how many of them are the title
 */
record Placed(Box box, int x, int y, int width, int height, List<String> lines, int titleLines) {

    static final int TITLE_SIZE = 14;
    static final int NOTE_SIZE = 12;
    static final int TITLE_STEP = 18;
    static final int NOTE_STEP = 16;
    static final int PADDING = 9;

    /** What the mark of an outcome takes on the left. */
    static final int MARK = 30;

    /** Bold letters are wider. */
    private static final double BOLD = 1.14;

    private static final int MOST_TITLE_LINES = 4;
    private static final int MOST_NOTE_LINES = 3;

    Placed {
        lines = List.copyOf(lines);
    }

    /** A box of this width, as high as its text, at the top of the sheet. */
    static Placed of(Box box, int x, int width) {
        int room = width - 2 * PADDING - (box.outcome() == null ? 0 : MARK) - (box.kind() == Picture.Kind.GATE ? 6 : 0);
        List<String> lines = new ArrayList<>(
                Lettering.wrapped(Lettering.clean(box.title()), TITLE_SIZE * BOLD, room, MOST_TITLE_LINES));
        int titleLines = lines.size();
        for (String note : box.notes()) {
            lines.addAll(Lettering.wrapped(Lettering.clean(note), NOTE_SIZE, room, MOST_NOTE_LINES));
        }
        int outcome = box.outcome() == null ? 0 : NOTE_STEP;
        int height = 2 * PADDING + outcome + titleLines * TITLE_STEP + (lines.size() - titleLines) * NOTE_STEP;
        return new Placed(box, x, 0, width, height, lines, titleLines);
    }

    Placed at(int newY) {
        return new Placed(box, x, newY, width, height, lines, titleLines);
    }

    int right() {
        return x + width;
    }

    int bottom() {
        return y + height;
    }

    int middle() {
        return y + height / 2;
    }

    /** The height of the n-th of so many lines that end at a side. */
    int port(int number, int of) {
        return y + height * (number + 1) / (of + 1);
    }
}

package io.github.leafproof.dsl.layout;

import io.github.leafproof.dsl.layout.Page.Blank;
import io.github.leafproof.dsl.parse.Passage;
import io.github.leafproof.dsl.parse.Passage.Group;
import io.github.leafproof.dsl.parse.Passage.Shape;
import io.github.leafproof.dsl.parse.Passage.Word;
import io.github.leafproof.dsl.parse.ProcedureParser;
import io.github.leafproof.dsl.source.SourceText;
import java.util.List;

/** Writes a procedure in the one layout, which docs/language.md describes. */
public final class Layout {

    /** Longer lines are broken. Nothing can be broken off a text, so a line that holds one may be longer all the same. */
    private static final int WIDTH = 100;
    /** What has clauses or a block stands on one line only if it can be taken in at a glance. */
    private static final int SHORT = 80;

    private final Page page = new Page();

    private Layout() {}

    /**
     * The text in the one layout: the same words and the same comments in the same order. Laid out again, it stays as
     * it is.
     *
     * @param source a text without mistakes of grammar
     * @throws IllegalArgumentException if it has some
     */
    public static String of(SourceText source) {
        Group file = ProcedureParser.page(source);
        Layout layout = new Layout();
        layout.lines(file.parts(), 0);
        String text = layout.page.text();
        refuseAnyOther(file.words(), SourceText.of(source.name(), text));
        return text;
    }

    /** Nobody gets a text back that reads otherwise than the one they wrote. Were there one, the mistake would be ours. */
    private static void refuseAnyOther(List<Word> before, SourceText laidOut) {
        List<Word> after = ProcedureParser.page(laidOut).words();
        boolean same = before.size() == after.size();
        for (int i = 0; same && i < before.size(); i++) {
            same = before.get(i).saysTheSameAs(after.get(i));
        }
        if (!same) {
            throw new IllegalStateException("the layout would change what the text says");
        }
    }

    /** Parts that begin a line each. A declaration of several lines is set apart from its neighbours. */
    private void lines(List<Passage> parts, int indent) {
        boolean longBefore = false;
        for (int i = 0; i < parts.size(); i++) {
            Passage part = parts.get(i);
            boolean isLong = isLongDeclaration(part, indent);
            boolean isEnd = part.first().letters().isEmpty();
            boolean apart = (isLong || longBefore) && !isEnd;
            page.endLine(indent, i == 0 ? Blank.INSIDE : apart ? Blank.APART : Blank.KEPT);
            write(part, 0, indent, 0);
            longBefore = isLong;
        }
    }

    private static boolean isLongDeclaration(Passage part, int indent) {
        return part instanceof Group group
                && group.shape() == Shape.DECLARATION
                && (group.needsLines() || indent + group.width() > widest(group));
    }

    private static int widest(Group group) {
        return hasTail(group) ? SHORT : WIDTH;
    }

    /** Whether a declaration ends with a block or with clauses. */
    private static boolean hasTail(Group group) {
        return group.shape() == Shape.DECLARATION
                && group.parts().get(group.parts().size() - 1) instanceof Group tail
                && (tail.shape() == Shape.BLOCK || tail.shape() == Shape.CLAUSES);
    }

    /**
     * Writes a passage behind what the line holds.
     *
     * @param gap how many blanks stand before it
     * @param indent how far in the line stands that it belongs to
     * @param after how much has to follow it on its last line
     */
    private void write(Passage passage, int gap, int indent, int after) {
        if (passage instanceof Word word) {
            page.add(word, gap, indent + Page.INDENT);
            return;
        }
        Group group = (Group) passage;
        switch (group.shape()) {
            case BLOCK -> block(group, gap, indent);
            case CLAUSES -> clauses(group, indent);
            default -> {
                int end = page.column(group.first(), gap, indent + Page.INDENT) + group.width() + after;
                if (!group.needsLines() && end <= widest(group)) {
                    line(group, gap, indent);
                } else {
                    spread(group, gap, indent, after);
                }
            }
        }
    }

    private void line(Passage passage, int gap, int indent) {
        if (passage instanceof Group group) {
            for (int i = 0; i < group.parts().size(); i++) {
                line(group.parts().get(i), i == 0 ? gap : group.gap(i), indent);
            }
        } else {
            write(passage, gap, indent, 0);
        }
    }

    private void spread(Group group, int gap, int indent, int after) {
        switch (group.shape()) {
            case CHAIN -> chain(group, gap, indent, after);
            case LIST -> list(group, gap, indent, after);
            case CHOICE -> block(group, gap, indent);
            default -> row(group, gap, indent, after);
        }
    }

    private void row(Group row, int gap, int indent, int after) {
        int last = row.parts().size() - 1;
        for (int i = 0; i <= last; i++) {
            // What is broken off before a tail stands deeper than the tail does.
            int own = hasTail(row) && i < last ? indent + Page.INDENT : indent;
            write(row.parts().get(i), i == 0 ? gap : row.gap(i), own, after(row, i, after));
        }
    }

    /** What has to follow a part on its last line: the single words behind it, since no line breaks before those. */
    private static int after(Group group, int part, int after) {
        int width = 0;
        for (int i = part + 1; i < group.parts().size(); i++) {
            if (group.parts().get(i) instanceof Group) {
                return width;
            }
            width += group.gap(i) + group.parts().get(i).width();
        }
        return width + after;
    }

    /** A new line before every operator, so that what is joined stands in a column. */
    private void chain(Group chain, int gap, int indent, int after) {
        int last = chain.parts().size() - 1;
        write(chain.parts().get(0), gap, indent + Page.INDENT, 0);
        for (int i = 1; i <= last; i++) {
            page.endLine(indent + Page.INDENT, Blank.NEVER);
            write(chain.parts().get(i), 0, indent + Page.INDENT, i == last ? after : 0);
        }
    }

    /** As many on a line as it holds. */
    private void list(Group list, int gap, int indent, int after) {
        int last = list.parts().size() - 1;
        write(list.parts().get(0), gap, indent, 0);
        for (int i = 1; i <= last; i++) {
            Passage part = list.parts().get(i);
            int rest = part.width() + (i == last ? after : 0);
            if (page.isSevered(part.first()) || page.column(part.first(), list.gap(i), 0) + rest > WIDTH) {
                page.endLine(indent + Page.INDENT, Blank.NEVER);
            }
            write(part, list.gap(i), indent + Page.INDENT, i == last ? after : 0);
        }
    }

    private void clauses(Group clauses, int indent) {
        for (Passage clause : clauses.parts()) {
            page.endLine(indent + Page.INDENT, Blank.NEVER);
            write(clause, 0, indent + Page.INDENT, 0);
        }
    }

    private void block(Group block, int gap, int indent) {
        int last = block.parts().size() - 1;
        write(block.first(), gap, indent, 0);
        lines(block.parts().subList(1, last), indent + Page.INDENT);
        page.close(block.last(), indent, last == 1 ? Blank.INSIDE : Blank.KEPT);
    }
}

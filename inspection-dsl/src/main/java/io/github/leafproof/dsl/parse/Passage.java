package io.github.leafproof.dsl.parse;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands on a page, gathered as the grammar gathers it: words, and groups of them. Unlike the tree of declarations
 * it leaves nothing out, be it a bracket or a comment, and knows nothing of what anything means.
 */
public sealed interface Passage {

    /** The first word of it. */
    Word first();

    /** The last word of it. */
    Word last();

    /** How many letters and blanks it takes when it is written on one line. */
    int width();

    /** Whether it cannot be written on one line: for a comment in its midst, or for all that a block of it holds. */
    boolean needsLines();

    /**
     * A comment on a line of its own.
     *
     * @param letters from its slashes on, without the blanks at its end
     * @param afterBlankLine whether a blank line stands before it
     */
    record Comment(String letters, boolean afterBlankLine) {}

    /**
     * A word, sign, number, unit or text, with the comments that it carries.
     *
     * @param kind what the grammar takes it for
     * @param letters as written; the end of the file has none
     * @param leansBack whether no blank stands before it
     * @param leansOn whether no blank stands behind it
     * @param above the comments on the lines above it, up to the word before it
     * @param afterBlankLine whether a blank line stands before it, or between the last of those comments and it
     * @param behind the comment that ends its line
     */
    record Word(
            String kind,
            String letters,
            boolean leansBack,
            boolean leansOn,
            List<Comment> above,
            boolean afterBlankLine,
            @Nullable String behind)
            implements Passage {
        public Word {
            above = List.copyOf(above);
        }

        @Override
        public Word first() {
            return this;
        }

        @Override
        public Word last() {
            return this;
        }

        @Override
        public int width() {
            return letters.codePointCount(0, letters.length());
        }

        @Override
        public boolean needsLines() {
            return false;
        }

        /** Whether the other is the same word with the same comments, wherever it stands. */
        public boolean saysTheSameAs(Word other) {
            return kind.equals(other.kind)
                    && letters.equals(other.letters)
                    && commentLetters().equals(other.commentLetters())
                    && String.valueOf(behind).equals(String.valueOf(other.behind));
        }

        private List<String> commentLetters() {
            return above.stream().map(Comment::letters).toList();
        }
    }

    /** How the parts of a group belong together. */
    enum Shape {
        /** The declarations of a file. */
        FILE,
        /** From its keyword on; its last part may be a {@link #BLOCK} or {@link #CLAUSES}. */
        DECLARATION,
        /** A brace, lines, a brace. */
        BLOCK,
        /** The clauses of a declaration without braces. */
        CLAUSES,
        /** A brace, answers of a choice, a brace. */
        CHOICE,
        /** Each part but the first begins with the operator, or the word, that joins it to the ones before it. */
        CHAIN,
        /** Parts of one kind, most often with commas between them. */
        LIST,
        /** Anything else: one part after the other. */
        ROW
    }

    /** Several passages in order; there is at least one. */
    final class Group implements Passage {

        /** Answers of a choice have no commas between them, so a wider gap sets them apart. */
        private static final int GAP_OF_ANSWERS = 3;

        private final Shape shape;
        private final List<Passage> parts;
        private final Word first;
        private final Word last;
        private final int width;
        private final boolean needsLines;

        Group(Shape shape, List<Passage> parts) {
            this.shape = shape;
            this.parts = List.copyOf(parts);
            this.first = parts.get(0).first();
            this.last = parts.get(parts.size() - 1).last();
            int letters = 0;
            boolean severed = false;
            for (int i = 0; i < parts.size(); i++) {
                letters += (i == 0 ? 0 : gap(i)) + parts.get(i).width();
                severed |= parts.get(i).needsLines();
                severed |= i > 0 && !parts.get(i).first().above().isEmpty();
                severed |= i > 0 && parts.get(i - 1).last().behind() != null;
                severed |= i > 0 && wouldReadAsUnit(parts.get(i - 1).last(), parts.get(i));
            }
            this.width = letters;
            this.needsLines = severed || (shape == Shape.BLOCK && parts.size() > 3);
        }

        /** A word behind a number and before a comma is its unit. Of an answer for several options the first is none. */
        private static boolean wouldReadAsUnit(Word number, Passage next) {
            boolean isForSeveral = next instanceof Group answer
                    && answer.parts.get(0) instanceof Group options
                    && options.shape == Shape.LIST;
            return isForSeveral && number.kind().equals("NUMBER");
        }

        public Shape shape() {
            return shape;
        }

        public List<Passage> parts() {
            return parts;
        }

        /** How many blanks stand before a part, on the same line. */
        public int gap(int part) {
            Passage before = parts.get(part - 1);
            Passage after = parts.get(part);
            boolean nothingBetween = shape == Shape.BLOCK && parts.size() == 2;
            if (nothingBetween || before.last().leansOn() || after.first().leansBack()) {
                return 0;
            }
            return shape == Shape.CHOICE && part > 1 && part < parts.size() - 1 ? GAP_OF_ANSWERS : 1;
        }

        @Override
        public Word first() {
            return first;
        }

        @Override
        public Word last() {
            return last;
        }

        @Override
        public int width() {
            return width;
        }

        @Override
        public boolean needsLines() {
            return needsLines;
        }

        /** All its words in order. */
        public List<Word> words() {
            List<Word> words = new ArrayList<>();
            Deque<Passage> open = new ArrayDeque<>();
            open.push(this);
            while (!open.isEmpty()) {
                Passage next = open.pop();
                if (next instanceof Group group) {
                    for (int i = group.parts.size() - 1; i >= 0; i--) {
                        open.push(group.parts.get(i));
                    }
                } else {
                    words.add((Word) next);
                }
            }
            return words;
        }
    }
}

package io.github.leafproof.dsl.build;

/** The page a draft is written on; drafts within it write further to the right. */
final class Sheet {

    private final StringBuilder text;
    private final String indent;

    private Sheet(StringBuilder text, String indent) {
        this.text = text;
        this.indent = indent;
    }

    static Sheet empty() {
        return new Sheet(new StringBuilder(), "");
    }

    Sheet indented() {
        return new Sheet(text, indent + "  ");
    }

    void line(String words) {
        text.append(indent).append(words).append('\n');
    }

    void gap() {
        text.append('\n');
    }

    @Override
    public String toString() {
        return text.toString();
    }
}

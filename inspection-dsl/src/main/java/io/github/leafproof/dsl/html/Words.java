package io.github.leafproof.dsl.html;

/** Words as they are to be read. Whatever they hold, they come out as words: no mark in them makes an element. */
public record Words(String text) implements Part {

    /**
     * Words made fit for a page or a drawing, in an element or between the quotes of an attribute. What cannot be shown is
     * marked as such; a tab stays one, and a line's end becomes a blank.
     */
    public static String escaped(String words) {
        StringBuilder fit = new StringBuilder(words.length() + 8);
        words.codePoints().forEach(letter -> {
            switch (letter) {
                case '&' -> fit.append("&amp;");
                case '<' -> fit.append("&lt;");
                case '>' -> fit.append("&gt;");
                case '"' -> fit.append("&quot;");
                case '\'' -> fit.append("&#39;");
                case '\t' -> fit.append('\t');
                case '\n', '\r' -> fit.append(' ');
                default -> fit.appendCodePoint(Lettering.isShown(letter) ? letter : '\uFFFD');
            }
        });
        return fit.toString();
    }
}

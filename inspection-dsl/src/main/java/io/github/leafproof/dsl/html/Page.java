package io.github.leafproof.dsl.html;

import java.util.List;

/**
 * A page that is one file.
 *
 * @param title what a browser shows of it in its list of pages
 * @param css the rules that only this page needs; the shared ones come before them
 * @param body what is on it: {@code header}, {@code main}, {@code footer}
 */
public record Page(String title, String css, List<Part> body) {

    /** Nothing is fetched and nothing runs, whatever words a stranger's file may have brought in. */
    private static final String NOTHING_FROM_ELSEWHERE = "default-src 'none'; style-src 'unsafe-inline'";

    public Page {
        body = List.copyOf(body);
    }

    /** The file's text, lines ending in {@code \n}; the same page gives the same text on every machine. */
    public String text() {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"
                + "<meta name=\"color-scheme\" content=\"light dark\"/>\n"
                + "<meta http-equiv=\"Content-Security-Policy\" content=\"" + NOTHING_FROM_ELSEWHERE + "\"/>\n"
                + "<title>" + Words.escaped(title) + "</title>\n<style>\n" + Style.SHARED + css
                + "</style>\n</head>\n<body>\n" + Markup.of(body) + "</body>\n</html>\n";
    }
}

package io.github.leafproof.dsl.diagnostic;

/** The colours of a printed diagnostic, as ANSI (ECMA-48, SGR) sequences. */
enum Ink {
    ERROR("1;31"),
    WARNING("1;33"),
    SECOND("1;34"),
    MARGIN("34"),
    HELP("1;32"),
    STRONG("1");

    private final String code;

    Ink(String code) {
        this.code = code;
    }

    String on(String words) {
        return "\u001B[" + code + "m" + words + "\u001B[0m";
    }
}

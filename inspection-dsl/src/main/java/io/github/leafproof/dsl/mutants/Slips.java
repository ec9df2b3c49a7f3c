package io.github.leafproof.dsl.mutants;

import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The mutants of a procedure as they are made, each with a name of its own. */
final class Slips {

    private final List<Mutant> made = new ArrayList<>();
    private final Map<String, Integer> names = new HashMap<>();
    private String owner = "";

    /** What is made from now on is made of this declaration of this file: {@code check cold}. */
    void in(String declaration, SourceText file) {
        String name = file.name();
        owner = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1) + " " + declaration;
    }

    /** Something stands there instead. */
    void replace(Mutant.Kind kind, Span span, String instead) {
        make(kind, span, instead, Around.text(span), instead);
    }

    /** Something is left out. */
    void drop(Mutant.Kind kind, Span span) {
        make(kind, span, "", Around.text(span), "nothing");
    }

    /** An edit that is told by more, or by less, than the letters that change. */
    void make(Mutant.Kind kind, Span span, String instead, String was, String becomes) {
        String name = owner + ": " + inALine(was) + " -> " + inALine(becomes);
        int nth = names.merge(name, 1, Integer::sum);
        made.add(new Mutant(span, instead, kind, nth == 1 ? name : name + " #" + nth));
    }

    private static String inALine(String text) {
        return text.strip().replaceAll("\\s+", " ");
    }

    List<Mutant> all() {
        return List.copyOf(made);
    }
}

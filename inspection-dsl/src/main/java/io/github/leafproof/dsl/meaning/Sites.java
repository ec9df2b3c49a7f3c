package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.SameNumber;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Expression;
import java.util.ArrayList;
import java.util.List;

/** Where in the text decisions and limits stand that only make sense, or none, once all names are understood. */
final class Sites {

    /** A choice in one round of its loops; {@code armOf} says which arm stands for each option. */
    record Choice(Expression.Choose choose, Formula subject, List<Integer> armOf) {}

    /** The condition of an {@code if … then … else}. */
    record If(Span condition, Formula formula) {}

    /** A lower and an upper limit. */
    record Limits(LimitsHeld held, Span low, Span high) {}

    /** A number that must be exactly another. */
    record Same(Span span, SameNumber formula) {}

    final List<Choice> choices = new ArrayList<>();
    final List<If> ifs = new ArrayList<>();
    final List<Limits> limits = new ArrayList<>();
    final List<Same> sames = new ArrayList<>();
}

package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.SameNumber;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Expression;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

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

    /** Each comparison with limits; by identity, since a loop makes equal ones in several rounds. */
    final IdentityHashMap<LimitsHeld, Span> compared = new IdentityHashMap<>();

    /** Where each fact of the engine is first asked for. */
    final Map<String, Span> facts = new HashMap<>();
}

package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Chosen;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.SameNumber;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Expression;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

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

    /**
     * A condition as written. One that only joins others, turns one round or chooses between them is known by these, except
     * where something hangs on it as a whole.
     */
    record Condition(Span span, boolean ofOthers) {}

    final List<Choice> choices = new ArrayList<>();
    final List<If> ifs = new ArrayList<>();
    final List<Limits> limits = new ArrayList<>();
    final List<Same> sames = new ArrayList<>();

    /** Each comparison with limits; by identity, since a loop makes equal ones in several rounds. */
    final IdentityHashMap<LimitsHeld, Span> compared = new IdentityHashMap<>();

    /** Each condition and where it is written; by identity, since one may be written alike in several places. */
    final IdentityHashMap<Formula, Condition> conditions = new IdentityHashMap<>();

    /** Each option that a value is compared with in {@code is one of}. */
    final IdentityHashMap<Formula, Span> options = new IdentityHashMap<>();

    /** Each choice as written. */
    final IdentityHashMap<Chosen, Choice> chosen = new IdentityHashMap<>();

    /** What is written with an uncertainty of its own. */
    final Set<Formula> uncertain = Collections.newSetFromMap(new IdentityHashMap<>());

    /** Where each fact of the engine is first asked for. */
    final Map<String, Span> facts = new HashMap<>();
}

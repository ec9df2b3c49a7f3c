package io.github.leafproof.dsl.coverage;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.meaning.Saying;
import io.github.leafproof.dsl.meaning.Sayings;
import io.github.leafproof.dsl.meaning.Way;
import io.github.leafproof.dsl.rehearsal.Played;
import io.github.leafproof.dsl.syntax.Declaration;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How much of what a procedure can say its rehearsals have shown: for each place and each way it can come out, the rehearsals
 * that show it. It does not matter in which order they were played, nor in how many portions.
 */
public final class Coverage {

    private final Procedure procedure;
    private final Sayings sayings;
    private final BitSet played;
    private final Map<Saying, Map<Way, BitSet>> shown;

    private Coverage(Procedure procedure, BitSet played, Map<Saying, Map<Way, BitSet>> shown) {
        this.procedure = procedure;
        this.sayings = procedure.sayings();
        this.played = played;
        this.shown = shown;
    }

    /**
     * What these rehearsals of a procedure show. One that could not be played shows nothing; one that surprised shows what it
     * came to.
     */
    public static Coverage of(Procedure procedure, List<Played> rehearsals) {
        Coverage all = new Coverage(procedure, new BitSet(), new HashMap<>());
        rehearsals.forEach(all::add);
        return all;
    }

    private void add(Played rehearsal) {
        int number = number(rehearsal.written());
        rehearsal.judgement().ifPresent(judgement -> {
            played.set(number);
            Watching.of(sayings, judgement)
                    .forEach((saying, ways) -> ways.stream()
                            .filter(saying.ways()::contains)
                            .forEach(way -> rehearsals(saying, way).set(number)));
        });
    }

    private int number(Declaration.Rehearse written) {
        int number = procedure.rehearsals().indexOf(written);
        if (number < 0) {
            throw new IllegalArgumentException(
                    "no rehearsal of this procedure: " + written.title().plain());
        }
        return number;
    }

    private BitSet rehearsals(Saying saying, Way way) {
        return shown.computeIfAbsent(saying, same -> new EnumMap<>(Way.class))
                .computeIfAbsent(way, same -> new BitSet());
    }

    /**
     * What the rehearsals of both show.
     *
     * @throws IllegalArgumentException if the other is of another procedure
     */
    public Coverage and(Coverage other) {
        if (other.procedure != procedure) {
            throw new IllegalArgumentException("coverage of two procedures cannot be added");
        }
        Coverage both = new Coverage(procedure, new BitSet(), new HashMap<>());
        for (Coverage each : List.of(this, other)) {
            both.played.or(each.played);
            each.shown.forEach((saying, ways) -> ways.forEach(
                    (way, rehearsals) -> both.rehearsals(saying, way).or(rehearsals)));
        }
        return both;
    }

    public Procedure procedure() {
        return procedure;
    }

    /** Everything that the procedure can say, in the order of its files. */
    public List<Saying> sayings() {
        return sayings.all();
    }

    /** How many rehearsals were played. */
    public int played() {
        return played.cardinality();
    }

    /** Whether that rehearsal of the procedure was played, by its number from 0. */
    boolean isPlayed(int rehearsal) {
        return played.get(rehearsal);
    }

    /** The rehearsals that show a place come out in that way, by their numbers from 0 in the order of the procedure. */
    public List<Integer> showing(Saying saying, Way way) {
        return shown.getOrDefault(saying, Map.of()).getOrDefault(way, new BitSet()).stream()
                .boxed()
                .toList();
    }

    /** Whether some rehearsal shows that. */
    public boolean isShown(Saying saying, Way way) {
        return !showing(saying, way).isEmpty();
    }

    /** The ways of a place that no rehearsal shows. */
    public List<Way> missing(Saying saying) {
        return saying.ways().stream().filter(way -> !isShown(saying, way)).toList();
    }

    /** How much of it all is shown. */
    public Share share() {
        return share(Set.of(Saying.Kind.values()));
    }

    /** How much is shown of the places of one kind. */
    public Share share(Saying.Kind kind) {
        return share(Set.of(kind));
    }

    private Share share(Set<Saying.Kind> kinds) {
        int asked = 0;
        int missing = 0;
        for (Saying saying : sayings.all()) {
            if (kinds.contains(saying.kind())) {
                asked += saying.ways().size();
                missing += missing(saying).size();
            }
        }
        return new Share(asked - missing, asked);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Coverage coverage
                && procedure == coverage.procedure
                && played.equals(coverage.played)
                && shown.equals(coverage.shown);
    }

    @Override
    public int hashCode() {
        return shown.hashCode();
    }
}

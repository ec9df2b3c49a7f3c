package io.github.leafproof.dsl.mutants;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.parts.Shelf;
import io.github.leafproof.dsl.rehearsal.Played;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Declaration.Step;
import io.github.leafproof.dsl.syntax.Part;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** A procedure and the rehearsals that watch over it. */
public final class Watched {

    private final Procedure procedure;
    private final Rehearsing rehearsing;
    private final List<Played> played;

    private Watched(Procedure procedure, Rehearsing rehearsing, List<Played> played) {
        this.procedure = procedure;
        this.rehearsing = rehearsing;
        this.played = List.copyOf(played);
    }

    /** Plays the procedure's rehearsals as it stands. */
    public static Watched of(Procedure procedure, Rehearsing rehearsing) {
        return new Watched(procedure, rehearsing, rehearsing.play());
    }

    public Procedure procedure() {
        return procedure;
    }

    /** Its rehearsals, played with nothing changed. */
    public List<Played> played() {
        return played;
    }

    /** What becomes of a mutant here; empty where the procedure does not use the file that it changes. */
    Optional<Fate> fateOf(Mutant mutant) {
        SourceText edited = mutant.text();
        boolean own = procedure.source().name().equals(edited.name());
        if (!own
                && procedure.parts().stream()
                        .noneMatch(part -> part.source().name().equals(edited.name()))) {
            return Optional.empty();
        }
        Compiled compiled = Procedure.compile(own ? edited : procedure.source(), shelf(edited));
        if (compiled.diagnostics().stream().anyMatch(Diagnostic::isError)) {
            return Optional.of(new Fate.Refused());
        }
        Procedure other = compiled.orElseThrow();
        Set<String> differences = SameGraph.differences(procedure.graph(), other.graph());
        return Optional.of(differences.isEmpty() ? new Fate.SameMeaning() : rehearsed(other, differences));
    }

    /** The parts as they are, but for the one that was edited. */
    private Shelf shelf(SourceText edited) {
        Map<String, Part> parts = new HashMap<>();
        for (Part part : procedure.parts()) {
            boolean changed = part.source().name().equals(edited.name());
            parts.put(part.name(), changed ? new Part(part.name(), edited) : part);
        }
        return name -> {
            Part part = parts.get(name);
            return part == null ? new Shelf.Found.Missing(parts.keySet()) : new Shelf.Found.There(part);
        };
    }

    /** Those that expect something of what was changed come first: one of them notices as a rule, and the others can go home. */
    private Fate rehearsed(Procedure other, Set<String> differences) {
        Rehearsing anew = rehearsing.with(other);
        SortedMap<Integer, List<Nearest>> nearest = new TreeMap<>();
        List<Integer> order = IntStream.range(0, played.size())
                .boxed()
                .sorted(Comparator.comparing(i -> !expects(played.get(i).written(), differences)))
                .toList();
        for (int i : order) {
            Played now = anew.play(other.rehearsals().get(i));
            if (!now.isAsExpected()) {
                return new Fate.Noticed(now.title());
            }
            Played before = played.get(i);
            Optional<Judgement> was = before.judgement();
            Optional<Judgement> becomes = now.judgement();
            if (was.isPresent() && becomes.isPresent()) {
                nearest.put(i, Nearest.between(before, was.get(), becomes.get()));
            }
        }
        return new Fate.Survives(
                Nearest.of(nearest.values().stream().flatMap(List::stream).toList()));
    }

    private static boolean expects(Declaration.Rehearse rehearse, Set<String> differences) {
        return rehearse.steps().stream()
                .anyMatch(step -> step instanceof Step.ExpectCheck check
                        ? differences.contains(check.check().toString())
                        : step instanceof Step.ExpectRelease && differences.contains(SameGraph.RELEASE));
    }
}

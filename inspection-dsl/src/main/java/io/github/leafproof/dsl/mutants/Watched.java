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
import io.github.leafproof.dsl.syntax.Part;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
        return Optional.of(
                SameGraph.decideAlike(procedure.graph(), other.graph()) ? new Fate.SameMeaning() : rehearsed(other));
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

    private Fate rehearsed(Procedure other) {
        Rehearsing anew = rehearsing.with(other);
        List<Nearest> differences = new ArrayList<>();
        for (int i = 0; i < played.size(); i++) {
            Declaration.Rehearse rehearse = other.rehearsals().get(i);
            Played now = anew.play(rehearse);
            if (!now.isAsExpected()) {
                return new Fate.Noticed(now.title());
            }
            Played before = played.get(i);
            Optional<Judgement> was = before.judgement();
            Optional<Judgement> becomes = now.judgement();
            if (was.isPresent() && becomes.isPresent()) {
                differences.addAll(Nearest.between(before, was.get(), becomes.get()));
            }
        }
        return new Fate.Survives(Nearest.of(differences));
    }
}

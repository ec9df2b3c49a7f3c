package io.github.leafproof.dsl.mutants;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the rehearsals of some procedures notice. A part that several of them use is watched over by the rehearsals of all.
 *
 * @param files the procedures' files
 * @param rehearsals how many rehearsals watch over them
 * @param mutants every mutant and what became of it: file by file, each in the order of its text
 */
public record MutantReport(List<String> files, int rehearsals, List<Judged> mutants) {

    public MutantReport {
        files = List.copyOf(files);
        mutants = List.copyOf(mutants);
    }

    /** A mutant and what became of it. */
    public record Judged(Mutant mutant, Fate fate) {

        /** Whether no rehearsal notices it. */
        public boolean survives() {
            return fate instanceof Fate.Survives;
        }
    }

    /** Makes all mutants and judges each; as many at a time as the machine has cores. */
    public static MutantReport of(List<Watched> procedures) {
        List<Mutant> all = mutantsOf(procedures);
        List<Judged> judged = all.parallelStream()
                .map(mutant -> new Judged(mutant, fate(mutant, procedures)))
                .toList();
        return new MutantReport(
                procedures.stream()
                        .map(each -> each.procedure().source().name())
                        .toList(),
                procedures.stream().mapToInt(each -> each.played().size()).sum(),
                judged);
    }

    private static List<Mutant> mutantsOf(List<Watched> procedures) {
        Set<String> seen = new HashSet<>();
        return procedures.stream()
                .flatMap(each -> Mutants.of(each.procedure().written()).stream())
                .filter(mutant -> seen.add(mutant.name()))
                .toList();
    }

    /** Refused where one procedure no longer compiles; noticed where one rehearsal of one procedure notices it. */
    private static Fate fate(Mutant mutant, List<Watched> procedures) {
        List<Fate> fates = new ArrayList<>();
        for (Watched each : procedures) {
            Optional<Fate> fate = each.fateOf(mutant);
            fate.ifPresent(fates::add);
            if (fate.isPresent() && (fate.get() instanceof Fate.Refused || fate.get() instanceof Fate.Noticed)) {
                return fate.get();
            }
        }
        return fates.stream()
                .filter(Fate.Survives.class::isInstance)
                .findFirst()
                .<Fate>map(first -> new Fate.Survives(Nearest.of(fates.stream()
                        .flatMap(fate -> fate instanceof Fate.Survives survives
                                ? survives.nearest().stream()
                                : Stream.<Nearest>of())
                        .toList())))
                .orElseGet(Fate.SameMeaning::new);
    }

    /** Those that no rehearsal notices. */
    public List<Judged> surviving() {
        return mutants.stream().filter(Judged::survives).toList();
    }

    /** How many a rehearsal notices. */
    public long noticed() {
        return count(Fate.Noticed.class);
    }

    /** How many decide just as the procedure does, and are no mutants. */
    public long same() {
        return count(Fate.SameMeaning.class);
    }

    /** How many do not compile, and are no mutants. */
    public long refused() {
        return count(Fate.Refused.class);
    }

    private long count(Class<? extends Fate> kind) {
        return mutants.stream().map(Judged::fate).filter(kind::isInstance).count();
    }
}

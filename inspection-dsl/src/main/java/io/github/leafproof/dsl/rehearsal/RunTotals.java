package io.github.leafproof.dsl.rehearsal;

import java.util.List;

/**
 * The numbers of a run.
 *
 * @param played how many cases were asked for
 * @param surprises how many of them came out otherwise than expected
 * @param notPlayed how many could not be played, such as for a card that cannot be read
 * @param notCompiled how many files hold mistakes, so that no case of theirs could be played
 */
record RunTotals(int played, long asExpected, long surprises, long notPlayed, long notCompiled) {

    static RunTotals of(List<PlayedFile> files) {
        List<Played> all =
                files.stream().flatMap(file -> file.played().stream()).toList();
        long asExpected = all.stream().filter(Played::isAsExpected).count();
        long notPlayed = all.stream().filter(each -> each.judged() == null).count();
        return new RunTotals(
                all.size(),
                asExpected,
                all.size() - asExpected - notPlayed,
                notPlayed,
                files.stream()
                        .filter(file -> file.compiled().procedure().isEmpty())
                        .count());
    }
}

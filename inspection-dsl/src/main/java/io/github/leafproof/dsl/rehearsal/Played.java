package io.github.leafproof.dsl.rehearsal;

import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Declaration.Step;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One case of a procedure, played through: as it is written, and the judgement that its entries lead to.
 *
 * @param written the case as written
 * @param judged what the engine of the case came to; null where the case could not be played, and then the problems say why
 * @param problems why it could not be played, such as a card that cannot be read; empty where it could
 */
public record Played(Declaration.Rehearse written, @Nullable Judgement judged, List<Problem> problems) {

    /** Refuses a case that was neither judged nor has a reason why not. */
    public Played {
        problems = List.copyOf(problems);
        if (problems.isEmpty() == (judged == null)) {
            throw new IllegalArgumentException("a case has either a judgement or problems");
        }
    }

    /** What the case shows, in its writer's words. */
    public String title() {
        return written.title().plain();
    }

    /** File, line and column of the title. */
    public String place() {
        return place(written.title().span());
    }

    /** The judgement; empty where the case could not be played. */
    public Optional<Judgement> judgement() {
        return Optional.ofNullable(judged);
    }

    /** Whether the case could be played, and everything came out as expected. Costs nothing but looking it up. */
    public boolean isAsExpected() {
        return problems.isEmpty() && unexpected().isEmpty();
    }

    /** The expectations that were not met, in the order of the case; none where it could not be played. */
    public List<Step> unexpected() {
        return judgement()
                .map(judgement -> written.steps().stream()
                        .filter(step -> !isAsExpected(step, judgement))
                        .toList())
                .orElse(List.of());
    }

    /** The same in words, with the reasons of every surprise, which are worked out only here. */
    public Rehearsed rehearsed() {
        return new Rehearsed(
                title(),
                place(),
                judgement()
                        .map(judgement -> Surprises.of(unexpected(), judgement))
                        .orElse(List.of()),
                problems);
    }

    private static boolean isAsExpected(Step step, Judgement judgement) {
        if (step instanceof Step.ExpectCheck expect) {
            Outcome outcome =
                    judgement.verdict(expect.check().toString()).orElseThrow().outcome();
            return outcome.word().equals(expect.outcome().text());
        }
        return !(step instanceof Step.ExpectRelease expect)
                || judgement.release().release().word().equals(expect.release().text());
    }

    static String place(Span span) {
        return span.source().name() + ":" + span.source().at(span.start());
    }
}

package io.github.leafproof.dsl.graph;

import io.github.leafproof.inspection.verdict.CheckOutcome;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Severity;
import io.github.leafproof.inspection.verdict.Tally;
import java.util.AbstractList;
import java.util.Objects;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The verdict on each check, in the order of the procedure, and how many came out in which way. It never changes. */
public final class Verdicts extends AbstractList<Verdict> implements Tally, RandomAccess {

    private static final int OUTCOMES = Outcome.values().length;

    private final CheckGraph graph;
    private final Row<Verdict> verdicts;
    private final int[] counts;

    private Verdicts(CheckGraph graph, Row<Verdict> verdicts, int[] counts) {
        this.graph = graph;
        this.verdicts = verdicts;
        this.counts = counts;
    }

    /** Verdicts that are being found; none is yet. */
    static Draft blank(CheckGraph graph) {
        return new Draft(graph, Row.blank(graph.checks().size()), new int[Severity.values().length * OUTCOMES]);
    }

    /** Verdicts of which some are found anew. */
    Draft draft() {
        return new Draft(graph, verdicts.draft(), counts.clone());
    }

    @Override
    public Verdict get(int number) {
        Objects.checkIndex(number, size());
        return Objects.requireNonNull(verdicts.get(number));
    }

    @Override
    public int size() {
        return graph.checks().size();
    }

    /** The verdict on the check of that name. */
    Optional<Verdict> of(String check) {
        return graph.node(check)
                .flatMap(
                        node -> node instanceof Node.Check known ? Optional.of(get(known.number())) : Optional.empty());
    }

    @Override
    public int count(Severity severity, Outcome outcome) {
        return counts[place(severity, outcome)];
    }

    @Override
    public Optional<Outcome> outcome(String check) {
        return of(check).map(Verdict::outcome);
    }

    @Override
    public Stream<CheckOutcome> checks() {
        return stream()
                .map(verdict ->
                        new CheckOutcome(verdict.check().name(), verdict.check().severity(), verdict.outcome()));
    }

    /** A place in the counts; nothing outside of this class knows it. */
    @SuppressWarnings("EnumOrdinal")
    private static int place(Severity severity, Outcome outcome) {
        return severity.ordinal() * OUTCOMES + outcome.ordinal();
    }

    /** Verdicts while they are found. */
    static final class Draft {

        private final CheckGraph graph;
        private final Row.Draft<Verdict> verdicts;
        private final int[] counts;

        private Draft(CheckGraph graph, Row.Draft<Verdict> verdicts, int[] counts) {
            this.graph = graph;
            this.verdicts = verdicts;
            this.counts = counts;
        }

        /** The verdict on a check; null while it is not found. */
        @Nullable
        Verdict get(int number) {
            return verdicts.get(number);
        }

        void set(int number, Verdict verdict) {
            Verdict before = verdicts.get(number);
            if (before != null) {
                counts[place(before.check().severity(), before.outcome())]--;
            }
            counts[place(verdict.check().severity(), verdict.outcome())]++;
            verdicts.set(number, verdict);
        }

        /** The verdicts as they were found; the draft is no longer of use. */
        Verdicts verdicts() {
            return new Verdicts(graph, verdicts.row(), counts);
        }
    }
}

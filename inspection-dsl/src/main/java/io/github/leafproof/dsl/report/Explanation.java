package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Calculation;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Severity;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One check to the last step: what its verdict rests on and how it is decided; where an engine was judged, also the numbers,
 * where each comes from, and what came of it.
 *
 * @param stage the title of its stage; empty when it belongs to none
 * @param requirement what must hold; limits in numbers where an engine was judged
 * @param when in which case it applies at all; null where it always does
 * @param decision how sure one has to be
 * @param judged what came of it for one engine; null where none was judged
 * @param gates the checks that must let through first, near or far
 * @param waiting the checks that wait for it, near or far
 * @param facts what the card or the sheet states
 * @param observations what is entered
 * @param gauges what it is measured with
 * @param values what is computed on the way, each after all that it reads
 * @param steps from these to the verdict; empty where no engine was judged
 * @param advice what is said in which case; where an engine was judged, what is said in this one
 * @param cautions what to mind before the work
 * @param because the reasons for its limits, or where they come from
 */
public record Explanation(
        Report.Procedure procedure,
        String name,
        String title,
        String stage,
        Severity severity,
        boolean gate,
        String requirement,
        @Nullable String when,
        String decision,
        @Nullable Judged judged,
        List<Related> gates,
        List<Related> waiting,
        List<Fact> facts,
        List<Observed> observations,
        List<GaugeUsed> gauges,
        List<Computed> values,
        List<Calculation.Step> steps,
        List<String> advice,
        List<String> cautions,
        List<String> because) {

    public Explanation {
        gates = List.copyOf(gates);
        waiting = List.copyOf(waiting);
        facts = List.copyOf(facts);
        observations = List.copyOf(observations);
        gauges = List.copyOf(gauges);
        values = List.copyOf(values);
        steps = List.copyOf(steps);
        advice = List.copyOf(advice);
        cautions = List.copyOf(cautions);
        because = List.copyOf(because);
    }

    /**
     * What came of it.
     *
     * @param check the check as the report has it: outcome, probability, what is missing, notes
     * @param reasons why it came out so, a sentence each
     */
    public record Judged(
            Report.Engine engine,
            Report.Input sheet,
            Report.Input card,
            Report.Input tray,
            LocalDate date,
            Report.Check check,
            List<String> reasons) {
        public Judged {
            reasons = List.copyOf(reasons);
        }
    }

    /** Another check, and what came of it where an engine was judged. */
    public record Related(
            String name, String title, @Nullable Outcome outcome) {}

    /**
     * A fact of the engine.
     *
     * @param meaning what it says, in a sentence or by its type
     * @param value as stated, or why it is not known; null where no engine was judged
     * @param source where it is stated; null where no engine was judged or nothing states it
     */
    public record Fact(
            String name,
            String meaning,
            @Nullable String value,
            @Nullable String source) {}

    /**
     * Something that is entered.
     *
     * @param ask what to do or to look at
     * @param kind what is entered
     * @param gauge what it is measured with; null where no gauge is
     * @param bench how the bench has to be
     * @param when in which case it is asked for; null where it always is
     * @param value what it comes to; null where no engine was judged
     * @param entries what was entered, who, when, with what
     */
    public record Observed(
            String name,
            String ask,
            String kind,
            @Nullable String gauge,
            List<String> bench,
            @Nullable String when,
            @Nullable String value,
            List<String> entries) {
        public Observed {
            bench = List.copyOf(bench);
            entries = List.copyOf(entries);
        }
    }

    /**
     * A gauge.
     *
     * @param kind what it is
     * @param known what is known of it and of each of its leaves that was offered; empty where no engine was judged
     */
    public record GaugeUsed(String name, String kind, List<String> known) {
        public GaugeUsed {
            known = List.copyOf(known);
        }
    }

    /**
     * Something that is computed.
     *
     * @param value what it comes to; null where no engine was judged
     * @param steps how it comes about
     * @param sources what adds to its uncertainty, the largest first
     */
    public record Computed(
            String name, String formula, @Nullable String value, List<Calculation.Step> steps, List<String> sources) {
        public Computed {
            steps = List.copyOf(steps);
            sources = List.copyOf(sources);
        }
    }
}

package io.github.leafproof.dsl.guide;

import io.github.leafproof.dsl.report.Lines;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What an entry has come to: the verdicts that it bears on, in few words, and what to do about those that do not pass. */
final class VerdictText {

    private VerdictText() {}

    /**
     * The verdicts.
     *
     * @param observations the names of everything there is to observe: what was entered has just been typed, and is no reason
     * @param withAdvice whether to tell the advice; not where the next step says the same
     */
    static String of(List<Report.Check> checks, List<String> observations, boolean withAdvice, Look look) {
        Lines lines = look.lines();
        for (Report.Check check : checks) {
            boolean sound = check.outcome() == Outcome.PASSES || check.outcome() == Outcome.TOLERATED;
            String shown = look.paint().outcome(check.outcome(), word(check.outcome()));
            lines.block(sound ? "  " : "  >> ", shown + ": " + check.title() + found(check.value()));
            if (!sound) {
                check.evidence().stream()
                        .filter(line -> observations.stream().noneMatch(name -> line.startsWith(name + ": ")))
                        .limit(1)
                        .forEach(reason -> lines.block("     ", Look.sentence(reason)));
                if (withAdvice) {
                    check.advice().forEach(advice -> lines.block("     -> ", advice));
                }
            }
        }
        return lines.toString();
    }

    private static String word(Outcome outcome) {
        return switch (outcome) {
            case PASSES -> "ok";
            case TOLERATED -> "ok, tolerated";
            default -> outcome.word().toUpperCase(Locale.ROOT);
        };
    }

    private static String found(@Nullable String value) {
        return value == null || value.equals("yes") || value.equals("no") ? "" : " (" + value + ")";
    }
}

package io.github.leafproof.dsl.report;

import io.github.leafproof.inspection.verdict.Condition;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import io.github.leafproof.inspection.verdict.Severity;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A rule of a release as procedures write it: {@code hold when any fails or open}. */
final class RuleWords {

    private RuleWords() {}

    static String of(ReleaseRule.Clause clause) {
        String when = clause.when() instanceof Condition.Always ? " otherwise" : " when " + words(clause.when());
        return clause.result().word() + when;
    }

    private static String words(Condition condition) {
        if (condition instanceof Condition.AnyCheck any) {
            String severity = Stream.of(Severity.values())
                    .filter(any.severities()::contains)
                    .map(Severity::word)
                    .collect(Collectors.joining(" or "));
            return "any " + (severity.isEmpty() ? "" : severity + " ") + outcomes(any.outcomes());
        }
        if (condition instanceof Condition.OneCheck one) {
            return one.name() + " " + outcomes(one.outcomes());
        }
        if (condition instanceof Condition.Either either) {
            return joined(either.parts(), ", ");
        }
        if (condition instanceof Condition.Both both) {
            return joined(both.parts(), " and ");
        }
        return condition instanceof Condition.Not not ? "not " + words(not.part()) : "always";
    }

    private static String joined(Collection<Condition> parts, String with) {
        return parts.stream().map(RuleWords::words).collect(Collectors.joining(with));
    }

    private static String outcomes(Set<Outcome> outcomes) {
        List<String> words = Stream.of(Outcome.values())
                .filter(outcomes::contains)
                .map(Outcome::word)
                .toList();
        return String.join(" or ", words);
    }
}

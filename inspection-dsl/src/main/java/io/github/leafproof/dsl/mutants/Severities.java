package io.github.leafproof.dsl.mutants;

import io.github.leafproof.dsl.mutants.Mutant.Kind;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Declaration.Condition;
import io.github.leafproof.dsl.syntax.Name;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How grave checks are, as far as the release tells severities apart: where no line of it asks for a severity, a check of
 * another one comes to the same.
 */
final class Severities {

    private static final String CRITICAL = "critical";
    private static final String MAJOR = "major";
    private static final List<String> GRAVEST_FIRST = List.of(CRITICAL, MAJOR, "minor");

    private final Set<String> toldApart = new HashSet<>();

    private Severities() {}

    static Severities of(List<Declaration> declarations) {
        Severities severities = new Severities();
        List<Declaration.Rule> rules = declarations.stream()
                .filter(Declaration.Release.class::isInstance)
                .flatMap(release -> ((Declaration.Release) release).rules().stream())
                .toList();
        rules.forEach(rule -> severities.take(rule.condition()));
        if (rules.isEmpty()) {
            // The usual release rejects for critical checks and makes no difference between the others.
            severities.toldApart.add(CRITICAL);
        }
        return severities;
    }

    private void take(@Nullable Condition condition) {
        if (condition instanceof Condition.Joined joined) {
            take(joined.left());
            take(joined.right());
        } else if (condition instanceof Condition.AnyCheck any && any.severity() != null) {
            toldApart.add(any.severity().text());
        }
    }

    /** The check with the nearest severity that makes a difference. */
    void slip(Declaration.Check check, Slips slips) {
        Name written = check.severity();
        String severity = written == null ? MAJOR : written.text();
        GRAVEST_FIRST.stream()
                .filter(other -> !other.equals(severity))
                .filter(other -> toldApart.contains(other) || toldApart.contains(severity))
                .findFirst()
                .ifPresent(other -> {
                    if (written == null) {
                        slips.make(Kind.SEVERITY, check.title().span().behind(), " " + other, severity, other);
                    } else {
                        slips.replace(Kind.SEVERITY, written.span(), other);
                    }
                });
    }
}

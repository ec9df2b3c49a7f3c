package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.message.RehearsalDiagnostics;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Declaration.Entered;
import io.github.leafproof.dsl.syntax.Declaration.Step;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.QuantityException;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.verdict.Outcome;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** What a rehearsal enters and expects, as far as it can be told without running it. */
final class RehearsalProofs {

    private final Problems problems;
    private final List<Declaration.Rehearse> rehearsals;
    private final Map<String, Type> types = new HashMap<>();

    RehearsalProofs(Problems problems, List<Declaration.Rehearse> rehearsals, List<Node.Observation> observed) {
        this.problems = problems;
        this.rehearsals = rehearsals;
        observed.forEach(each -> types.put(each.name(), each.type()));
    }

    /** Entries that nobody could make, and expectations that contradict each other. */
    void look() {
        for (Declaration.Rehearse rehearse : rehearsals) {
            Map<String, Step> expected = new HashMap<>();
            for (Step step : rehearse.steps()) {
                if (step instanceof Step.Enter enter) {
                    Type type = types.get(Env.TOP.key(enter.target()));
                    if (type != null) {
                        entered(enter.entered(), type);
                    }
                } else if (step instanceof Step.ExpectCheck || step instanceof Step.ExpectRelease) {
                    expected(step, expected);
                }
            }
        }
    }

    /** Outcomes that a check never has, whatever is entered. */
    void look(CheckReach reach) {
        for (Declaration.Rehearse rehearse : rehearsals) {
            for (Step step : rehearse.steps()) {
                if (step instanceof Step.ExpectCheck expect) {
                    String check = Env.TOP.key(expect.check());
                    Optional<Outcome> outcome = Outcome.named(expect.outcome().text());
                    if (outcome.isPresent() && !reach.outcomes(check).contains(outcome.get())) {
                        problems.add(RehearsalDiagnostics.neverComes(
                                expect.outcome().span(), check, outcome.get().word()));
                    }
                }
            }
        }
    }

    private void expected(Step step, Map<String, Step> before) {
        String of = step instanceof Step.ExpectCheck check ? Env.TOP.key(check.check()) : "release";
        Step first = before.putIfAbsent(of, step);
        if (first != null && !outcome(first).equals(outcome(step))) {
            problems.add(RehearsalDiagnostics.contradictsItself(step.span(), of, first.span()));
        }
    }

    private static String outcome(Step step) {
        return step instanceof Step.ExpectCheck check
                ? check.outcome().text()
                : step instanceof Step.ExpectRelease release ? release.release().text() : "";
    }

    private void entered(Entered entered, Type type) {
        if (entered instanceof Entered.Cannot) {
            return;
        }
        Span span = entered.span();
        if (entered instanceof Entered.Amount amount
                && type.inArithmetic().isPresent()
                && !(type instanceof Type.Gap)) {
            amount(amount.number(), amount.unit(), span, type);
        } else if (entered instanceof Entered.Readings readings && type instanceof Type.Series series) {
            readings.readings().forEach(each -> amount(each.number(), each.unit(), each.span(), series.of()));
        } else if (entered instanceof Entered.Quoted quoted && type instanceof Type.Measure) {
            quantity(() -> Quantity.parse(quoted.text().plain()), span, type);
        } else if (type instanceof Type.Choice choice && word(entered).isPresent()) {
            String word = word(entered).get();
            if (!choice.options().contains(word)) {
                problems.add(RehearsalDiagnostics.otherEntry(span, type.words()));
            }
        } else if (type instanceof Type.Date) {
            if (word(entered).flatMap(RehearsalProofs::day).isEmpty()) {
                problems.add(RehearsalDiagnostics.otherEntry(span, "date (a day that there is, as in 2026-03-31)"));
            }
        } else if (!isOfKind(entered, type)) {
            problems.add(RehearsalDiagnostics.otherEntry(span, type.words()));
        }
    }

    private static Optional<LocalDate> day(String word) {
        try {
            return Optional.of(LocalDate.parse(word));
        } catch (DateTimeException noDay) {
            return Optional.empty();
        }
    }

    private static Optional<String> word(Entered entered) {
        if (entered instanceof Entered.Word word) {
            return Optional.of(word.word());
        }
        return entered instanceof Entered.Quoted quoted
                ? Optional.of(quoted.text().plain())
                : Optional.empty();
    }

    private static boolean isOfKind(Entered entered, Type type) {
        if (type instanceof Type.YesNo) {
            return entered instanceof Entered.Word word
                    && (word.word().equals("yes") || word.word().equals("no"));
        }
        if (type instanceof Type.Gap) {
            return entered instanceof Entered.Trials;
        }
        if (type instanceof Type.Items) {
            return entered instanceof Entered.Items;
        }
        if (type instanceof Type.Text) {
            return word(entered).isPresent();
        }
        return false;
    }

    private void amount(String number, String unit, Span span, Type type) {
        if (type instanceof Type.Count) {
            if (!unit.isEmpty() || !isWhole(number)) {
                problems.add(RehearsalDiagnostics.otherEntry(span, "count (a whole number, nought or more)"));
            }
            return;
        }
        Dimension wanted = type.inArithmetic().orElseThrow();
        quantity(() -> Quantity.of(number, Unit.parse(unit, wanted)), span, type);
    }

    private void quantity(Supplier<Quantity> reading, Span span, Type type) {
        try {
            if (!reading.get().dimension().equals(type.inArithmetic().orElseThrow())) {
                problems.add(RehearsalDiagnostics.otherEntry(span, type.words()));
            }
        } catch (QuantityException wrong) {
            problems.add(RehearsalDiagnostics.noQuantity(span, wrong.problem(), wrong.remedy()));
        }
    }

    private static boolean isWhole(String number) {
        try {
            BigDecimal value = new BigDecimal(number);
            return value.signum() >= 0 && value.stripTrailingZeros().scale() <= 0;
        } catch (NumberFormatException unreadable) {
            return false;
        }
    }
}

package io.github.leafproof.inspection.record;

import static io.github.leafproof.inspection.record.ReportReading.must;
import static io.github.leafproof.inspection.record.ReportReading.said;
import static io.github.leafproof.inspection.record.ReportReading.texts;

import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Severity;
import io.github.leafproof.inspection.verdict.Side;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** From JSON to one check of a report. */
final class CheckReading {
    private static final List<String> KEYS = List.of(
            "name",
            "title",
            "stage",
            "severity",
            "gate",
            "outcome",
            "side",
            "probability",
            "value",
            "requirement",
            "evidence",
            "advice",
            "cautions",
            "missing",
            "notes",
            "because",
            "as_found");

    private static final List<String> OUTCOMES =
            Arrays.stream(Outcome.values()).map(Outcome::word).toList();

    private static final List<String> SEVERITIES =
            Arrays.stream(Severity.values()).map(Severity::word).toList();

    private CheckReading() {}

    static Optional<Report.Check> check(Spot spot) {
        return spot.fields("a check", KEYS).flatMap(fields -> {
            int before = spot.errors();
            Optional<String> name = must(fields, "name", Spot::anyText);
            Optional<String> title = must(fields, "title", Spot::anyText);
            Optional<String> stage = said(fields, "stage");
            Optional<Severity> severity = must(fields, "severity", s -> s.word("a severity", SEVERITIES))
                    .flatMap(Severity::named);
            Optional<Boolean> gate = must(fields, "gate", Spot::yesNo);
            Optional<Outcome> outcome = outcome(fields);
            Side side = fields.unlessNull("side")
                    .flatMap(s -> s.word("a side", List.of("low", "high")))
                    .map(word -> word.equals("low") ? Side.LOW : Side.HIGH)
                    .orElse(Side.NONE);
            Optional<Report.Probability> probability =
                    fields.unlessNull("probability").flatMap(CheckReading::probability);
            Optional<String> value = said(fields, "value");
            Optional<String> requirement = said(fields, "requirement");
            List<String> evidence = texts(fields, "evidence");
            List<String> advice = texts(fields, "advice");
            List<String> cautions = texts(fields, "cautions");
            List<String> missing = texts(fields, "missing");
            List<String> notes = texts(fields, "notes");
            // Reports written before this key was there give no reasons.
            List<String> because = fields.optional("because").isPresent() ? texts(fields, "because") : List.of();
            Optional<Report.AsFound> asFound = fields.unlessNull("as_found").flatMap(CheckReading::asFound);
            return spot.errors() > before
                    ? Optional.empty()
                    : Optional.of(new Report.Check(
                            name.orElseThrow(),
                            title.orElseThrow(),
                            stage.orElse(null),
                            severity.orElseThrow(),
                            gate.orElseThrow(),
                            outcome.orElseThrow(),
                            side,
                            probability.orElse(null),
                            value.orElse(null),
                            requirement.orElse(null),
                            evidence,
                            advice,
                            cautions,
                            missing,
                            notes,
                            because,
                            asFound.orElse(null)));
        });
    }

    private static Optional<Outcome> outcome(Fields fields) {
        return must(fields, "outcome", s -> s.word("an outcome", OUTCOMES)).flatMap(Outcome::named);
    }

    private static Optional<Report.Probability> probability(Spot spot) {
        return spot.fields("bounds of a probability", List.of("low", "high")).flatMap(fields -> {
            Optional<Double> low = must(fields, "low", CheckReading::share);
            Optional<Double> high = must(fields, "high", CheckReading::share);
            if (low.isEmpty() || high.isEmpty()) {
                return Optional.empty();
            }
            if (low.get() > high.get()) {
                fields.complain(
                        FileMistake.LP631,
                        "the lower bound of a probability, " + low.get() + ", is above the upper, " + high.get(),
                        "the program writes no such report; judge the sheet again");
                return Optional.empty();
            }
            return Optional.of(new Report.Probability(low.get(), high.get()));
        });
    }

    /** Read as it was written, without the bounds of what can be measured: a probability may be as small as it likes. */
    private static Optional<Double> share(Spot spot) {
        if (!(spot.json() instanceof Json.Digits number)) {
            return spot.wrongKind("a probability as a plain number", "write a number from 0 to 1 without quotes");
        }
        double share = Double.parseDouble(number.digits());
        return share >= 0 && share <= 1
                ? Optional.of(share)
                : spot.no(
                        FileMistake.LP624,
                        Shown.briefly(number.digits(), 40) + " is no probability",
                        "probabilities go from 0 to 1");
    }

    private static Optional<Report.AsFound> asFound(Spot spot) {
        return spot.fields("what was found before the adjustment", List.of("outcome", "value"))
                .flatMap(fields -> {
                    Optional<String> value = said(fields, "value");
                    return outcome(fields).map(outcome -> new Report.AsFound(outcome, value.orElse(null)));
                });
    }
}

package io.github.leafproof.dsl.reckon;

import io.github.leafproof.dsl.report.Lines;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.mechanism.Input;
import io.github.leafproof.inspection.mechanism.Mechanism;
import io.github.leafproof.inspection.mechanism.Mechanisms;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The functions that an expression can use, for reading in a terminal. */
public final class FunctionList {

    /** Those of numbers, which docs/language.md describes; those of a gap and of readings need a procedure. */
    private static final List<String> OF_NUMBERS =
            List.of("min(a, b, …)", "max(a, b, …)", "abs(a)", "sqrt(a)", "sin(a)", "cos(a)", "tan(a)");

    private static final String PER = "per ";

    private FunctionList() {}

    /** All of them by subject, with what each tells. */
    public static String all() {
        Lines lines = new Lines();
        lines.line("Numbers");
        lines.block("  ", String.join("  ", OF_NUMBERS));
        for (Mechanisms.Subject subject : Mechanisms.subjects()) {
            lines.line("");
            lines.line(subject.title());
            for (Mechanism mechanism : subject.mechanisms()) {
                lines.block("  ", heading(mechanism));
                lines.block("      ", mechanism.meaning());
            }
        }
        return lines.toString();
    }

    /**
     * Those in whose name or meaning a word stands, with all that each takes and assumes.
     *
     * @return empty where there is none
     */
    public static Optional<String> about(String word) {
        String sought = word.strip().toLowerCase(Locale.ROOT);
        List<Mechanism> found = Mechanisms.named(sought)
                .map(List::of)
                .orElseGet(() -> Mechanisms.all().stream()
                        .filter(each -> (each.name().replace('_', ' ') + " " + each.name() + " " + each.meaning())
                                .toLowerCase(Locale.ROOT)
                                .contains(sought))
                        .toList());
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(found.stream().map(FunctionList::whole).collect(Collectors.joining("\n")));
    }

    private static String heading(Mechanism mechanism) {
        return call(mechanism, mechanism.inputs().stream().map(Input::name).toList());
    }

    /** As the language has it, which knows no unit that begins with a division: {@code 50 / 1 s}. */
    private static String written(Quantity quantity) {
        String unit = quantity.unit().symbol();
        return unit.startsWith(PER) ? quantity.number() + " / 1 " + unit.substring(PER.length()) : quantity.toString();
    }

    private static String call(Mechanism mechanism, List<String> inputs) {
        return mechanism.name() + "(" + String.join(", ", inputs) + ")";
    }

    private static String whole(Mechanism mechanism) {
        Lines lines = new Lines();
        lines.line(heading(mechanism));
        lines.block("    ", mechanism.meaning());
        lines.block("  gives ", mechanism.result().phrase() + ": " + mechanism.formula());
        for (Input input : mechanism.inputs()) {
            lines.block("  " + input.name() + ": ", input.meaning() + ", from " + input.low() + " to " + input.high());
        }
        mechanism.limits().forEach(limit -> lines.block("  limit: ", "the " + limit));
        mechanism.assumptions().forEach(assumption -> lines.block("  assumes: ", assumption));
        lines.block("  source: ", mechanism.source());
        lines.block("  example: ", example(mechanism));
        return lines.toString();
    }

    /** A line that can be typed as it stands, and what is answered. */
    private static String example(Mechanism mechanism) {
        String call = call(
                mechanism,
                mechanism.example().stream().map(FunctionList::written).toList());
        String unit = mechanism.unit().symbol();
        String line = unit.isEmpty() || unit.startsWith(PER) ? call : call + " in " + unit;
        Reckoned answer = Reckoner.in(UnitSystem.METRIC).reckon(SourceText.of("example", line));
        return line + " is " + ((Reckoned.Answer) answer).words();
    }
}

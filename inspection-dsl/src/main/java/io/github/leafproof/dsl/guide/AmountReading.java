package io.github.leafproof.dsl.guide;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.reckon.Reckoned;
import io.github.leafproof.dsl.reckon.Reckoner;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.QuantityException;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Given;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Takes amounts as people write them: with a unit of either system; without one, to be asked for it; or as a small sum.
 *
 * @param system the reader's system
 * @param wanted what is to be an amount of
 * @param shown the unit that the gauge shows, which is named first; null where that is not known
 */
record AmountReading(
        UnitSystem system, Dimension wanted, @Nullable Unit shown) {

    private static final Pattern SCALE = Pattern.compile("(?<=[\\d\\s])\\s*([CF])$");

    /** One amount. */
    Heard amount(String line) {
        try {
            Quantity read = Quantity.parse(scaled(line));
            return fits(read) ? new Heard.Answer(new Given.Words(scaled(line))) : unfit(line, read);
        } catch (QuantityException wrong) {
            return reckoned(line)
                    .map(sum -> (Heard) new Heard.Answer(new Given.Words(sum)))
                    .orElseGet(() -> new Heard.Unclear(wrong.problem(), wrong.remedy()));
        }
    }

    /** Where a temperature is wanted C and F can mean nothing else, and the sign for a degree is on few keyboards. */
    private String scaled(String line) {
        return wanted.isAbsolute() ? SCALE.matcher(line).replaceFirst(" °$1") : line;
    }

    /** Amounts with commas between them; the unit behind the last is that of all that have none. */
    Heard series(String line) {
        List<String> parts =
                Arrays.stream(line.split("[,;]", -1)).map(String::strip).toList();
        List<String> readings = new ArrayList<>();
        try {
            Unit last = Quantity.parse(parts.get(parts.size() - 1)).unit();
            for (String part : parts) {
                Quantity read = Quantity.parse(part);
                boolean bare = read.unit().equals(Unit.ONE) && !last.equals(Unit.ONE);
                Quantity meant = bare ? Quantity.parse(part + " " + last.symbol()) : read;
                if (!fits(meant)) {
                    return unfit(line, meant);
                }
                readings.add(bare ? part + " " + last.symbol() : part);
            }
            return new Heard.Answer(new Given.Series(readings));
        } catch (QuantityException wrong) {
            return new Heard.Unclear(wrong.problem(), wrong.remedy());
        }
    }

    private boolean fits(Quantity read) {
        return read.dimension().equals(wanted);
    }

    private Heard unfit(String line, Quantity read) {
        if (read.unit().equals(Unit.ONE)) {
            List<String> units = usualUnits();
            return units.size() == 1
                    ? new Heard.Begun(line, line + " " + units.get(0) + "? An empty line is yes.", units.get(0))
                    : new Heard.Begun(line, line + " of what: " + either(units) + "?", "");
        }
        return new Heard.Unclear(
                read + " is " + read.dimension().phrase() + ", and " + wanted.phrase() + " is wanted",
                "write it in " + either(usualUnits()));
    }

    /** In which units people give it, the reader's own first. */
    List<String> usualUnits() {
        UnitSystem other = system == UnitSystem.METRIC ? UnitSystem.INCH : UnitSystem.METRIC;
        Set<String> usual = new LinkedHashSet<>();
        if (shown != null) {
            usual.add(shown.symbol());
        }
        for (UnitSystem each : List.of(system, other)) {
            usual.add(each.unitFor(wanted, 0).symbol());
            if (wanted.equals(Dimension.LENGTH) && each == UnitSystem.INCH) {
                usual.add("in");
            }
        }
        Stream<String> more = wanted.equals(Dimension.ANGLE)
                ? Stream.of("turn")
                : wanted.equals(Dimension.TIME) ? Stream.of("min", "h") : Stream.empty();
        more.forEach(usual::add);
        usual.remove("");
        return List.copyOf(usual);
    }

    private static String either(List<String> words) {
        String last = words.get(words.size() - 1);
        return words.size() == 1 ? last : String.join(", ", words.subList(0, words.size() - 1)) + " or " + last;
    }

    /** A sum of exact amounts, as somebody reckons who measures twice: {@code 24.5 mm - 23 mm}. */
    private Optional<String> reckoned(String line) {
        Reckoned reckoned = Reckoner.in(system).reckon(SourceText.of("line", line));
        boolean fits = reckoned instanceof Reckoned.Answer answer
                && answer.value() instanceof Value.Amount amount
                && amount.estimate().isExact()
                && amount.estimate().dimension().equals(wanted);
        return fits ? Optional.of(shown((Reckoned.Answer) reckoned)) : Optional.empty();
    }

    private String shown(Reckoned.Answer answer) {
        Estimate sum = ((Value.Amount) answer.value()).estimate();
        return Display.of(sum, system);
    }
}

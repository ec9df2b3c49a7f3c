package io.github.leafproof.inspection.quantity;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads and writes units made of others: {@code kg/m³}, {@code in·lbf}, {@code mm per turn}. */
final class UnitText {
    private static final int LONGEST = 60;
    private static final int HIGHEST_POWER = 9;
    private static final Pattern PER = Pattern.compile("(?:^|(?<=\\s))per\\s+");
    private static final Pattern PRODUCT = Pattern.compile("\\s*[·⋅×*]\\s*|\\s+");
    private static final Pattern RAISED = Pattern.compile("(.*[^-\\d^])\\^?(-?\\d{1,3})");

    private UnitText() {}

    static Unit read(String text, Function<String, Optional<Unit>> find) {
        String line = text.strip();
        if (line.isEmpty()) {
            return Unit.ONE;
        }
        if (line.length() > LONGEST) {
            throw new QuantityException(
                    "a unit of " + line.length() + " characters is too long to be one",
                    "write the number, a blank and the unit, such as 0.05 mm");
        }
        String[] parts = PER.matcher(line).replaceAll("/").split("/", -1);
        Unit unit = numerator(parts[0].strip(), line, find);
        for (int i = 1; i < parts.length; i++) {
            unit = unit.dividedBy(denominator(parts[i].strip(), line, find));
        }
        return unit;
    }

    private static Unit numerator(String part, String whole, Function<String, Optional<Unit>> find) {
        if (part.isEmpty() || part.equals("1")) {
            return Unit.ONE;
        }
        Unit unit = Unit.ONE;
        for (String term : PRODUCT.split(part, -1)) {
            unit = unit.times(term(term, whole, find));
        }
        return unit;
    }

    // What W/m·K means depends on whom you ask, so it is not read at all.
    private static Unit denominator(String part, String whole, Function<String, Optional<Unit>> find) {
        if (part.isEmpty()) {
            throw new QuantityException(
                    "the unit " + whole + " ends where another unit should follow", "write the unit after /");
        }
        if (PRODUCT.split(part, -1).length > 1) {
            throw new QuantityException(
                    "the unit " + whole + " can be read in two ways",
                    "after / or per give one unit at a time, such as J/kg/K");
        }
        return term(part, whole, find);
    }

    private static Unit term(String written, String whole, Function<String, Optional<Unit>> find) {
        Optional<Unit> known = find.apply(written);
        if (known.isPresent()) {
            return known.get();
        }
        Matcher raised = RAISED.matcher(Superscript.lowered(written));
        if (!raised.matches()) {
            throw unknown(written, whole);
        }
        String name = raised.group(1);
        int power = Integer.parseInt(raised.group(2));
        if (Math.abs(power) > HIGHEST_POWER) {
            throw new QuantityException(
                    "the power in the unit " + whole + " is too high", "no unit needs a power beyond " + HIGHEST_POWER);
        }
        return find.apply(name).orElseThrow(() -> unknown(name, whole)).power(power);
    }

    private static QuantityException unknown(String written, String whole) {
        String inside = written.equals(whole) ? "" : " in " + whole;
        return new QuantityException("there is no unit \"" + written + "\"" + inside, UnitTable.suggestion(written));
    }

    /** The unit as text: numerators joined by a dot, then each denominator. */
    static String write(Map<Atom, Integer> powers) {
        StringBuilder text = new StringBuilder();
        powers.forEach((atom, power) -> {
            if (power > 0) {
                text.append(text.isEmpty() ? "" : "·").append(atom.symbol()).append(Superscript.ofPower(power));
            }
        });
        boolean bare = text.isEmpty();
        powers.forEach((atom, power) -> {
            if (power < 0) {
                text.append(sign(atom, bare, text.isEmpty()))
                        .append(atom.symbol())
                        .append(Superscript.ofPower(-power));
            }
        });
        return text.toString();
    }

    // A pitch is said "millimetres per turn", a density is written kg/m³.
    private static String sign(Atom atom, boolean bare, boolean first) {
        if (!bare && !atom.symbol().equals("turn")) {
            return "/";
        }
        return first ? "per " : " per ";
    }
}

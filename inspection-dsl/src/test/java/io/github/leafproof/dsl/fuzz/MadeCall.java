package io.github.leafproof.dsl.fuzz;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;

import io.github.leafproof.inspection.mechanism.Mechanism;
import io.github.leafproof.inspection.mechanism.Mechanisms;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Calls of the calculations of the trade: given amounts of the right kinds, be they in range or not. */
record MadeCall(Mechanism mechanism, Chance chance, MadeExpression values) {

    private static final Map<Dimension, List<Mechanism>> BY_RESULT =
            Mechanisms.all().stream().collect(groupingBy(Mechanism::result));

    static MadeCall any(Chance chance, MadeExpression values) {
        return new MadeCall(chance.of(Mechanisms.all()), chance, values);
    }

    /** A call that comes to an amount of this kind. */
    static String of(Kind kind, Chance chance, MadeExpression values, int inner) {
        List<Mechanism> suited = BY_RESULT.entrySet().stream()
                .filter(entry -> Kind.of(entry.getKey()).equals(Optional.of(kind)))
                .flatMap(entry -> entry.getValue().stream())
                .toList();
        return new MadeCall(chance.of(suited), chance, values).text(inner);
    }

    /** Such a call compared with an amount of what it comes to. */
    String compared(int inner) {
        String limit = amount(Quantity.of(chance.below(3), mechanism.unit()));
        return text(inner) + chance.of(List.of(" at most ", " at least ")) + limit;
    }

    String text(int inner) {
        return IntStream.range(0, mechanism.inputs().size())
                .mapToObj(input -> argument(input, inner))
                .collect(joining(", ", mechanism.name() + "(", ")"));
    }

    /** An amount of the worked example, or any other one where expressions of its kind can be made. */
    private String argument(int input, int inner) {
        Optional<Kind> kind = Kind.of(mechanism.inputs().get(input).dimension());
        if (kind.isPresent() && chance.oneIn(3)) {
            return values.of(kind.get(), Math.min(inner, 1));
        }
        return amount(mechanism.example().get(input))
                + (kind.isPresent() && kind.get() != Kind.TEMPERATURE && chance.oneIn(4) ? " ± 1 %" : "");
    }

    /** A number and its unit; in procedures no unit begins with {@code per}. */
    private static String amount(Quantity amount) {
        String written = amount.toString();
        int per = written.indexOf(" per ");
        boolean bare = per >= 0 && !written.substring(0, per).contains(" ");
        return bare ? "(" + written.substring(0, per) + " / 1 " + written.substring(per + 5) + ")" : written;
    }
}

package io.github.leafproof.dsl.guide;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.session.Standing;
import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.gauge.Leaf;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Which whole lines a begun one may become: options, units behind a number, leaves and what they did, names, commands. */
final class Completing {

    private static final Pattern NUMBER = Pattern.compile("(.*\\d)\\s*([^\\d\\s]*)");

    private Completing() {}

    static List<String> opening(@Nullable Opening opening, String begun) {
        if (opening == null) {
            return List.of();
        }
        Optional<Opening.Detail> detail = opening.asks();
        return detail.isPresent() && detail.get() == Opening.Detail.VARIANT
                ? beginning(begun, opening.variants())
                : detail.isPresent() && detail.get() == Opening.Detail.CONDITION
                        ? beginning(begun, List.of("new in box", "old stock", "used"))
                        : List.of();
    }

    static List<String> of(Standing standing, @Nullable Asked asked, String begun) {
        List<String> lines = new ArrayList<>();
        if (asked != null) {
            lines.addAll(answers(asked, begun));
        }
        lines.addAll(beginning(
                begun, Arrays.stream(Command.values()).map(Command::word).toList()));
        for (Command named : List.of(Command.GO, Command.WHY, Command.ADJUST)) {
            if (begun.startsWith(named.word() + " ")) {
                lines.addAll(beginning(
                        begun,
                        standing.judgement().graph().observations().stream()
                                .map(Node.Observation::name)
                                .map(name -> named.word() + " " + name)
                                .toList()));
            }
        }
        return lines;
    }

    private static List<String> answers(Asked asked, String begun) {
        Type type = asked.observation().type();
        if (type instanceof Type.YesNo) {
            return beginning(begun, List.of("yes", "no"));
        }
        if (type instanceof Type.Choice choice) {
            return beginning(begun, choice.options());
        }
        if (type instanceof Type.Items) {
            return beginning(begun, List.of("all", "all but ", "nothing"));
        }
        if (type instanceof Type.Gap) {
            return trials(asked, begun);
        }
        Type amount = type instanceof Type.Series series ? series.of() : type;
        return amount.inArithmetic().isPresent() && !(amount instanceof Type.Count)
                ? units(new AmountReading(asked.units(), amount.inArithmetic().get(), asked.shown()), begun)
                : List.of();
    }

    /** Behind a number the units that it may be of. */
    private static List<String> units(AmountReading reading, String begun) {
        Matcher number = NUMBER.matcher(begun);
        return number.matches()
                ? reading.usualUnits().stream()
                        .filter(unit -> unit.startsWith(number.group(2)))
                        .map(unit -> number.group(1) + " " + unit)
                        .toList()
                : List.of();
    }

    /** A leaf of the set, or behind one what it did. */
    private static List<String> trials(Asked asked, String begun) {
        List<String> lines = new ArrayList<>();
        int from = Math.max(begun.lastIndexOf('+'), begun.lastIndexOf(',')) + 1;
        String before = begun.substring(0, from) + (from > 0 ? " " : "");
        String last = begun.substring(from).strip();
        for (Leaf leaf : asked.set().orElseThrow().leaves()) {
            String marking = Asked.bare(leaf);
            if (marking.startsWith(last) && !marking.equals(last)) {
                lines.add(before + marking);
            } else if (last.startsWith(marking)) {
                List<String> results = Arrays.stream(TrialResult.values())
                        .map(result -> marking + " " + result.word())
                        .toList();
                beginning(last, results).forEach(result -> lines.add(before + result));
            }
        }
        return lines;
    }

    private static List<String> beginning(String begun, List<String> all) {
        return all.stream().filter(each -> each.startsWith(begun)).toList();
    }
}

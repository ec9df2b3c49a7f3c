package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Chosen;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Limits that are upside down once names are looked through: always, or for one of the choices that they hang on. */
final class LimitReach {

    private static final int MOST_CASES = 64;
    private static final int DEEPEST = 100;

    private final Problems problems;
    private final Possibilities always;

    LimitReach(Problems problems, Possibilities always) {
        this.problems = problems;
        this.always = always;
    }

    void look(Sites sites) {
        sites.limits.forEach(this::look);
    }

    private void look(Sites.Limits site) {
        if (isUpsideDown(always, site)) {
            upsideDown(site, "");
            return;
        }
        Map<Integer, String> choices = new LinkedHashMap<>();
        Stream.of(site.held().lower(), site.held().upper()).forEach(limit -> {
            if (limit != null) {
                choices(limit, choices, new HashSet<>(), 0);
            }
        });
        List<Case> cases = List.of(new Case(always, List.of()));
        for (Map.Entry<Integer, String> choice : choices.entrySet()) {
            cases = split(cases, choice.getKey(), choice.getValue());
        }
        cases.stream()
                .filter(each -> isUpsideDown(each.possibilities, site))
                .findFirst()
                .ifPresent(each -> upsideDown(site, " where " + String.join(" and ", each.words)));
    }

    private record Case(Possibilities possibilities, List<String> words) {}

    private static List<Case> split(List<Case> cases, int slot, String name) {
        List<Case> all = new ArrayList<>();
        for (Case each : cases) {
            if (each.possibilities.of(new Slot(slot, name)) instanceof Possible.Among among) {
                among.values().stream()
                        .map(Value.Pick.class::cast)
                        .sorted((a, b) -> Integer.compare(a.option(), b.option()))
                        .forEach(pick -> {
                            List<String> words = new ArrayList<>(each.words);
                            words.add(name + " is " + pick.word());
                            all.add(new Case(each.possibilities.with(slot, new Possible.Among(Set.of(pick))), words));
                        });
            }
        }
        return all.isEmpty() || all.size() > MOST_CASES ? cases : all;
    }

    private static boolean isUpsideDown(Possibilities possibilities, Sites.Limits site) {
        return new Held(possibilities, site.held()).isUpsideDown();
    }

    /** The choices that a limit hangs on, through derived values. */
    private void choices(Formula formula, Map<Integer, String> found, Set<Integer> seen, int depth) {
        if (depth > DEEPEST || always.ground().isTired()) {
            return;
        }
        if (formula instanceof Chosen chosen
                && chosen.subject() instanceof Slot slot
                && always.of(slot) instanceof Possible.Among) {
            found.put(slot.number(), slot.words());
        }
        if (formula instanceof Slot slot && seen.add(slot.number())) {
            always.ground()
                    .derived(slot.number())
                    .ifPresent(derived -> choices(derived.formula(), found, seen, depth + 1));
        }
        formula.parts().forEach(part -> choices(part, found, seen, depth + 1));
    }

    private void upsideDown(Sites.Limits site, String where) {
        LimitsHeld held = site.held();
        if (held.lower() == null || held.upper() == null) {
            return;
        }
        problems.add(
                site.low().equals(site.high())
                        ? StructureDiagnostics.negativeTolerance(site.low(), where)
                        : StructureDiagnostics.limitsUpsideDown(
                                site.low(),
                                held.lower().words(),
                                site.high(),
                                held.upper().words(),
                                where));
    }
}

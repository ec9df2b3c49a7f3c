package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.BenchState;
import io.github.leafproof.dsl.graph.GaugeNeed;
import io.github.leafproof.dsl.graph.Hazard;
import io.github.leafproof.dsl.message.NameDiagnostics;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.message.TypeDiagnostics;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Name;
import io.github.leafproof.dsl.syntax.TypeWords;
import io.github.leafproof.inspection.quantity.Dimension;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The gauges, the bench states and the hazards that a procedure speaks of. */
final class Bench {

    private final Problems problems;
    private final Outline outline;
    private final TypeReader types;
    private final Map<String, GaugeNeed> gauges = new LinkedHashMap<>();
    private final Set<String> usedGauges = new HashSet<>();
    private final Map<String, BenchState> states = new LinkedHashMap<>();
    private final Map<String, Set<String>> reached = new HashMap<>();

    Bench(Problems problems, Outline outline, TypeReader types) {
        this.problems = problems;
        this.outline = outline;
        this.types = types;
        outline.hazards.values().forEach(hazard -> {
            if (Hazard.Usual.named(hazard.name().text()).isPresent()) {
                problems.add(NameDiagnostics.hidden(hazard.name(), "a hazard that every procedure knows"));
            }
        });
        outline.gauges.values().forEach(gauge -> gauges.put(gauge.name().text(), gauge(gauge)));
        outline.setups.values().forEach(setup -> states.put(setup.name().text(), state(setup)));
    }

    /** The gauges that must be in the tray. Of those that a part declares for all its users, only what this one uses. */
    List<GaugeNeed> gauges() {
        return gauges.values().stream()
                .filter(gauge -> usedGauges.contains(gauge.name())
                        || !outline.isInPart(Objects.requireNonNull(outline.gauges.get(gauge.name()))
                                .span()))
                .toList();
    }

    List<BenchState> states() {
        return List.copyOf(states.values());
    }

    private GaugeNeed gauge(Declaration.Gauge gauge) {
        Dimension of = null;
        TypeWords words = gauge.of();
        if (words != null) {
            Type type = types.read(words);
            if (type instanceof Type.Measure measure) {
                of = measure.dimension();
            } else if (type != null) {
                problems.add(TypeDiagnostics.noReading(words.span(), type.words()));
            }
        }
        GaugeNeed.Kind kind = GaugeNeed.Kind.valueOf(gauge.kind().name());
        return new GaugeNeed(gauge.name().text(), kind, of);
    }

    /** The gauge of that name, or null after saying that there is none. */
    @Nullable
    GaugeNeed gauge(Name name) {
        usedGauges.add(name.text());
        GaugeNeed gauge = gauges.get(name.text());
        if (gauge == null && !outline.isBroken(name.text())) {
            problems.add(NameDiagnostics.unknownGauge(name, problems.near(gauges.keySet())));
        }
        return gauge;
    }

    private BenchState state(Declaration.Setup setup) {
        if (setup.changes().size() > TypeReader.MOST_OPTIONS) {
            Declaration.Change first = setup.changes().get(TypeReader.MOST_OPTIONS);
            problems.add(StructureDiagnostics.listTooLong(first.from().span(), TypeReader.MOST_OPTIONS));
            return new BenchState(setup.name().text(), setup.starts().text(), List.of(), List.of());
        }
        Set<String> known = new LinkedHashSet<>(List.of(setup.starts().text()));
        setup.changes().forEach(change -> known.add(change.to().text()));
        List<BenchState.Change> changes = new ArrayList<>();
        for (Declaration.Change change : setup.changes()) {
            isState(setup, known, change.from());
            changes.add(new BenchState.Change(
                    change.from().text(), change.to().text(), change.how().plain(), hazards(change.hazards())));
        }
        List<BenchState.While> carries = new ArrayList<>();
        for (Declaration.While lasting : setup.whiles()) {
            isState(setup, known, lasting.state());
            carries.add(new BenchState.While(lasting.state().text(), hazards(lasting.hazards())));
        }
        return new BenchState(setup.name().text(), setup.starts().text(), changes, carries);
    }

    /** A state is one that a setup starts in or that a change leads to. */
    private void isState(Declaration.Setup setup, Set<String> known, Name state) {
        if (!known.contains(state.text()) && !problems.isHurt(setup.span())) {
            problems.add(NameDiagnostics.unknownState(state, setup.name().text(), known));
        }
    }

    /** The states that an observation needs. */
    List<BenchState.Need> needs(Declaration.Observe observe) {
        List<BenchState.Need> needs = new ArrayList<>();
        Set<String> given = new HashSet<>();
        for (Declaration.State wanted : observe.states()) {
            BenchState state = states.get(wanted.setup().text());
            if (state == null) {
                unknownSetup(wanted.setup());
            } else if (!given.add(state.name())) {
                problems.add(StructureDiagnostics.twoStates(wanted.span(), state.name()));
            } else {
                isReachable(state, wanted);
                needs.add(new BenchState.Need(state.name(), wanted.state().text()));
            }
        }
        return needs;
    }

    private void unknownSetup(Name name) {
        if (!outline.isBroken(name.text())) {
            problems.add(NameDiagnostics.unknownSetup(name, problems.near(states.keySet())));
        }
    }

    private void isReachable(BenchState state, Declaration.State wanted) {
        Declaration.Setup setup = Objects.requireNonNull(outline.setups.get(state.name()));
        if (reached(state).contains(wanted.state().text()) || problems.isHurt(setup.span())) {
            return;
        }
        Set<String> known = new LinkedHashSet<>(List.of(state.starts()));
        state.changes().forEach(change -> known.add(change.to()));
        if (!known.contains(wanted.state().text())) {
            problems.add(NameDiagnostics.unknownState(wanted.state(), state.name(), known));
        } else {
            problems.add(StructureDiagnostics.noWayTo(
                    wanted.span(),
                    state.name(),
                    state.starts(),
                    wanted.state().text(),
                    setup.name().span()));
        }
    }

    /** All states that some changes lead to from the first. */
    private Set<String> reached(BenchState state) {
        return reached.computeIfAbsent(state.name(), name -> {
            Map<String, List<String>> next = new HashMap<>();
            state.changes()
                    .forEach(change -> next.computeIfAbsent(change.from(), from -> new ArrayList<>())
                            .add(change.to()));
            Set<String> all = new HashSet<>(Set.of(state.starts()));
            Deque<String> left = new ArrayDeque<>(all);
            while (!left.isEmpty()) {
                next.getOrDefault(left.remove(), List.of()).stream()
                        .filter(all::add)
                        .forEach(left::add);
            }
            return all;
        });
    }

    /** The hazards of those names; says of each other name that there is no such hazard. */
    List<Hazard> hazards(List<Name> named) {
        List<Hazard> hazards = new ArrayList<>();
        for (Name name : named) {
            Declaration.HazardText own = outline.hazards.get(name.text());
            Optional<Hazard> hazard = own != null
                    ? Optional.of(new Hazard(name.text(), own.caution().plain()))
                    : Hazard.Usual.named(name.text());
            hazard.ifPresent(hazards::add);
            if (hazard.isEmpty() && !outline.isBroken(name.text())) {
                problems.add(NameDiagnostics.unknownHazard(name, known()));
            }
        }
        return hazards;
    }

    private List<String> known() {
        List<String> known = new ArrayList<>(problems.near(outline.hazards.keySet()));
        Arrays.stream(Hazard.Usual.values())
                .map(usual -> usual.name().toLowerCase(Locale.ROOT))
                .forEach(known::add);
        return known;
    }
}

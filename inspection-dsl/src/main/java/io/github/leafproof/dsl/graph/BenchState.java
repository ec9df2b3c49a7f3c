package io.github.leafproof.dsl.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Something about the bench or the engine that steps need in one state or another: the plug fitted or out, the covers
 * on or off.
 *
 * @param name what it is: {@code plug}
 * @param starts the state it is in before the first step
 * @param changes how it is brought from one state to another
 * @param carries the hazards that last while a state lasts
 */
public record BenchState(String name, String starts, List<Change> changes, List<While> carries) {

    public BenchState {
        changes = List.copyOf(changes);
        carries = List.copyOf(carries);
    }

    /** How one state is left for another, and the hazards of doing so. */
    public record Change(String from, String to, String how, List<Hazard> hazards) {
        public Change {
            hazards = List.copyOf(hazards);
        }
    }

    /** The hazards of a state. */
    public record While(String state, List<Hazard> hazards) {
        public While {
            hazards = List.copyOf(hazards);
        }
    }

    /** A state that a step needs: {@code plug out}. */
    public record Need(String name, String state) {}

    /** The hazards that last while it is in a state. */
    public List<Hazard> hazardsWhile(String state) {
        return carries.stream()
                .filter(carried -> carried.state().equals(state))
                .flatMap(carried -> carried.hazards().stream())
                .toList();
    }

    /** Whether it can ever be in this state. */
    public boolean knows(String state) {
        return starts.equals(state)
                || changes.stream().anyMatch(change -> change.to().equals(state));
    }

    /** How to come from one state to another in one change, if there is such a change. */
    public Optional<Change> change(String from, String to) {
        return changes.stream()
                .filter(change -> change.from().equals(from) && change.to().equals(to))
                .findFirst();
    }

    /** The fewest changes that lead from one state to another: none where they are the same, empty where none lead. */
    public Optional<List<Change>> way(String from, String to) {
        Map<String, List<Change>> ways = new LinkedHashMap<>();
        ways.put(from, List.of());
        ArrayDeque<String> reached = new ArrayDeque<>(List.of(from));
        while (!reached.isEmpty() && !ways.containsKey(to)) {
            String state = reached.remove();
            for (Change change : changes) {
                if (change.from().equals(state) && !ways.containsKey(change.to())) {
                    List<Change> longer = new ArrayList<>(ways.get(state));
                    longer.add(change);
                    ways.put(change.to(), List.copyOf(longer));
                    reached.add(change.to());
                }
            }
        }
        return Optional.ofNullable(ways.get(to));
    }
}

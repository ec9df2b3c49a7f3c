package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.record.Act;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.Given;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The acts of a session that count: those that nobody took back, the oldest first.
 *
 * @param firm how many of them can no longer be taken back, since a sheet was written that shows what came of them
 */
record Course(List<Act> acts, int firm) {

    static final Course NOTHING_DONE = new Course(List.of(), 0);

    Course {
        acts = List.copyOf(acts);
    }

    static Course of(List<Act> all) {
        List<Act> counting = new ArrayList<>();
        int firm = 0;
        for (Act act : all) {
            if (act instanceof Act.TookBack) {
                if (counting.size() > firm) {
                    counting.remove(counting.size() - 1);
                }
            } else if (act instanceof Act.Finished) {
                firm = counting.size();
            } else if (!(act instanceof Act.Opened)) {
                counting.add(act);
            }
        }
        return new Course(counting, firm);
    }

    /** With one more act. */
    Course after(Act act) {
        if (act instanceof Act.TookBack) {
            return last().isEmpty() ? this : new Course(acts.subList(0, acts.size() - 1), firm);
        }
        if (act instanceof Act.Finished) {
            return new Course(acts, acts.size());
        }
        if (act instanceof Act.Opened) {
            return this;
        }
        List<Act> longer = new ArrayList<>(acts);
        longer.add(act);
        return new Course(longer, firm);
    }

    /** What would be taken back next. */
    Optional<Act> last() {
        return acts.size() > firm ? Optional.of(acts.get(acts.size() - 1)) : Optional.empty();
    }

    List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        for (Act act : acts) {
            if (act instanceof Act.Entered entered) {
                entries.add(entered.entry());
            }
        }
        return entries;
    }

    /** How the bench stands: as it was brought, and as it had to be for what was observed. */
    Map<String, String> bench(CheckGraph graph) {
        Map<String, String> bench = new HashMap<>();
        graph.states().forEach(state -> bench.put(state.name(), state.starts()));
        for (Act act : acts) {
            if (act instanceof Act.Brought brought) {
                bench.put(brought.state(), brought.to());
            } else if (act instanceof Act.Entered entered
                    && !(entered.entry().given() instanceof Given.Cannot)
                    && graph.node(entered.entry().observe()).orElse(null) instanceof Node.Observation observation) {
                observation.needs().forEach(need -> bench.put(need.name(), need.state()));
            }
        }
        return bench;
    }

    /** What was passed over and not entered since. */
    Set<String> skipped() {
        Set<String> skipped = new LinkedHashSet<>();
        for (Act act : acts) {
            if (act instanceof Act.Skipped skip) {
                skipped.add(skip.observe());
            } else if (act instanceof Act.Entered entered) {
                skipped.remove(entered.entry().observe());
            } else if (act instanceof Act.PutOff later) {
                skipped.remove(later.observe());
            }
        }
        return skipped;
    }

    /** How often something was put off since it was last entered. */
    Map<String, Integer> timesPutOff() {
        Map<String, Integer> times = new HashMap<>();
        for (Act act : acts) {
            if (act instanceof Act.PutOff later) {
                times.merge(later.observe(), 1, Integer::sum);
            } else if (act instanceof Act.Entered entered) {
                times.remove(entered.entry().observe());
            }
        }
        return times;
    }

    /** What was entered, passed over or put off, each once, in the order in which it was last. */
    List<String> visited() {
        LinkedHashSet<String> visited = new LinkedHashSet<>();
        for (Act act : acts) {
            String name = subject(act);
            if (name != null) {
                visited.remove(name);
                visited.add(name);
            }
        }
        return List.copyOf(visited);
    }

    /** The observation that an act is about; null where it is about none. */
    static @Nullable String subject(Act act) {
        if (act instanceof Act.Entered entered) {
            return entered.entry().observe();
        }
        if (act instanceof Act.Skipped skip) {
            return skip.observe();
        }
        return act instanceof Act.PutOff later ? later.observe() : null;
    }
}

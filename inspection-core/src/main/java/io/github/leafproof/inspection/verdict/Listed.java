package io.github.leafproof.inspection.verdict;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Checks in a list, gone through for whatever is asked. */
record Listed(List<CheckOutcome> listed) implements Tally {
    Listed {
        listed = List.copyOf(listed);
    }

    @Override
    public boolean isEmpty() {
        return listed.isEmpty();
    }

    @Override
    public int count(Severity severity, Outcome outcome) {
        return (int) listed.stream()
                .filter(check -> check.severity() == severity && check.outcome() == outcome)
                .count();
    }

    @Override
    public Optional<Outcome> outcome(String check) {
        return listed.stream()
                .filter(each -> each.name().equals(check))
                .map(CheckOutcome::outcome)
                .findFirst();
    }

    @Override
    public Stream<CheckOutcome> checks() {
        return listed.stream();
    }
}

package io.github.leafproof.dsl.guide;

import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Feeler;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.QuantityException;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.record.TrialGiven;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Takes what leaves did as people say it: {@code 0.05 passes}, {@code 0.05 + 0.04 drags}, {@code refuses} of the leaf that
 * was advised, several with commas between them.
 */
final class TrialLine {

    private static final Map<String, TrialResult> WORDS = Map.ofEntries(
            Map.entry("passes", TrialResult.PASSES),
            Map.entry("pass", TrialResult.PASSES),
            Map.entry("p", TrialResult.PASSES),
            Map.entry("goes", TrialResult.PASSES),
            Map.entry("enters", TrialResult.PASSES),
            Map.entry("refuses", TrialResult.REFUSES),
            Map.entry("refuse", TrialResult.REFUSES),
            Map.entry("r", TrialResult.REFUSES),
            Map.entry("stops", TrialResult.REFUSES),
            Map.entry("drags", TrialResult.DRAGS),
            Map.entry("drag", TrialResult.DRAGS),
            Map.entry("d", TrialResult.DRAGS),
            Map.entry("tight", TrialResult.DRAGS));

    private final Asked asked;
    private final FeelSet set;
    private final List<TrialGiven> trials = new ArrayList<>();
    private @Nullable Heard other;

    private TrialLine(Asked asked, FeelSet set) {
        this.asked = asked;
        this.set = set;
    }

    static Heard read(Asked asked, String line) {
        TrialLine reading = new TrialLine(asked, asked.set().orElseThrow());
        for (String part : line.split("[,;]|\\band\\b", -1)) {
            if (reading.other == null) {
                reading.take(part.strip(), line);
            }
        }
        return reading.other != null ? reading.other : new Heard.Answer(new Given.Trials(reading.trials));
    }

    /** One or more trials without commas between them: the word stands behind each leaf, or before each. */
    private void take(String part, String line) {
        List<String> leaf = new ArrayList<>();
        List<String> words = Arrays.asList(part.split("\\s+"));
        boolean before = words.size() > 1 && WORDS.containsKey(lower(words.get(0)));
        TrialResult waiting = null;
        for (String word : words) {
            TrialResult result = WORDS.get(lower(word));
            if (result == null) {
                leaf.add(word);
            } else if (!before) {
                add(String.join(" ", leaf), result);
                leaf.clear();
            } else {
                if (waiting != null) {
                    add(String.join(" ", leaf), waiting);
                    leaf.clear();
                }
                waiting = result;
            }
        }
        if (waiting != null) {
            add(String.join(" ", leaf), waiting);
        } else if (!leaf.isEmpty()) {
            unsaid(String.join(" ", leaf), line);
        }
    }

    private static String lower(String word) {
        return word.toLowerCase(Locale.ROOT);
    }

    private void add(String leaf, TrialResult result) {
        Optional<List<String>> markings = leaf.isEmpty() ? advised() : markings(leaf);
        markings.ifPresent(found -> trials.add(new TrialGiven(found, result, "")));
    }

    private Optional<List<String>> advised() {
        if (asked.offer() == null) {
            unclear(
                    "which leaf did that?",
                    "write its marking before it: " + Asked.bare(set.leaves().get(0)) + " passes");
        }
        return Optional.ofNullable(asked.offer()).map(TrialLine::markings);
    }

    private static List<String> markings(Feeler feeler) {
        return feeler.leaves().stream().map(leaf -> leaf.label()).toList();
    }

    /** The markings as the set has them, so that the sheet names leaves by what is stamped on them. */
    private Optional<List<String>> markings(String written) {
        List<Quantity> named = new ArrayList<>();
        String[] leaves = written.split("[+&]", -1);
        try {
            Unit last = unit(Quantity.parse(leaves[leaves.length - 1].strip()));
            for (String leaf : leaves) {
                Quantity marking = Quantity.parse(leaf.strip());
                named.add(marking.unit().equals(Unit.ONE) ? Quantity.of(marking.number(), last) : marking);
            }
        } catch (QuantityException wrong) {
            unclear(
                    wrong.problem(),
                    "say what a leaf did: " + Asked.bare(set.leaves().get(0)) + " passes");
            return Optional.empty();
        }
        Optional<Feeler> feeler =
                named.stream().allMatch(leaf -> leaf.dimension().equals(Dimension.LENGTH))
                        ? set.feeler(named)
                        : Optional.empty();
        if (feeler.isEmpty()) {
            unclear(
                    "there is no " + written + " in " + set.name(),
                    "it has " + Asked.markings(set) + (named.size() > 1 ? ", each of them once" : ""));
        }
        return feeler.map(TrialLine::markings);
    }

    /** Without a unit a marking is meant as the set is marked. */
    private Unit unit(Quantity marking) {
        return marking.unit().equals(Unit.ONE) ? set.leaves().get(0).marked().unit() : marking.unit();
    }

    private void unsaid(String leaf, String line) {
        if (markings(leaf).isPresent()) {
            other = new Heard.Begun(line, "what did " + leaf + " do: passes, refuses or drags?", "");
        }
    }

    private void unclear(String problem, String remedy) {
        if (other == null) {
            other = new Heard.Unclear(problem, remedy);
        }
    }
}

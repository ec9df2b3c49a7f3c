package io.github.leafproof.dsl.guide;

import io.github.leafproof.dsl.formula.Account;
import io.github.leafproof.dsl.graph.Affected;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.report.Explaining;
import io.github.leafproof.dsl.report.ExplanationText;
import io.github.leafproof.dsl.report.Lines;
import io.github.leafproof.dsl.session.Place;
import io.github.leafproof.dsl.session.Standing;
import io.github.leafproof.inspection.quantity.Spelling;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Why something is asked, why a check came out as it did, and what has become of everything there is to observe. */
final class WhyText {

    private final Standing standing;
    private final Look look;

    WhyText(Standing standing, Look look) {
        this.standing = standing;
        this.look = look;
    }

    /** Of an observation or a check, by its name. */
    String of(String name) {
        Optional<Node> node = standing.judgement().graph().node(name);
        if (node.isPresent() && node.get() instanceof Node.Observation observation) {
            return asked(observation);
        }
        if (node.isPresent() && node.get() instanceof Node.Check check) {
            return ExplanationText.of(Explaining.of(standing.judgement(), check), look.colour());
        }
        return look.unclear(
                "there is no observation and no check called " + name,
                Spelling.nearest(name, names().toList())
                        .map(near -> "did you mean " + near + "?")
                        .orElse("list tells what there is to observe"));
    }

    /** The names of everything that can be asked about. */
    Stream<String> names() {
        return Stream.concat(
                standing.judgement().graph().observations().stream().map(Node.Observation::name),
                standing.judgement().graph().checks().stream().map(Node.Check::name));
    }

    private String asked(Node.Observation observation) {
        Lines lines = look.lines();
        Affected affected = standing.judgement().graph().affectedBy(observation);
        for (Node.Check check : affected.checks()) {
            String rank = check.severity().name().toLowerCase(Locale.ROOT) + (check.gate() ? ", gate" : "");
            lines.block("  ", look.paint().strong(check.title()) + " (" + check.name() + ", " + rank + ")");
            lines.block(
                    "    asks for ",
                    Account.of(check.requirement(), standing.judgement().frame(check))
                            .requirement());
            check.because().forEach(reason -> lines.block("    because ", reason));
        }
        if (affected.checks().isEmpty()) {
            lines.block("  ", "No check rests on it; it says when others apply, or what is advised.");
        }
        List<String> waiting = affected.waiting().stream()
                .filter(check -> !affected.checks().contains(check))
                .map(Node.Check::title)
                .toList();
        if (!waiting.isEmpty()) {
            lines.block("  behind it wait: ", String.join("; ", waiting));
        }
        return lines.toString();
    }

    /** Everything there is to observe, by what has become of it. */
    String list() {
        Map<Place, List<String>> all = new TreeMap<>();
        for (Node.Observation observation : standing.judgement().graph().observations()) {
            all.computeIfAbsent(standing.placeOf(observation), place -> new ArrayList<>())
                    .add(observation.name());
        }
        Lines lines = look.lines();
        all.forEach((place, names) -> lines.block("  " + words(place) + ": ", String.join(", ", names)));
        return lines.toString();
    }

    /** What is left behind when nothing more is asked; empty where nothing is. */
    String leftBehind() {
        Lines lines = look.lines();
        for (Place place : List.of(Place.COULD_NOT, Place.SKIPPED, Place.WAITING)) {
            List<String> names = standing.judgement().graph().observations().stream()
                    .filter(each -> standing.placeOf(each) == place)
                    .map(Node.Observation::name)
                    .toList();
            if (!names.isEmpty()) {
                lines.block("  " + words(place) + ": ", String.join(", ", names));
            }
        }
        return lines.toString();
    }

    private static String words(Place place) {
        return switch (place) {
            case DONE -> "done";
            case COULD_NOT -> "could not be observed";
            case TO_DO -> "to be done";
            case PUT_OFF -> "put off";
            case SKIPPED -> "passed over";
            case WAITING -> "waiting for a gate that is shut, or for what decides whether it applies";
            case NOT_APPLICABLE -> "not for this engine";
        };
    }
}

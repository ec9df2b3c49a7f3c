package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.history.Finding;
import io.github.leafproof.dsl.history.Finding.Standing;
import io.github.leafproof.dsl.history.Followed;
import io.github.leafproof.dsl.history.Followed.NextCheck.State;
import io.github.leafproof.dsl.history.History;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A history as a person reads it in a terminal: what is left to do first, then the looks, the findings and the values. */
public final class HistoryText {

    private final History history;
    private final Paint paint;
    private final Lines text = new Lines();

    private HistoryText(History history, Paint paint) {
        this.history = history;
        this.paint = paint;
    }

    /** The text, lines ending in {@code \n}. */
    public static String of(History history, boolean colour) {
        return new HistoryText(history, colour ? Paint.COLOURED : Paint.PLAIN).print();
    }

    private String print() {
        text.line(paint.strong("History of " + engine()));
        text.line("");
        state();
        looks();
        findings();
        values();
        text.list(paint.strong("Before anything said here"), List.of(Reporting.DEFERENCE));
        text.list(paint.strong("Notes"), history.notes());
        files();
        return text.toString();
    }

    private String engine() {
        return TextReport.model(history.maker(), history.model()) + ", serial " + history.serial();
    }

    private void state() {
        text.line(
                switch (history.state()) {
                    case CLOSED -> paint.outcome(Outcome.PASSES, "CLOSED");
                    case TO_BE_LOOKED_AT -> paint.outcome(Outcome.OPEN, "TO BE LOOKED AT");
                    case REMAINS -> paint.outcome(Outcome.FAILS, "REMAINS");
                });
        List<String> reasons = reasons();
        reasons.forEach(reason -> text.block("  - ", reason));
        if (reasons.isEmpty()) {
            text.line(
                    history.findings().isEmpty()
                            ? "No look found anything."
                            : "All that was found has been put right.");
        }
        text.line("");
    }

    private List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        findings(finding -> !finding.standing().isSettled())
                .forEach(finding -> reasons.add(finding.title() + ": " + FindingWords.of(finding)));
        history.values().stream()
                .filter(Followed::isWorsening)
                .forEach(value -> reasons.add(value.name() + " changes " + RateWords.pace(value.pace(), true) + "."));
        nextLooks()
                .forEach(value -> reasons.add("Next look at " + value.name() + ": "
                        + RateWords.nextCheck(Objects.requireNonNull(value.nextCheck()), history.units()) + "."));
        return reasons;
    }

    /** What is due; where nothing is, what is open for the shortest time. */
    private List<Followed> nextLooks() {
        List<Followed> due = history.values().stream()
                .filter(value -> isNext(value, State.DUE_NOW) || isNext(value, State.DUE))
                .toList();
        return !due.isEmpty()
                ? due
                : history.values().stream()
                        .filter(value -> value.byFeel() && isNext(value, State.OPEN))
                        .min(Comparator.comparingDouble(value ->
                                Objects.requireNonNull(value.nextCheck()).sure()))
                        .stream()
                        .toList();
    }

    private static boolean isNext(Followed value, State state) {
        return value.nextCheck() != null && value.nextCheck().state() == state;
    }

    private List<Finding> findings(Predicate<Finding> which) {
        return history.findings().stream().filter(which).toList();
    }

    private void looks() {
        text.line(paint.strong("Looks"));
        for (History.Look look : history.looks()) {
            String running = look.runningTime() == null ? "" : ", after " + look.runningTime() + " of running";
            text.block(
                    String.format(Locale.ROOT, "  %d  ", look.number()),
                    look.date() + running + ": " + look.procedure().title() + " ("
                            + look.procedure().name() + ", revision "
                            + look.procedure().revision() + ")");
            text.line("     "
                    + paint.release(look.release(), look.release().word().toUpperCase(Locale.ROOT)) + ", sheet "
                    + look.sheet());
        }
        text.line("");
    }

    private void findings() {
        if (history.findings().isEmpty()) {
            return;
        }
        text.line(paint.strong("Findings"));
        for (Standing standing : Standing.values()) {
            findings(finding -> finding.standing() == standing).forEach(this::finding);
        }
        text.line("");
    }

    private void finding(Finding finding) {
        String word = finding.standing().word().replace('_', ' ');
        String mark = String.format(
                Locale.ROOT, "%-21s", finding.standing().isSettled() ? word : word.toUpperCase(Locale.ROOT));
        Outcome colour = finding.standing().isSettled() ? Outcome.PASSES : finding.latest();
        text.line("  " + paint.outcome(colour, mark) + finding.title() + "  ["
                + finding.severity().word() + "]");
        text.field("check", finding.check());
        finding.seen().forEach(seen -> text.field("look " + seen.look(), seen(seen)));
        text.field("so", FindingWords.of(finding));
    }

    private static String seen(Finding.Seen seen) {
        String adjusted = seen.adjusted().isEmpty() ? "" : "; adjusted: " + String.join(", ", seen.adjusted());
        return seen.asFound() == null
                ? result(seen.asLeft()) + adjusted
                : "as found " + result(seen.asFound()) + adjusted + "; as left " + result(seen.asLeft());
    }

    private static String result(Finding.Result result) {
        String word = result.outcome().word().replace('_', ' ');
        return result.value() == null ? word : word + ", " + result.value();
    }

    private void values() {
        List<Followed> followed =
                history.values().stream().filter(HistoryText::isWorthFollowing).toList();
        if (!followed.isEmpty()) {
            text.line(paint.strong("What changed with running"));
            followed.forEach(this::followed);
            text.line("");
        }
        others(
                "Other values, look by look",
                value -> !isWorthFollowing(value) && !value.isSteady(),
                value -> value.sights().stream().map(HistoryText::brief).collect(Collectors.joining("; ")));
        others(
                "Always the same",
                value -> !isWorthFollowing(value) && value.isSteady(),
                value -> value.sights().get(0).asLeft().words());
    }

    /** What was felt for, adjusted, read over and over, or changed beyond doubt and has limits. */
    private static boolean isWorthFollowing(Followed value) {
        boolean adjusted = value.sights().stream().anyMatch(Followed.Sight::adjusted) && value.isMeasured();
        return value.byFeel()
                || adjusted
                || value.perReading() != null
                || (value.nextCheck() != null && value.changes().stream().anyMatch(Followed.Change::told));
    }

    private void others(String title, Predicate<Followed> which, Function<Followed, String> words) {
        List<Followed> values = history.values().stream().filter(which).toList();
        if (!values.isEmpty()) {
            text.line(paint.strong(title));
            values.forEach(value -> text.block("  ", value.name() + ": " + words.apply(value)));
            text.line("");
        }
    }

    private static String brief(Followed.Sight sight) {
        return sight.look() + ": " + point(sight.asLeft());
    }

    private void followed(Followed value) {
        text.line("  " + value.name());
        for (Followed.Sight sight : value.sights()) {
            text.field(
                    "look " + sight.look(),
                    (sight.adjusted()
                                    ? "as found " + point(sight.asFound()) + "; as left " + point(sight.asLeft())
                                    : point(sight.asLeft()))
                            + running(sight.asLeft().runningTime()));
        }
        for (Followed.Change change : value.changes()) {
            text.field(change.from() + " to " + change.to(), RateWords.change(change, history.units()));
        }
        value.adjustings()
                .forEach(adjusting -> text.field("adjusted", RateWords.adjusting(adjusting, history.units())));
        line("pace", RateWords.pace(value.pace(), value.isWorsening()));
        line("trend", value.slope() == null ? "" : RateWords.slope(value.slope(), history.units()));
        line("trend", value.perReading() == null ? "" : RateWords.perReading(value.perReading(), history.units()));
        line("next look", value.nextCheck() == null ? "" : RateWords.nextCheck(value.nextCheck(), history.units()));
    }

    private void line(String name, String words) {
        if (!words.isEmpty()) {
            text.field(name, words);
        }
    }

    private static String point(Followed.Point point) {
        return point.words() + (point.unfit() == null ? "" : " (" + point.unfit() + ")");
    }

    private static String running(@Nullable Quantity time) {
        return time == null ? "" : ", after " + time;
    }

    private void files() {
        text.line(paint.strong("Sheets, with the SHA-256 of each"));
        for (History.Look look : history.looks()) {
            text.line("  " + look.number() + "  " + look.file().sha256() + "  "
                    + look.file().name());
        }
    }
}

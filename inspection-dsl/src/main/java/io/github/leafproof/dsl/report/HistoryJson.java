package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.history.Finding;
import io.github.leafproof.dsl.history.Followed;
import io.github.leafproof.dsl.history.History;
import io.github.leafproof.dsl.json.JsonPage;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A history for programs, as docs/schemas/history.schema.json has it. Every key is there every time; null says that there is
 * nothing to say.
 */
public final class HistoryJson {

    /** What the first line of every history says about its form. */
    public static final String FORMAT = "leafproof-history/1";

    private static final MathContext DIGITS = new MathContext(10);

    private final History history;
    private final JsonPage json;

    private HistoryJson(History history, JsonPage json) {
        this.history = history;
        this.json = json;
    }

    /** The same history gives the same text on every machine; it ends in a line end. */
    public static String write(History history) {
        return JsonPage.write(json -> new HistoryJson(history, json).write());
    }

    private void write() {
        json.text("format", FORMAT);
        json.object("engine", () -> {
            json.text("model", history.model());
            json.text("maker", history.maker());
            json.text("serial", history.serial());
        });
        json.text("state", history.state().name().toLowerCase(Locale.ROOT));
        json.list("looks", history.looks(), this::look);
        json.list("findings", history.findings(), this::finding);
        json.list("values", history.values(), this::followed);
        json.texts("notes", history.notes());
    }

    private void look(History.Look look) {
        json.number("look", look.number());
        json.text("sheet", look.sheet());
        json.text("date", look.date().toString());
        json.text("running_time", words(look.runningTime()));
        json.text("condition", look.condition());
        json.text("variant", look.variant());
        json.object("procedure", () -> {
            json.text("name", look.procedure().name());
            json.text("title", look.procedure().title());
            json.number("revision", look.procedure().revision());
            json.text("sha256", look.procedure().sha256());
        });
        json.text("release", look.release().word());
        json.object("file", () -> json.file(look.file().name(), look.file().sha256()));
        json.object("card", () -> json.file(look.card().name(), look.card().sha256()));
        json.object("tray", () -> json.file(look.tray().name(), look.tray().sha256()));
    }

    private void finding(Finding finding) {
        json.text("check", finding.check());
        json.text("title", finding.title());
        json.text("severity", finding.severity().word());
        json.text("standing", finding.standing().word());
        json.text("latest", finding.latest().word());
        json.text("told", FindingWords.of(finding));
        json.list("seen", finding.seen(), seen -> {
            json.number("look", seen.look());
            json.object("as_found", seen.asFound(), this::result);
            json.texts("adjusted", seen.adjusted());
            json.object("as_left", seen.asLeft(), this::result);
        });
        json.texts("mended", finding.mended());
    }

    private void result(Finding.Result result) {
        json.text("outcome", result.outcome().word());
        json.text("value", result.value());
    }

    private void followed(Followed value) {
        json.text("name", value.name());
        json.list("seen", value.sights(), sight -> {
            json.number("look", sight.look());
            json.yesNo("adjusted", sight.adjusted());
            json.object("as_found", sight.asFound(), this::point);
            json.object("as_left", sight.asLeft(), this::point);
        });
        json.list("changes", value.changes(), change -> {
            json.number("from", change.from());
            json.number("to", change.to());
            amount("change", change.amount());
            hours("hours", change.hours());
            perHour("per_hour", change.rate());
            json.yesNo("told", change.told());
        });
        json.list("adjustings", value.adjustings(), adjusting -> {
            json.number("look", adjusting.look());
            amount("moved", adjusting.moved());
            json.text("turn", words(adjusting.turn()));
            amount("per_turn", adjusting.perTurn());
        });
        perHour("slope_per_hour", value.slope());
        amount("slope_per_reading", value.perReading());
        json.text("pace", value.pace().word());
        json.object("next_check", value.nextCheck(), this::nextCheck);
    }

    private void point(Followed.Point point) {
        json.text("value", point.words());
        amount("number", point.number());
        json.text("unfit", point.unfit());
        json.text("running_time", words(point.runningTime()));
    }

    private void nextCheck(Followed.NextCheck next) {
        json.text("state", next.state().word());
        json.text("limit", next.limit());
        json.number("look", next.look());
        perHour("per_hour", next.rate());
        hours("left", next.left());
        boolean bounded = next.state() != Followed.NextCheck.State.MOVES_AWAY;
        json.object("sure", bounded ? Hours.of(next.sure()) : null, sure -> json.number("hours", sure.doubleValue()));
        json.text("running_time", words(next.runningTime()));
        json.text("told", RateWords.nextCheck(next, history.units()));
    }

    private static @Nullable String words(@Nullable Quantity quantity) {
        return quantity == null ? null : quantity.toString();
    }

    private void amount(String key, @Nullable Estimate estimate) {
        json.object(key, estimate, amount -> {
            Unit unit = history.units().unitFor(amount.dimension(), amount.value());
            number(amount, unit, unit.symbol());
        });
    }

    private void perHour(String key, @Nullable Estimate rate) {
        json.object(key, rate, amount -> {
            Estimate inAnHour = RateWords.inAnHour(amount);
            Unit unit = history.units().unitFor(inAnHour.dimension(), inAnHour.value());
            number(inAnHour, unit, unit.symbol() + "/h");
        });
    }

    private void hours(String key, @Nullable Estimate time) {
        json.object(key, time, amount -> number(amount, Hours.UNIT, "h"));
    }

    private void number(Estimate amount, Unit unit, String symbol) {
        json.number("number", rounded(unit.fromBase(amount.value())));
        json.number("u", rounded(unit.differenceFromBase(amount.standardUncertainty())));
        json.text("unit", symbol);
    }

    /** Ten digits: what lies behind them is the arithmetic's, not the engine's. */
    private static double rounded(double number) {
        return new BigDecimal(number).round(DIGITS).doubleValue();
    }
}

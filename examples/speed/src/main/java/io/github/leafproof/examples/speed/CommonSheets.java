package io.github.leafproof.examples.speed;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.stream.Collectors;

/** The same rules as a procedure of Leafproof, and the findings as its job sheets. */
final class CommonSheets {

    private static final List<String> GRADES = List.of("none", "weak", "fair", "good", "firm");

    private final Procedure procedure;
    private final Document<EngineCard> card;
    private final Document<GaugeTray> tray;

    CommonSheets(double lashMax) {
        this.procedure = Procedure.compile(SourceText.of("common_work.inspection", Texts.ofCommonWork("inspection")))
                .orElseThrow();
        this.card = CardFile.parse(
                        "card",
                        bytes(String.format(
                                Locale.ROOT,
                                "{\"model\": \"Quillan Q15-4\", \"maker\": \"Quillan\", \"lash_min\": \"0.03 mm\","
                                        + " \"lash_max\": \"%.2f mm\", \"box\": [%s]}",
                                lashMax,
                                quoted(Look.BOX))))
                .orElseThrow();
        this.tray = TrayFile.parse(
                        "tray",
                        bytes("{\"tray\": \"Leaves\", \"gauges\": [{\"name\": \"leaves\", \"kind\": \"leaf set\","
                                + " \"drag_band\": \"0.005 mm\", \"leaves\": ["
                                + leaf("0.01", "0.010") + ", " + leaf("0.05", "0.050") + ", " + leaf("0.10", "0.110")
                                + "]}]}"))
                .orElseThrow();
    }

    /** So well known that its uncertainty decides nothing, for the other engines know none. */
    private static String leaf(String marked, String measured) {
        return String.format(
                "{\"marked\": \"%s mm\", \"measured\": \"%s mm\", \"u\": \"0.0001 mm\"}", marked, measured);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String quoted(List<String> words) {
        return words.stream().map(word -> '"' + word + '"').collect(Collectors.joining(", "));
    }

    CheckGraph graph() {
        return procedure.graph();
    }

    Evidence evidence(Look look) {
        StringJoiner entries = new StringJoiner(", ");
        entries.add(entry("head", quantity(look.head(), "degC")));
        entries.add(entry("room", quantity(look.room(), "degC")));
        entries.add(trials("lash[intake]", look.thinIntake(), look.thickIntake()));
        entries.add(trials("lash[exhaust]", look.thinExhaust(), look.thickExhaust()));
        entries.add(entry("arm", '"' + look.arm() + '"'));
        entries.add(entry("recess", quantity(look.recess(), "mm")));
        entries.add(entry("needle", quantity(look.needle(), "turns")));
        entries.add(entry("opening", quantity(look.opening(), "mm")));
        entries.add(entry("drawn", String.valueOf(look.drawn())));
        entries.add(entry("retreat", quantity(look.retreat(), "mm")));
        entries.add(entry("damaged", String.valueOf(look.damaged())));
        entries.add("{\"observe\": \"found\", \"items\": [" + quoted(look.found()) + "]}");
        entries.add(entry("compression", '"' + GRADES.get(look.compression()) + '"'));
        entries.add(entry("covers_dry", String.valueOf(look.coversDry())));
        String sheet = "{\"sheet\": \"0001\", \"procedure\": \"common_work\", \"revision\": 1,"
                + " \"engine\": {\"serial\": \"1\", \"condition\": \"used\"}, \"date\": \"2026-03-02\", \"entries\": ["
                + entries + "]}";
        return Evidence.of(
                        procedure.graph(),
                        card,
                        tray,
                        SheetFile.parse("sheet", bytes(sheet)).orElseThrow())
                .orElseThrow();
    }

    private static String entry(String observation, String value) {
        return "{\"observe\": \"" + observation + "\", \"value\": " + value + "}";
    }

    private static String quantity(double number, String unit) {
        return '"' + String.format(Locale.ROOT, "%.3f", number) + ' ' + unit + '"';
    }

    /**
     * In the common work a thin leaf that refuses and a thick one that passes show nothing, so they are left out here, where they
     * would. A leaf far under the limit, which always passes, says that somebody has looked.
     */
    private static String trials(String observation, boolean thin, boolean thick) {
        StringJoiner trials = new StringJoiner(", ");
        trials.add("{\"leaf\": \"0.01 mm\", \"result\": \"passes\"}");
        if (thin) {
            trials.add("{\"leaf\": \"0.05 mm\", \"result\": \"passes\"}");
        }
        if (!thick) {
            trials.add("{\"leaf\": \"0.10 mm\", \"result\": \"refuses\"}");
        }
        return "{\"observe\": \"" + observation + "\", \"trials\": [" + trials + "]}";
    }
}

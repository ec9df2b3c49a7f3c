package io.github.leafproof.examples.speed;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A procedure as long as one likes, and its sheet filled in. Half of its checks hold a computed length against a limit, the other
 * half wait for these and ask for a gap.
 *
 * @param checks how many, an even number
 */
record LongWork(int checks) {

    private static final String HEAD =
            "procedure long \"Long\" revision 1\ngauge leaves : leaf set\ngauge depth : reading of length\n";

    private static final String PAIR = """
            observe d# : length with depth ask "Depth?"
            let r# = d# * d# / (d# + 1 mm)
            check s# "Seat" major gate { require r# at most 0.9 mm }
            observe l# : gap with leaves ask "Lash?"
            check v# "Lash" critical {
              after s#
              require l# at most engine.lash_max
            }
            """;

    private static final String ENTRIES = """
            { "observe": "d#", "value": "1.10 mm" },
            { "observe": "l#", "trials": [ { "leaf": "0.05 mm", "result": "passes" } ] }""";

    /** The text of the procedure. */
    String text() {
        return HEAD + pairs(PAIR, "");
    }

    Procedure compiled() {
        return Procedure.compile(SourceText.of("long.inspection", text())).orElseThrow();
    }

    /** The whole sheet. */
    Document<JobSheet> sheet() {
        return read(pairs(ENTRIES, ",\n"));
    }

    /** The sheet before the last gap was felt. */
    Document<JobSheet> sheetButForOneEntry() {
        String entries = pairs(ENTRIES, ",\n");
        return read(entries.substring(0, entries.lastIndexOf(",\n")));
    }

    /** What was felt of the last gap. */
    Entry lastEntry() {
        List<Entry> entries = sheet().content().entries();
        return entries.get(entries.size() - 1);
    }

    Evidence evidence(Procedure procedure, Document<JobSheet> sheet) {
        return Evidence.of(procedure.graph(), card(), tray(), sheet).orElseThrow();
    }

    static Document<EngineCard> card() {
        String json = "{\"model\": \"Quillan Q15-4\", \"maker\": \"Quillan\", \"lash_max\": \"0.10 mm\"}";
        return CardFile.parse("card.json", json.getBytes(UTF_8)).orElseThrow();
    }

    static Document<GaugeTray> tray() {
        String json = """
                { "tray": "Bench one", "gauges": [
                  { "name": "leaves", "kind": "leaf set", "drag_band": "0.005 mm", "leaves": [
                    { "marked": "0.05 mm", "measured": "0.050 mm", "u": "0.001 mm" },
                    { "marked": "0.08 mm", "measured": "0.081 mm", "u": "0.001 mm" } ] },
                  { "name": "depth", "kind": "reading", "of": "length", "u": "0.01 mm" } ] }
                """;
        return TrayFile.parse("tray.json", json.getBytes(UTF_8)).orElseThrow();
    }

    private String pairs(String one, String between) {
        return IntStream.range(0, checks / 2)
                .mapToObj(pair -> one.replace("#", String.valueOf(pair)))
                .collect(Collectors.joining(between));
    }

    private static Document<JobSheet> read(String entries) {
        String sheet =
                "{ \"sheet\": \"1\", \"procedure\": \"long\", \"revision\": 1, \"engine\": { \"serial\": \"Q\" },"
                        + " \"date\": \"2026-03-04\", \"entries\": [\n" + entries + "\n] }";
        return SheetFile.parse("sheet.json", sheet.getBytes(UTF_8)).orElseThrow();
    }
}

package io.github.leafproof.dsl.growth;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;

/** A procedure as long as one likes, and its sheet filled in: half of its checks read a depth gauge, half feel a gap. */
record LongProcedure(int checks) {

    private static final String HEAD = """
            procedure long "Long" revision 1
            gauge leaves : leaf set
            gauge depth : reading of length
            """;

    /** Each pair of checks, by its number: a computed length behind a gate, and a gap. */
    private static final String PAIR = """
            observe d# : length with depth ask "Depth?"
            let r# = d# * d# / (d# + 1 mm)
            check s# "Seat" major gate { require r# at most 0.9 mm } // seat
            observe l# : gap with leaves ask "Lash?"
            check v# "Lash" critical {
              after s#
              require l# at most engine.lash_max
            }
            """;

    private static final String ENTRIES = """
            { "observe": "d#", "value": "1.10 mm" },
            { "observe": "l#", "trials": [ { "leaf": "0.05 mm", "result": "passes" } ] }""";

    String text() {
        StringBuilder text = new StringBuilder(HEAD);
        for (int pair = 0; pair < checks / 2; pair++) {
            text.append(PAIR.replace("#", String.valueOf(pair)));
        }
        return text.toString();
    }

    SourceText source() {
        return SourceText.of("long.inspection", text());
    }

    byte[] sheet() {
        StringBuilder text = new StringBuilder(
                "{ \"sheet\": \"1\", \"procedure\": \"long\", \"revision\": 1, \"engine\": { \"serial\": \"Q\" },"
                        + " \"date\": \"2026-03-04\", \"entries\": [\n");
        for (int pair = 0; pair < checks / 2; pair++) {
            text.append(pair == 0 ? "" : ",\n").append(ENTRIES.replace("#", String.valueOf(pair)));
        }
        return text.append("\n] }").toString().getBytes(UTF_8);
    }

    Document<JobSheet> sheetRead() {
        return SheetFile.parse("sheet.json", sheet()).orElseThrow();
    }

    static Document<EngineCard> card() {
        String json = """
                { "model": "Quillan Q15-4", "maker": "Quillan", "displacement": "15.0 cm3",
                  "lash_min": "0.03 mm", "lash_max": "0.10 mm" }
                """;
        return CardFile.parse("card.json", json.getBytes(UTF_8)).orElseThrow();
    }

    static Document<GaugeTray> tray() {
        String json = """
                { "tray": "Bench one", "gauges": [
                  { "name": "leaves", "kind": "leaf set", "drag_band": "0.005 mm", "film": "0.001 mm", "leaves": [
                    { "marked": "0.05 mm", "measured": "0.050 mm", "u": "0.001 mm" },
                    { "marked": "0.08 mm", "measured": "0.081 mm", "u": "0.001 mm" } ] },
                  { "name": "depth", "kind": "reading", "of": "length", "u": "0.01 mm" } ] }
                """;
        return TrayFile.parse("tray.json", json.getBytes(UTF_8)).orElseThrow();
    }
}

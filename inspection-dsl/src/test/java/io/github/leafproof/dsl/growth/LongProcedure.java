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

    private static final String REHEARSED = "  expect v# open\n";

    private static final String ENTRIES = """
            { "observe": "d#", "value": "1.10 mm" },
            { "observe": "l#", "trials": [ { "leaf": "0.05 mm", "result": "passes" } ] }""";

    String text() {
        StringBuilder text = new StringBuilder(HEAD);
        for (int pair = 0; pair < checks / 2; pair++) {
            text.append(PAIR.replace("#", String.valueOf(pair)));
        }
        text.append("rehearse \"All\" {\n  engine \"card.json\"\n  gauges \"tray.json\"\n  enter d0 1.10 mm\n");
        for (int pair = 0; pair < checks / 2; pair++) {
            text.append(REHEARSED.replace("#", String.valueOf(pair)));
        }
        text.append("}\n");
        return text.toString();
    }

    SourceText source() {
        return SourceText.of("long.inspection", text());
    }

    /** The entries of the whole sheet. */
    String entries() {
        StringBuilder text = new StringBuilder();
        for (int pair = 0; pair < checks / 2; pair++) {
            text.append(pair == 0 ? "" : ",\n").append(ENTRIES.replace("#", String.valueOf(pair)));
        }
        return text.toString();
    }

    static byte[] sheet(String procedure, String entries) {
        String text = "{ \"sheet\": \"1\", \"procedure\": \"" + procedure
                + "\", \"revision\": 1, \"engine\": { \"serial\": \"Q\" },"
                + " \"date\": \"2026-03-04\", \"entries\": [\n" + entries + "\n] }";
        return text.getBytes(UTF_8);
    }

    static Document<JobSheet> sheetRead(String entries) {
        return SheetFile.parse("sheet.json", sheet("long", entries)).orElseThrow();
    }

    Document<JobSheet> sheetRead() {
        return sheetRead(entries());
    }

    /** As it was before the last gap was felt. */
    Document<JobSheet> sheetButForOneEntry() {
        String entries = entries();
        return sheetRead(entries.substring(0, entries.lastIndexOf(",\n")));
    }

    /** So many observations, each asked for where the next one says yes, and what the first one says. */
    static SourceText chain(int observations) {
        StringBuilder text = new StringBuilder("procedure long \"Long\" revision 1\n");
        for (int i = 0; i < observations; i++) {
            String next = i == observations - 1 ? "last" : "o" + (i + 1);
            text.append("observe o" + i + " : yes/no when " + next + "\n");
        }
        return SourceText.of("chain.inspection", text + "observe last : yes/no\ncheck c \"C\" { require o0 }\n");
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

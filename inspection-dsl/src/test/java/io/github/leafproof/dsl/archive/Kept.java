package io.github.leafproof.dsl.archive;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.SheetLine;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What a small shop kept: a procedure for the lash in its revisions, a card, a tray, and sheets as lines. */
public final class Kept {

    /** The procedure as it was. */
    public static final String OLD = """
            procedure lash "Lash" revision 1
            decide at 95 %
            gauge leaves : leaf set
            observe free : yes/no ask "Does the rocker rock?"
            observe lash : gap with leaves ask "Offer the leaves, thinnest first"
            observe turning : one of freely, stiffly ask "How does it turn?" optional
            check rocks "The rocker rocks" gate { require free }
            check lash_within "Lash within its limits" critical {
              after rocks
              require lash between engine.lash_min and engine.lash_max
            }
            check turns "It turns freely" { require turning is freely }
            """;

    /** As it is to be: the upper limit comes from the shop and not from the card. */
    public static final String NEW = OLD.replace("revision 1", "revision 2").replace("engine.lash_max", "0.06 mm");

    private static final Map<String, byte[]> FILES = Map.of(
            "card.json", bytes(Workshop.of("").card()),
            "tray.json", bytes(Workshop.of("").tray()));

    private Kept() {}

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    static Procedure procedure(String text) {
        return Procedure.compile(SourceText.of("lash.inspection", text)).orElseThrow();
    }

    static Replay replay(String old, String now) {
        return Replay.of(procedure(old), procedure(now), Cabinet.holding(FILES), UnitSystem.METRIC);
    }

    /** A sheet of the first revision with these entries, each JSON. */
    public static String sheet(String name, String... entries) {
        return "{\"sheet\": \"" + name + "\", \"procedure\": \"lash\", \"revision\": 1, \"card\": \"card.json\", "
                + "\"tray\": \"tray.json\", \"engine\": {\"serial\": \"Q15-" + name + "\"}, \"date\": \"2026-03-04\", "
                + "\"entries\": [" + String.join(", ", entries) + "]}";
    }

    /** The rocker rocks, and these two leaves bound the lash. */
    public static String felt(String name, String passes, String refuses) {
        return sheet(name, "{\"observe\": \"free\", \"value\": true}", lash(passes, refuses));
    }

    static String lash(String passes, String refuses) {
        return "{\"observe\": \"lash\", \"trials\": [{\"leaf\": \"" + passes
                + " mm\", \"result\": \"passes\"}, {\"leaf\": \"" + refuses + " mm\", \"result\": \"refuses\"}]}";
    }

    static Filed filed(long line, String sheet) {
        return Filed.of(SheetLine.of("kept.jsonl", line, bytes(sheet)), Path.of(""));
    }

    static Stream<Filed> filed(List<String> sheets) {
        List<Filed> filed = new ArrayList<>();
        for (String sheet : sheets) {
            filed.add(filed(filed.size() + 1L, sheet));
        }
        return filed.stream();
    }
}

package io.github.leafproof.dsl.seal;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.RawFile;
import io.github.leafproof.inspection.record.ReportFile;
import io.github.leafproof.inspection.record.SealFile;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A folder with a procedure, its part, a card, a tray and a sheet, and the sealed report on them. */
record SealedFolder(Path folder) {

    static final Map<String, String> INPUTS = Map.of(
            "cold.inspection", """
                    procedure cold "Engine is cold" revision 3

                    use "parts/warmth.inspection"

                    check cold "Engine is cold" major {
                      require head at most 30 °C
                      because "common practice"
                    }
                    """,
            "parts/warmth.inspection", """
                    gauge infrared : reading of temperature

                    observe head : temperature with infrared ask "Temperature of the head"
                    """,
            "cards/quillan-15.json", """
                    { "model": "Quillan Q15-4", "maker": "Quillan", "years": "1994" }
                    """,
            "trays/one.json", """
                    { "tray": "One", "gauges": [
                      { "name": "infrared", "kind": "reading", "of": "temperature", "resolution": "0.1 °C", "limits": "1 K" } ] }
                    """,
            "sheets/0412.json", """
                    { "sheet": "0412", "procedure": "cold", "revision": 3, "date": "2026-03-04",
                      "card": "../cards/quillan-15.json", "tray": "../trays/one.json",
                      "engine": { "serial": "Q15-20417" },
                      "entries": [ { "observe": "head", "value": "21.4 °C" } ] }
                    """);

    static final String REPORT = "0412-report.json";

    /** Fills a folder, judges the engine as somebody does who stands in it, and seals the report. */
    static SealedFolder in(Path folder) {
        return in(folder, UnitSystem.METRIC);
    }

    static SealedFolder in(Path folder, UnitSystem units) {
        SealedFolder sealed = new SealedFolder(folder);
        INPUTS.forEach((name, text) -> sealed.write(name, text.getBytes(StandardCharsets.UTF_8)));
        sealed.write(REPORT, sealed.judged(units));
        sealed.write(
                REPORT + ".seal",
                SealFile.toJson(Keys.signing().seal(sealed.bytes(REPORT))).getBytes(StandardCharsets.UTF_8));
        return sealed;
    }

    private byte[] judged(UnitSystem units) {
        String report = Procedure.read(folder.resolve("cold.inspection"))
                .orElseThrow()
                .judge(
                        CardFile.parse("cards/quillan-15.json", bytes("cards/quillan-15.json"))
                                .orElseThrow(),
                        TrayFile.parse("trays/one.json", bytes("trays/one.json"))
                                .orElseThrow(),
                        SheetFile.parse("sheets/0412.json", bytes("sheets/0412.json"))
                                .orElseThrow(),
                        units)
                .map(ReportFile::toJson)
                .orElseThrow();
        return report.getBytes(StandardCharsets.UTF_8);
    }

    byte[] bytes(String name) {
        try {
            return Files.readAllBytes(folder.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void write(String name, byte[] bytes) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.resolveSibling(""));
            Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void write(String name, String text) {
        write(name, text.getBytes(StandardCharsets.UTF_8));
    }

    String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    /** What is told of the report as it stands there now, by somebody who has the shop's key. */
    Verification verify() {
        return verify(bytes(REPORT), bytes(REPORT + ".seal"));
    }

    Verification verify(byte[] report, byte[] seal) {
        return verify(report, Optional.of(seal), List.of(Keys.verifying()));
    }

    Verification verify(byte[] report, Optional<byte[]> seal, List<VerifyingKey> keys) {
        return Verification.of(
                RawFile.of(REPORT, report),
                seal.map(bytes -> RawFile.of(REPORT + ".seal", bytes)),
                keys.stream()
                        .map(key -> new Document<>(key, "shop.public.pem", ""))
                        .toList(),
                new Places(List.of(folder), null, null));
    }
}

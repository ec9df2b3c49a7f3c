package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import io.github.leafproof.inspection.verdict.Severity;
import io.github.leafproof.inspection.verdict.Side;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** Sound files of the invented maker, and a report on one of its engines. */
final class Good {
    static final Path FOLDER = Path.of("src", "test", "resources", "record", "good");
    static final Path CARD = FOLDER.resolve("cards/quillan-15.json");
    static final Path TRAY = FOLDER.resolve("trays/bench-one.json");
    static final Path SHEET = FOLDER.resolve("sheets/0412.json");
    static final Path REPORT = FOLDER.resolve("reports/0412.json");
    static final Path SEAL = FOLDER.resolve("seals/0412.json.seal");

    private Good() {}

    static Path file(Format format) {
        return switch (format) {
            case ENGINE_CARD -> CARD;
            case GAUGE_TRAY -> TRAY;
            case JOB_SHEET -> SHEET;
            case REPORT -> REPORT;
            case SEAL -> SEAL;
        };
    }

    /** What seals the report above: its digest, and the key of RFC 8410, 10.3, which everybody has. */
    static Seal seal() {
        return new Seal(
                "2bb589dd98a02a5b9d6dbeb35635156da8111358b9cb09fd9595cba2da284fa8",
                "MCowBQYDK2VwAyEAGb9ECWmEzf6FQbrBZ9w7lshQhqowtrbLDFw4rXAxZuE=",
                "n34dsi+yzehKXXunlCNKYIuW7pNnqVy0xRaaZnmJGc7Icqj7AWzGrtTpGVpXZ8WkaEIQu3eJbIZUcXWAJv6vAg==");
    }

    /** The bench's commonest case: the leaf sold as 0.10 mm measures 0.11, so its refusing proves nothing. */
    static Report report() {
        String digest = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";
        Report.Check lash = new Report.Check(
                "lash_within[intake]",
                "intake valve lash",
                "Valve gear, cold",
                Severity.CRITICAL,
                false,
                Outcome.OPEN,
                Side.NONE,
                new Report.Probability(0.0, 1.0),
                "0.050 mm to 0.110 mm",
                "between 0.03 mm and 0.10 mm",
                List.of("0.05 mm passes: at least 0.050 mm", "0.10 mm refuses: less than 0.110 mm"),
                List.of("Offer 0.05 + 0.04 mm"),
                List.of(),
                List.of(),
                List.of("the leaf marked 0.10 mm measures 0.110 mm"),
                List.of("the engine card"),
                null);
        Report.Check cold = new Report.Check(
                "cold",
                "Engine is at room temperature",
                null,
                Severity.MAJOR,
                true,
                Outcome.FAILS,
                Side.HIGH,
                // Java 17 itself would write 0.0020.
                new Report.Probability(2.0e-3, 1.0e-1),
                null,
                null,
                List.of(),
                List.of("Let it stand\nover night"),
                List.of("Mind the hot head"),
                List.of("room: \"not read\""),
                List.of(),
                List.of(),
                new Report.AsFound(Outcome.UNTESTED, null));
        return new Report(
                new Report.Procedure(
                        "first_look",
                        "First look, before the stand",
                        4,
                        digest,
                        List.of(new Report.Input("parts/bench.inspection", digest))),
                new Report.Input("sheets/0412.json", digest),
                new Report.Input("cards/quillan-15.json", digest),
                null,
                new Report.Engine("Quillan Q15-4", "Quillan", "Q15-20417", null, "new in box"),
                LocalDate.of(2026, 3, 4),
                Release.HOLD,
                "lash_within[intake] is open",
                List.of(cold, lash),
                List.of(new Report.Step("Offer 0.05 + 0.04 mm", List.of("Plug out, fuel away"))),
                List.of("No fuel near the bench"),
                List.of("±25 % is taken for leaves never measured"));
    }
}

package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.archive.Cabinet;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What goes with a sheet: every command that judges one takes these. */
final class EngineOptions {

    @Option(
            names = "--card",
            paramLabel = "F",
            description = "The engine card; otherwise the one that the sheet names, seen from the sheet.")
    private @Nullable Path card;

    @Option(
            names = "--tray",
            paramLabel = "F",
            description = "The gauge tray; otherwise the one that the sheet names, seen from the sheet.")
    private @Nullable Path tray;

    @Mixin
    private UnitsOption shown = new UnitsOption();

    UnitSystem units() {
        return shown.units();
    }

    /** Where the cards and the trays of an archive's sheets are. */
    Cabinet cabinet() {
        return Cabinet.ofFiles().withCard(card).withTray(tray);
    }

    /** A card and a tray say nothing of an engine without its sheet; tells so where it is missing. */
    boolean lackTheir(@Nullable Path sheet, Console console) {
        boolean lack = sheet == null && (card != null || tray != null);
        if (lack) {
            console.err().print("""
                    leafproof: a card and a tray are of no use without a sheet
                       help: name the job sheet with --sheet
                    """);
        }
        return lack;
    }

    /** Whether a command would write over one of its inputs; tells so where it would. */
    boolean wouldBeOverwritten(@Nullable Target target, Path procedure, @Nullable Path sheet, Console console) {
        return target != null
                && Stream.of(procedure, sheet, card, tray)
                        .filter(Objects::nonNull)
                        .anyMatch(input -> target.overwrites(input, console));
    }

    /** What the sheet, the card and the tray say; empty after telling everything that is wrong with them. */
    Optional<Evidence.Files> read(Path sheet, List<Target> targets, Console console) {
        return new EngineFiles(sheet, card, tray, targets, console).read();
    }
}

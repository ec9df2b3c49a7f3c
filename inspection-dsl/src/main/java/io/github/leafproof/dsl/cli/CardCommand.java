package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.workcard.WorkCard;
import io.github.leafproof.dsl.workcard.WorkCardPage;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.TrayFile;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a blank card of an inspection, to be printed and filled in with a pen. */
@Command(
        name = "card",
        description = {
            "Makes a blank work card to print: the steps of a procedure in bench order.",
            "",
            "Each step has its cautions before it, the gauge to take, the limits of this engine, and",
            "room to write in. What is written on it goes on a job sheet afterwards."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "Example:",
            "  leafproof card first_look.inspection --card cards/quillan-15.json --tray trays/bench-one.json \\",
            "    -o first_look.html",
            "",
            "Exit codes: 0 made, 2 bad input, 70 a bug of ours."
        })
final class CardCommand implements Callable<Integer> {

    @Parameters(paramLabel = "PROCEDURE", description = "The procedure's file, ending in .inspection.")
    private Path procedure = Path.of("");

    @Option(
            names = "--card",
            paramLabel = "F",
            required = true,
            description = "The engine card, for the limits and for what such an engine has.")
    private Path card = Path.of("");

    @Option(
            names = "--tray",
            paramLabel = "F",
            required = true,
            description = "The gauge tray, for the gauges and the leaves.")
    private Path tray = Path.of("");

    @Option(
            names = "--variant",
            paramLabel = "V",
            description = "Which variant of the card is meant; if not given, the limits that hold for all.")
    private @Nullable String variant;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "F",
            description = "Where to write the card, as one HTML file. Without it it goes to standard output.")
    private @Nullable Path output;

    @Option(
            names = "--units",
            paramLabel = "metric|inch",
            description = "The units to write numbers in; metric if not given.",
            converter = UnitsWord.class)
    private UnitSystem units = UnitSystem.METRIC;

    @Mixin
    private RootOption root = new RootOption();

    private final Console console;

    CardCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Target target = Target.of(output, "-o", "work card");
        if (target != null && Stream.of(procedure, card, tray).anyMatch(input -> target.overwrites(input, console))) {
            return Exit.BAD_INPUT.code();
        }
        Compiled compiled = root.read(procedure);
        console.complain(compiled.diagnostics());
        if (target != null && root.partsOf(procedure, compiled).anyMatch(part -> target.overwrites(part, console))) {
            return Exit.BAD_INPUT.code();
        }
        Optional<Document<EngineCard>> engine = told(CardFile.read(card));
        Optional<Document<GaugeTray>> gauges = told(TrayFile.read(tray));
        if (compiled.procedure().isEmpty() || engine.isEmpty() || gauges.isEmpty()) {
            return Exit.BAD_INPUT.code();
        }
        return told(WorkCard.of(compiled.procedure().get().graph(), engine.get(), gauges.get(), variant, units))
                .map(made -> hand(WorkCardPage.of(made)))
                .orElse(Exit.BAD_INPUT)
                .code();
    }

    private <T> Optional<T> told(Read<T> read) {
        console.complainOfFiles(read.problems());
        return read.value();
    }

    private Exit hand(String page) {
        if (output == null) {
            console.print(page);
            return Exit.GOOD;
        }
        if (!console.wrote(output, page)) {
            return Exit.BAD_INPUT;
        }
        console.print(output + ": made; open it in a browser and print it\n");
        return Exit.GOOD;
    }
}

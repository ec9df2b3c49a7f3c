package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.page.ReportPage;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.dsl.report.TextReport;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.ReportFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Judges an engine: a procedure, a card, a tray and a sheet go in, a report comes out. */
@Command(
        name = "inspect",
        description = "Judges an engine by a procedure and prints the report.",
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "Examples:",
            "  leafproof inspect first_look.inspection --sheet sheets/0412-trap.json --report 0412.html",
            "  leafproof inspect first_look.inspection --sheet sheets/0412-trap.json --json 0412-report.json \\",
            "    --sign shop.private.pem",
            "",
            "Exit codes: 0 ready, 1 hold or reject, 3 unfinished, 2 bad input, 70 a bug of ours."
        })
final class InspectCommand implements Callable<Integer> {

    @Parameters(paramLabel = "PROCEDURE", description = "The procedure's file, ending in .inspection.")
    private Path procedure = Path.of("");

    @Option(names = "--sheet", paramLabel = "F", required = true, description = "The job sheet.")
    private Path sheet = Path.of("");

    @Option(names = "--json", paramLabel = "F", description = "Write the report there as JSON, too.")
    private @Nullable Path json;

    @Option(
            names = "--report",
            paramLabel = "F",
            description = "Write the report there as a page for a browser, a phone and paper, too.")
    private @Nullable Path page;

    @Option(
            names = "--sign",
            paramLabel = "KEY",
            description = "Seal the report with this private key: what --json names gets a seal beside it, F.seal.")
    private @Nullable Path sign;

    @Mixin
    private EngineOptions engine = new EngineOptions();

    @Mixin
    private RootOption root = new RootOption();

    private final Console console;

    InspectCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        List<Target> targets = Stream.of(Target.of(json, "--json", "report"), Target.of(page, "--report", "page"))
                .filter(Objects::nonNull)
                .toList();
        Optional<Sealing> sealing = Sealing.with(sign, json, console);
        if (sealing.isEmpty()
                || targets.stream().anyMatch(target -> engine.wouldBeOverwritten(target, procedure, sheet, console))
                || areOne(targets)) {
            return Exit.BAD_INPUT.code();
        }
        Compiled compiled = root.read(procedure);
        console.complain(compiled.diagnostics());
        if (targets.stream().anyMatch(target -> overwritesAPart(target, compiled))) {
            return Exit.BAD_INPUT.code();
        }
        Optional<Evidence.Files> files = engine.read(sheet, targets, console);
        if (compiled.procedure().isEmpty() || files.isEmpty()) {
            return Exit.BAD_INPUT.code();
        }
        Read<Judgement> judged = compiled.procedure()
                .get()
                .judgement(files.get().card(), files.get().tray(), files.get().sheet(), engine.units());
        console.complainOfFiles(judged.problems());
        return judged.value()
                .map(judgement -> hand(judgement, sealing.get()))
                .orElse(Exit.BAD_INPUT)
                .code();
    }

    private boolean overwritesAPart(Target target, Compiled compiled) {
        return root.partsOf(procedure, compiled).anyMatch(part -> target.overwrites(part, console));
    }

    /** Two texts cannot be in one file; says so where they would have to. */
    private boolean areOne(List<Target> targets) {
        boolean one = targets.stream()
                        .map(target -> target.file().toAbsolutePath().normalize())
                        .distinct()
                        .count()
                < targets.size();
        if (one) {
            console.once("leafproof: --json and --report name one file, and only one of the two would be left"
                    + "\n   help: name a file of its own for each\n");
        }
        return one;
    }

    private Exit hand(Judgement judgement, Sealing sealing) {
        Report report = Reporting.of(judgement);
        console.print(TextReport.of(report, console.colour()));
        if (json != null && !(console.wrote(json, ReportFile.toJson(report)) && sealing.seals(json, report))) {
            return Exit.BAD_INPUT;
        }
        if (page != null && !console.wrote(page, ReportPage.of(judgement, report))) {
            return Exit.BAD_INPUT;
        }
        return Exit.of(report.release());
    }
}

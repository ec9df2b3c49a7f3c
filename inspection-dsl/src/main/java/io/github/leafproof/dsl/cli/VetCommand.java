package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticJson;
import io.github.leafproof.dsl.diagnostic.DiagnosticLines;
import io.github.leafproof.dsl.diagnostic.Sarif;
import io.github.leafproof.dsl.graph.Cost;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.TrayFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Looks procedures through without judging anything. */
@Command(
        name = "vet",
        description = {
            "Looks procedures through, lists every mistake, and says what judging by them takes.",
            "With a card and a tray: also whether the gauges are there and can prove the card's limits."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "Example:",
            "  leafproof vet first_look.inspection",
            "  leafproof vet first_look.inspection --card cards/quillan-15.json --tray trays/bench-one.json",
            "  leafproof vet *.inspection --sarif > vet.sarif",
            "",
            "Exit codes: 0 sound (there may be warnings), 2 mistakes, 70 a bug of ours."
        })
final class VetCommand implements Callable<Integer> {

    private static final int MOST_CODES = 4;

    @Parameters(arity = "1..*", paramLabel = "PROCEDURE", description = "The procedures' files.")
    private List<Path> procedures = List.of();

    @ArgGroup
    private @Nullable ForPrograms forPrograms;

    /** How the mistakes are listed on standard output for other programs; a person reads them on standard error. */
    private static final class ForPrograms {
        @Option(names = "--json", description = "List the mistakes on standard output as JSON, for other programs.")
        private boolean json;

        @Option(
                names = "--sarif",
                description = "The same as SARIF 2.1.0, for code hosts that show them at their lines.")
        private boolean sarif;

        @Option(
                names = "--lines",
                description = "The same a line each, FILE:LINE:COLUMN: LEVEL: MESSAGE [CODE], for editors.")
        private boolean lines;

        String list(List<Diagnostic> all) {
            if (json) {
                return DiagnosticJson.write(all);
            }
            if (sarif) {
                return Sarif.write(all, Leafproof.Version.number());
            }
            if (lines) {
                return DiagnosticLines.write(all);
            }
            throw new IllegalStateException("the group is there only with one of its options");
        }
    }

    @Option(names = "--card", paramLabel = "F", description = "An engine card to vet them with; needs --tray.")
    private @Nullable Path card;

    @Option(names = "--tray", paramLabel = "F", description = "A gauge tray to vet them with; needs --card.")
    private @Nullable Path tray;

    @Option(names = "--variant", paramLabel = "V", description = "Which variant of the card is meant.")
    private @Nullable String variant;

    @Mixin
    private RootOption root = new RootOption();

    private final Console console;

    VetCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if ((card == null) != (tray == null) || (variant != null && card == null)) {
            console.err()
                    .print("leafproof: a card and a tray are vetted together\n   help: give both --card and --tray; "
                            + "--variant goes with them\n");
            return Exit.BAD_INPUT.code();
        }
        Optional<Document<EngineCard>> cardRead = Optional.ofNullable(card).flatMap(file -> read(CardFile.read(file)));
        Optional<Document<GaugeTray>> trayRead = Optional.ofNullable(tray).flatMap(file -> read(TrayFile.read(file)));
        if (card != null && (cardRead.isEmpty() || trayRead.isEmpty())) {
            return Exit.BAD_INPUT.code();
        }
        List<Diagnostic> all = new ArrayList<>();
        for (Path file : procedures) {
            Compiled compiled = root.read(file);
            List<Diagnostic> found = new ArrayList<>(compiled.diagnostics());
            if (cardRead.isPresent() && trayRead.isPresent()) {
                EngineCard stated = cardRead.get().content();
                GaugeTray held = trayRead.get().content();
                compiled.procedure().ifPresent(procedure -> {
                    found.addAll(procedure.vet(stated, variant, held));
                    found.sort(Diagnostic.inOrderOf(procedure.written().sources()));
                });
            }
            all.addAll(found);
            if (forPrograms == null) {
                report(file, compiled, found);
            }
        }
        if (forPrograms != null) {
            console.print(forPrograms.list(all));
        } else if (!all.isEmpty()) {
            console.err().print("   more of this: leafproof why " + codes(all) + "\n");
        }
        boolean sound = all.stream().noneMatch(Diagnostic::isError);
        return (sound ? Exit.GOOD : Exit.BAD_INPUT).code();
    }

    private <T> Optional<Document<T>> read(Read<Document<T>> read) {
        console.complainOfFiles(read.problems());
        return read.value();
    }

    private void report(Path file, Compiled compiled, List<Diagnostic> all) {
        console.complain(all);
        long errors = all.stream().filter(Diagnostic::isError).count();
        long warnings = all.size() - errors;
        String found = errors == 0 && warnings == 0
                ? "sound"
                : counted(errors, "error") + (warnings == 0 ? "" : ", " + counted(warnings, "warning"));
        console.print(file + ": " + found + "\n");
        compiled.procedure()
                .ifPresent(procedure ->
                        console.print("   " + Cost.of(procedure.graph()).words() + "\n"));
    }

    /** A few of them, each once: who reads these will find the others. */
    private static String codes(List<Diagnostic> all) {
        return all.stream()
                .map(diagnostic -> diagnostic.code().name())
                .distinct()
                .limit(MOST_CODES)
                .collect(Collectors.joining(" "));
    }

    static String counted(long number, String what) {
        return number == 0 ? "no " + what + "s" : number + " " + what + (number == 1 ? "" : "s");
    }
}

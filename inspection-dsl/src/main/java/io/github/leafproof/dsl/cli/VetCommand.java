package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticJson;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Looks procedures through without judging anything. */
@Command(
        name = "vet",
        description = "Looks procedures through and lists every mistake.",
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "Example:",
            "  leafproof vet first_look.inspection",
            "",
            "Exit codes: 0 sound (there may be warnings), 2 mistakes, 70 a bug of ours."
        })
final class VetCommand implements Callable<Integer> {

    private static final int MOST_CODES = 4;

    @Parameters(arity = "1..*", paramLabel = "PROCEDURE", description = "The procedures' files.")
    private List<Path> procedures = List.of();

    @Option(names = "--json", description = "List the mistakes on standard output as JSON, for other programs.")
    private boolean json;

    @Mixin
    private RootOption root = new RootOption();

    private final Console console;

    VetCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        List<Diagnostic> all = new ArrayList<>();
        for (Path procedure : procedures) {
            Compiled compiled = root.read(procedure);
            all.addAll(compiled.diagnostics());
            if (!json) {
                report(procedure, compiled);
            }
        }
        if (json) {
            console.print(DiagnosticJson.write(all));
        }
        if (!json && !all.isEmpty()) {
            console.err().print("   more of this: leafproof why " + codes(all) + "\n");
        }
        boolean sound = all.stream().noneMatch(Diagnostic::isError);
        return (sound ? Exit.GOOD : Exit.BAD_INPUT).code();
    }

    private void report(Path procedure, Compiled compiled) {
        console.complain(compiled.diagnostics());
        long errors =
                compiled.diagnostics().stream().filter(Diagnostic::isError).count();
        long warnings = compiled.diagnostics().size() - errors;
        String found = errors == 0 && warnings == 0
                ? "sound"
                : counted(errors, "error") + (warnings == 0 ? "" : ", " + counted(warnings, "warning"));
        console.print(procedure + ": " + found + "\n");
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

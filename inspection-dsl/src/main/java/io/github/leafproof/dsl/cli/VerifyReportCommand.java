package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.seal.Places;
import io.github.leafproof.dsl.seal.Verification;
import io.github.leafproof.dsl.seal.VerificationText;
import io.github.leafproof.dsl.seal.VerifyingKey;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.RawFile;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.SealFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells whether a sealed report and the files that it rests on are still the same. */
@Command(
        name = "verify-report",
        description = {
            "Verifies a sealed report, and every file that it rests on.",
            "",
            "Tells whether the report is still the one that was sealed, by whose key, whether the files",
            "are still the same, and whether they give this report when they are judged again."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "Example:",
            "  leafproof verify-report 0412-report.json --key shop.public.pem",
            "",
            "Exit codes: 0 verified, 1 something was changed or sealed with another key, 2 bad input,",
            "3 nothing is wrong and not everything could be verified, 70 a bug of ours."
        })
final class VerifyReportCommand implements Callable<Integer> {

    @Parameters(paramLabel = "REPORT", description = "The report's file, as inspect --json wrote it.")
    private Path report = Path.of("");

    @Option(
            names = "--key",
            paramLabel = "KEY",
            description = "The public key of the shop, from the shop and not from whoever brought the report. Several"
                    + " may be named; one of them must have sealed it.")
    private List<Path> keys = List.of();

    @Option(
            names = "--seal",
            paramLabel = "F",
            description = "The report's seal; if not given, the file REPORT.seal beside it.")
    private @Nullable Path seal;

    @Option(
            names = "--inputs",
            paramLabel = "DIR",
            description = "A folder that the names in the report are seen from; several may be named. If not given,"
                    + " this folder, then the report's own. What is not there is looked for below.")
    private List<Path> inputs = List.of();

    @Option(
            names = "--procedure",
            paramLabel = "F",
            description = "The procedure's file; if not given, NAME-REVISION.inspection and NAME.inspection are looked"
                    + " for like the other files.")
    private @Nullable Path procedure;

    @Option(
            names = "--root",
            paramLabel = "DIR",
            description = "The folder that the files which the procedure uses are named from; its own if not given.")
    private @Nullable Path root;

    private final Console console;

    VerifyReportCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Optional<Document<byte[]>> bytes = told(RawFile.read(report));
        Path sealFile = seal == null ? SealFile.of(report) : seal;
        boolean noSeal = seal == null && !Files.exists(sealFile);
        Optional<Document<byte[]>> sealed = noSeal ? Optional.empty() : told(RawFile.read(sealFile));
        List<Document<VerifyingKey>> known = new ArrayList<>();
        keys.forEach(each -> told(VerifyingKey.read(each)).ifPresent(known::add));
        boolean there = areThere();
        if (bytes.isEmpty() || (sealed.isEmpty() && !noSeal) || known.size() < keys.size() || !there) {
            return Exit.BAD_INPUT.code();
        }
        Verification verification = Verification.of(bytes.get(), sealed, known, places());
        console.print(VerificationText.of(verification, console.colour()));
        console.out().flush();
        console.complainOfFiles(verification.problems());
        return switch (verification.state()) {
            case VERIFIED -> Exit.GOOD.code();
            case BROKEN -> Exit.NOT_GOOD.code();
            case UNFINISHED -> Exit.UNFINISHED.code();
        };
    }

    private <T> Optional<T> told(Read<T> read) {
        console.complainOfFiles(read.problems());
        return read.value();
    }

    /** A folder or a file that was named and is not there is a slip of the pen, and no file of the report that is missing. */
    private boolean areThere() {
        boolean sound = true;
        List<Path> folders = new ArrayList<>(inputs);
        Optional.ofNullable(root).ifPresent(folders::add);
        for (Path folder : folders) {
            if (!Files.isDirectory(folder)) {
                console.err().print("leafproof: there is no folder " + folder + "\n   help: check its name\n");
                sound = false;
            }
        }
        return (procedure == null || told(RawFile.read(procedure)).isPresent()) && sound;
    }

    private Places places() {
        List<Path> folders = inputs.isEmpty() ? List.of(Path.of(""), RootOption.folderOf(report)) : inputs;
        return new Places(folders, procedure, root);
    }
}

package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.archive.Archive;
import io.github.leafproof.dsl.archive.Comparison;
import io.github.leafproof.dsl.archive.Replay;
import io.github.leafproof.dsl.archive.ReplayJson;
import io.github.leafproof.dsl.archive.ReplayText;
import io.github.leafproof.dsl.archive.Tally;
import io.github.leafproof.inspection.record.SheetFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** Judges an archive of sheets under two revisions of a procedure and shows what comes out otherwise. */
@Command(
        name = "replay",
        description = {
            "Judges an archive of job sheets under two revisions of a procedure, and shows which",
            "engines would come out otherwise, and why. Sheets of any revision are judged."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "A sheet that cannot be judged is listed with its mistakes, and the others go on. Sheets of",
            "other procedures are counted and left alone, and so are cards, trays and reports in a folder.",
            "",
            "Example:",
            "  leafproof replay kept/first_look-5.inspection first_look.inspection sheets",
            "  leafproof replay --json old.inspection new.inspection archive.jsonl > replay.jsonl",
            "",
            "Exit codes: 0 nothing differs, 1 something differs, 3 nothing differs and some sheets could",
            "not be judged, 2 bad input or no sheet judged, 70 a bug of ours."
        })
final class ReplayCommand implements Callable<Integer> {

    private static final String STANDARD_INPUT = "-";

    @Parameters(index = "0", paramLabel = "OLD", description = "The procedure's file as it was.")
    private Path old = Path.of("");

    @Parameters(index = "1", paramLabel = "NEW", description = "The procedure's file as it is to be.")
    private Path now = Path.of("");

    @Parameters(
            index = "2..*",
            arity = "1..*",
            paramLabel = "SHEET",
            description = "Job sheets: files; folders, with all that lies below them; files ending in .jsonl, with a"
                    + " sheet in each line; - for such lines from standard input.")
    private List<Path> sheets = List.of();

    @Option(
            names = "--show",
            paramLabel = "N",
            defaultValue = "20",
            converter = HowMany.class,
            description = "Show so many of the engines that differ; ${DEFAULT-VALUE} if not given. All are counted.")
    private long show;

    @Option(
            names = "--json",
            description = "On standard output, a line of JSON for every sheet instead of the text; the counts last.")
    private boolean json;

    @Mixin
    private EngineOptions engine = new EngineOptions();

    @Mixin
    private RootOption root = new RootOption();

    private final Console console;
    private final Tellings tellings;

    ReplayCommand(Console console) {
        this.console = console;
        this.tellings = new Tellings(console);
    }

    @Override
    public Integer call() {
        Optional<Procedure> before = read(old);
        Optional<Procedure> after = read(now);
        boolean there = areThere();
        if (before.isEmpty() || after.isEmpty() || !there || areTwoProcedures(before.get(), after.get())) {
            return Exit.BAD_INPUT.code();
        }
        Replay replay = Replay.of(before.get(), after.get(), engine.cabinet(), engine.units());
        return run(replay).code();
    }

    private Optional<Procedure> read(Path file) {
        Compiled compiled = root.read(file);
        console.complain(compiled.diagnostics());
        return compiled.procedure();
    }

    /** A name mistyped is told before hours of work, and not after. */
    private boolean areThere() {
        boolean there = true;
        for (Path path : sheets) {
            if (!isStandardInput(path) && !Files.exists(path)) {
                console.complainOfFiles(SheetFile.read(path).problems());
                there = false;
            }
        }
        if (sheets.stream().filter(ReplayCommand::isStandardInput).count() > 1) {
            console.err().print("leafproof: standard input can be read once\n   help: give - once\n");
            there = false;
        }
        return there;
    }

    private static boolean isStandardInput(Path path) {
        return path.toString().equals(STANDARD_INPUT);
    }

    private boolean areTwoProcedures(Procedure before, Procedure after) {
        boolean one = Replay.areRevisionsOfOne(before, after);
        if (!one) {
            console.err()
                    .print("leafproof: " + old + " is the procedure "
                            + before.graph().identity().name() + ", and " + now + " is "
                            + after.graph().identity().name() + "\n   help: name two revisions of one procedure\n");
        }
        return !one;
    }

    private Archive archive() {
        return Archive.of(sheets.stream()
                .<Archive.Source>map(path -> isStandardInput(path)
                        ? new Archive.Source.Lines("standard input", System.in, Path.of(""))
                        : new Archive.Source.At(path))
                .toList());
    }

    private Exit run(Replay replay) {
        Tally tally = Tally.of(replay);
        ReplayText text = ReplayText.in(console.colour());
        ProgressBar bar = console.progressBar();
        console.print(json ? ReplayJson.of(replay) : text.of(replay));
        try (Stream<Comparison> comparisons =
                replay.compare(archive().sheets().peek(filed -> bar.reached(filed.reached())))) {
            comparisons.forEachOrdered(comparison -> {
                tally.add(comparison);
                tell(comparison, tally, text, bar);
                bar.counted(tally.sheets(), tally.differing());
            });
        }
        bar.clear();
        if (!json) {
            console.print(text.notShown(tally.differing(), show));
        }
        console.print(json ? ReplayJson.of(tally) : text.of(tally));
        return exit(tally);
    }

    private void tell(Comparison comparison, Tally tally, ReplayText text, ProgressBar bar) {
        if (json) {
            bar.clear();
            console.print(ReplayJson.of(comparison));
        } else if (comparison instanceof Comparison.Differs differs && tally.differing() <= show) {
            bar.clear();
            console.print(text.of(differs));
        } else if (comparison instanceof Comparison.Damaged damaged) {
            bar.clear();
            tellings.tell(damaged);
        }
    }

    /** Reads how many. */
    static final class HowMany implements ITypeConverter<Long> {
        @Override
        public Long convert(String word) {
            if (!word.matches("\\d{1,18}")) {
                throw new TypeConversionException("it is a number of engines, such as 20, and not " + word);
            }
            return Long.parseLong(word);
        }
    }

    private Exit exit(Tally tally) {
        if (tally.judged() == 0) {
            console.err()
                    .print("leafproof: no sheet was judged\n   help: "
                            + (tally.damaged() > 0
                                    ? "mend what is listed above"
                                    : "name job sheets of this procedure, or a folder that they lie in")
                            + "\n");
            return Exit.BAD_INPUT;
        }
        if (tally.differing() > 0) {
            return Exit.NOT_GOOD;
        }
        return tally.damaged() > 0 ? Exit.UNFINISHED : Exit.GOOD;
    }
}

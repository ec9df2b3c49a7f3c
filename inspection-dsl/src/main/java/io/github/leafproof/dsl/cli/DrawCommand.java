package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.draw.DotText;
import io.github.leafproof.dsl.draw.MermaidText;
import io.github.leafproof.dsl.draw.Picture;
import io.github.leafproof.dsl.draw.SvgDrawing;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.inspection.record.Read;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Draws a procedure; with a sheet, what came of it. */
@Command(
        name = "draw",
        description = {
            "Draws a procedure: its stages, what is observed, what is judged by it, and the gates.",
            "With a sheet each check shows its outcome, by letter, word and colour."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "Example:",
            "  leafproof draw first_look.inspection --sheet sheets/0412-trap.json -o 0412.svg",
            "",
            "Exit codes: 0 drawn, whatever the verdicts are, 2 bad input, 70 a bug of ours."
        })
final class DrawCommand implements Callable<Integer> {

    @Parameters(paramLabel = "PROCEDURE", description = "The procedure's file, ending in .inspection.")
    private Path procedure = Path.of("");

    @Option(
            names = {"-o", "--output"},
            paramLabel = "F",
            description = "Where to draw, by the ending of its name: .svg a picture, .dot or .mmd (Mermaid) a text for"
                    + " programs that draw themselves. Without it the picture, SVG, goes to standard output.")
    private @Nullable Path output;

    @Option(names = "--sheet", paramLabel = "F", description = "The job sheet whose outcomes are shown.")
    private @Nullable Path sheet;

    @Mixin
    private EngineOptions engine = new EngineOptions();

    @Mixin
    private RootOption root = new RootOption();

    private final Console console;

    DrawCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Target target = Target.of(output, "-o", "picture");
        Optional<Function<Picture, String>> drawing = drawing();
        boolean sheetLacks = engine.lackTheir(sheet, console);
        boolean overwrites = engine.wouldBeOverwritten(target, procedure, sheet, console);
        if (drawing.isEmpty() || sheetLacks || overwrites) {
            return Exit.BAD_INPUT.code();
        }
        Compiled compiled = root.read(procedure);
        console.complain(compiled.diagnostics());
        Optional<Evidence.Files> files = sheet == null
                ? Optional.empty()
                : engine.read(sheet, Stream.ofNullable(target).toList(), console);
        if (compiled.procedure().isEmpty() || (sheet != null && files.isEmpty())) {
            return Exit.BAD_INPUT.code();
        }
        Procedure read = compiled.orElseThrow();
        Optional<Picture> picture = files.isEmpty() ? Optional.of(Picture.of(read.graph())) : judged(read, files.get());
        return picture.map(drawing.get()).map(this::hand).orElse(Exit.BAD_INPUT).code();
    }

    private Optional<Picture> judged(Procedure read, Evidence.Files files) {
        Read<Judgement> judged = read.judgement(files.card(), files.tray(), files.sheet(), engine.units());
        console.complainOfFiles(judged.problems());
        return judged.value().map(Picture::of);
    }

    private Optional<Function<Picture, String>> drawing() {
        String name =
                output == null ? ".svg" : String.valueOf(output.getFileName()).toLowerCase(Locale.ROOT);
        if (name.endsWith(".svg")) {
            return Optional.of(SvgDrawing::of);
        }
        if (name.endsWith(".dot")) {
            return Optional.of(DotText::of);
        }
        if (name.endsWith(".mmd")) {
            return Optional.of(MermaidText::of);
        }
        console.err().print("leafproof: -o must end in .svg, .dot or .mmd, and " + output + " does not\n");
        console.err().print("   help: .svg is a picture; the others are texts for programs that draw themselves\n");
        return Optional.empty();
    }

    private Exit hand(String text) {
        if (output == null) {
            console.print(text);
            return Exit.GOOD;
        }
        if (!console.wrote(output, text)) {
            return Exit.BAD_INPUT;
        }
        console.print(output + ": drawn\n");
        return Exit.GOOD;
    }
}

package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.edges.Base;
import io.github.leafproof.dsl.edges.EdgeReport;
import io.github.leafproof.dsl.edges.Edges;
import io.github.leafproof.dsl.edges.EdgesText;
import io.github.leafproof.dsl.rehearsal.CardsAndTrays;
import io.github.leafproof.dsl.rehearsal.Played;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Declaration.Step;
import io.github.leafproof.dsl.syntax.Text;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds the entries on the edges of a procedure and writes them as rehearsals. */
@Command(
        name = "edges",
        description = {
            "Finds the entries on the edges of a procedure: for each limit the last that passes, the first",
            "that proves nothing, the first that fails; for leaves, words and counts those beside them.",
            "Writes them as rehearsals, to be read and taken over by a person."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "Each is one of the procedure's own rehearsals with one entry changed, so that it needs some that",
            "pass. What cannot be reached is said in comments, with the reason.",
            "",
            "Examples:",
            "  leafproof edges tank.inspection",
            "  leafproof edges tank.inspection --tray trays/bench-one.json -o tank_edges.inspection",
            "",
            "Exit codes: 0 written, 2 bad input, 70 a bug of ours."
        })
final class EdgesCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "PROCEDURE", description = "The procedure's file, ending in .inspection.")
    private Path file = Path.of("");

    @Option(
            names = "--card",
            paramLabel = "F",
            description = "The engine card of all cases, in place of the ones that the rehearsals name.")
    private @Nullable Path card;

    @Option(names = "--variant", paramLabel = "V", description = "The variant of that card; needs --card.")
    private @Nullable String variant;

    @Option(
            names = "--tray",
            paramLabel = "F",
            description = "The gauge tray of all cases, in place of the ones that the rehearsals name.")
    private @Nullable Path tray;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "F",
            description = "Write the rehearsals there; if not given, to standard output.")
    private @Nullable Path output;

    @Mixin
    private RootOption root = new RootOption();

    private final Console console;

    EdgesCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (variant != null && card == null) {
            console.err().print("leafproof: a variant is one of a card\n   help: give --card with --variant\n");
            return Exit.BAD_INPUT.code();
        }
        Target target = Target.of(output, "-o", "rehearsals");
        if (target != null && target.overwrites(file, console)) {
            return Exit.BAD_INPUT.code();
        }
        Compiled compiled = root.read(file);
        console.complain(compiled.diagnostics());
        return compiled.procedure().map(this::find).orElse(Exit.BAD_INPUT).code();
    }

    private Exit find(Procedure procedure) {
        Rehearsing rehearsing = Rehearsing.of(procedure, RootOption.folderOf(file), root.of(file), new CardsAndTrays());
        List<Played> played = procedure.rehearsals().stream()
                .map(this::onThisBench)
                .map(rehearsing::play)
                .toList();
        if (played.isEmpty()) {
            console.err()
                    .print("leafproof: " + file
                            + " has no rehearsal to begin with\n   help: write one in which an engine"
                            + " passes; what is on the edges differs from it in one entry\n");
            return Exit.BAD_INPUT;
        }
        played.forEach(each -> console.complainOfFiles(each.problems()));
        if (played.stream().anyMatch(each -> each.judgement().isEmpty())) {
            return Exit.BAD_INPUT;
        }
        EdgeReport report = Edges.of(
                procedure.graph(),
                played.stream()
                        .map(each -> new Base(each.written(), each.judgement().orElseThrow()))
                        .toList());
        Path here = RootOption.folderOf(output == null ? file : output);
        String about = "On the edges of \"" + procedure.graph().identity().title() + "\" revision "
                + procedure.graph().identity().revision() + ". Read each before you take it over.";
        return write(report, EdgesText.of(report, about, source -> folderOf(source, procedure), here));
    }

    private Exit write(EdgeReport report, String text) {
        if (output == null) {
            console.print(text);
            return Exit.GOOD;
        }
        if (!console.wrote(output, text)) {
            return Exit.BAD_INPUT;
        }
        console.print(output + ": " + VetCommand.counted(report.edges().size(), "rehearsal") + " on the edges, "
                + report.notReached().size() + (report.notReached().size() == 1 ? " condition" : " conditions")
                + " without\n");
        return Exit.GOOD;
    }

    private Path folderOf(SourceText source, Procedure procedure) {
        return procedure.parts().stream()
                .filter(part -> part.source() == source)
                .findFirst()
                .map(part -> RootOption.folderOf(root.of(file).resolve(part.name())))
                .orElseGet(() -> RootOption.folderOf(file));
    }

    /** The case with the card and the tray that were asked for. */
    private Declaration.Rehearse onThisBench(Declaration.Rehearse rehearse) {
        return new Declaration.Rehearse(
                rehearse.title(),
                rehearse.steps().stream().map(this::onThisBench).toList(),
                rehearse.span());
    }

    private Step onThisBench(Step step) {
        if (step instanceof Step.Engine engine && card != null) {
            return new Step.Engine(
                    text(card.toAbsolutePath().toString(), engine.span()),
                    variant == null ? null : text(variant, engine.span()),
                    engine.serial(),
                    engine.span());
        }
        return step instanceof Step.Gauges gauges && tray != null
                ? new Step.Gauges(text(tray.toAbsolutePath().toString(), gauges.span()), gauges.span())
                : step;
    }

    private static Text text(String letters, Span span) {
        return new Text(List.of(new Text.Plain(letters)), span);
    }
}
